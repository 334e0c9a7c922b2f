import { describe, expect, it } from 'vitest';
import { carcass, divided, empty, fitted, fixed, panelOf, share, solved } from './designs.ts';

type Plain = Readonly<Record<string, unknown>>;

const bay = (rest: Plain = {}): Plain => ({ kind: 'open-storage', shelfMaterial: 'birch-ply-12', ...rest });

/** Clear 864.6 × 581.6 × 664.6 (across × deep × up) at [17.7, 0, 17.7]. */
const alone = (rest: Plain = {}, gear: readonly Plain[] = []) =>
  solved([carcass(fitted('opening-1', bay(rest)))], { gear });

describe('open storage', () => {
  it('has one room on the floor and one on each shelf', () => {
    const fitOut = alone({ shelvesUpMm: [400, 200] });
    expect(fitOut.problems).toEqual([]);
    // Shelves 12 thick with their upper faces at 200 and 400: rooms 188, 188 and 664.6 − 400 high.
    expect(fitOut.rooms.map(({ level, size }) => [level, Math.round(size[2] * 10) / 10])).toEqual([
      [0, 188],
      [1, 188],
      [2, 264.6],
    ]);
    // Room 1 starts on the lower shelf: 17.7 + 200.
    expect(fitOut.rooms[1]?.pose.at[2]).toBeCloseTo(217.7, 9);
  });

  it('houses its shelves in the panels beside it, and those lose what the shelves take', () => {
    const fitOut = alone({ shelvesUpMm: [200] });
    const shelf = panelOf(fitOut, 'opening-1/shelf-1');
    // 864.6 + 2 × 6 in the sides; as deep as the opening.
    expect([shelf.length, shelf.width].map((side) => Math.round(side * 10) / 10)).toEqual([876.6, 581.6]);
    const side = panelOf(fitOut, 'carcass-1/side-left');
    const plain = panelOf(alone(), 'carcass-1/side-left');
    // The dado: 581.6 × 12 × 6.
    expect(plain.volumeMm3 - side.volumeMm3).toBeCloseTo(581.6 * 12 * 6, 3);
    const dado = side.cuts.find((cut) => 'takes' in cut && cut.takes === 'opening-1/shelf-1');
    expect(dado).toMatchObject({ kind: 'dado', face: 'a', depth: expect.closeTo(6, 9) });
  });

  it('puts a lip in front of each room, and the room behind it', () => {
    const fitOut = alone({ shelvesUpMm: [200], lipHeightMm: 40 });
    const lips = fitOut.panels.filter(({ role }) => role === 'lip');
    expect(lips.map(({ length, width }) => [Math.round(length * 10) / 10, width])).toEqual([
      [864.6, 40],
      [864.6, 40],
    ]);
    // 581.6 − 12.
    expect(fitOut.rooms[0]?.size[1]).toBeCloseTo(569.6, 9);
    expect(fitOut.rooms.map(({ keeps }) => keeps)).toEqual(['lip', 'lip']);
  });

  it('hangs a net by the piece or by the metre, and says what keeps the gear', () => {
    const net = alone({ restraint: 'net-small' });
    expect(net.hardware.find(({ id }) => id === 'opening-1/restraint')?.quantity).toBe(1);
    expect(net.rooms[0]?.keeps).toBe('net');
    const metres = alone({ restraint: 'net-drawer', shelvesUpMm: [200, 400] });
    // 0.8646 m across each of three rooms; 0.12 kg a metre.
    expect(metres.hardware.find(({ id }) => id === 'opening-1/restraint')?.quantity).toBeCloseTo(2.5938, 9);
    expect(metres.masses.find(({ id }) => id === 'opening-1/restraint')?.massKg).toBeCloseTo(0.311256, 9);
    expect(alone({ restraint: 'strap-cam-25' }).rooms[0]?.keeps).toBe('strap');
  });

  it('stands gear on the level that it is placed on', () => {
    const gear = (level: number): Plain => ({
      id: 'gear-1',
      name: 'Bag',
      sizeMm: [500, 300, 150],
      massKg: 8,
      massFrom: 'measured',
      place: { opening: 'opening-1', level, at: [50, 20, 0] },
    });
    const fitOut = alone({ shelvesUpMm: [200] }, [gear(1)]);
    const mass = fitOut.masses.find(({ kind }) => kind === 'gear');
    // Across 17.7 + 50 + 300/2, deep 20 + 500/2, up 17.7 + 200 + 150/2.
    expect(mass?.at.map((mm) => Math.round(mm * 10) / 10)).toEqual([217.7, 270, 292.7]);
    const stray = alone({ shelvesUpMm: [200] }, [gear(2)]);
    expect(stray.problems).toMatchObject([
      { code: 'no-such-opening', at: 'gear-1', because: ['opening-1', 'level 2'] },
    ]);
    expect(stray.masses.some(({ kind }) => kind === 'gear')).toBe(true);
  });

  it('needs a panel on both sides of a shelf, and room between shelves', () => {
    const line = solved([
      carcass(
        divided(
          'opening-1',
          'columns',
          [
            [fixed(300), fitted('opening-2', bay({ shelvesUpMm: [200] }))],
            [share(), empty('opening-3')],
          ],
          'none',
        ),
      ),
    ]);
    expect(line.problems).toMatchObject([{ code: 'bad-joint', at: 'opening-2' }]);
    // The upper shelf leaves 5 for a sheet of 12.
    expect(alone({ shelvesUpMm: [200, 205] }).problems).toMatchObject([
      { code: 'rules-fight', at: 'opening-1', axis: 'up', needMm: 12, haveMm: 5 },
    ]);
  });
});
