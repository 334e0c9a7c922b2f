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

describe('adjustable shelves', () => {
  const onPins = (rest: Plain = {}) => alone({ shelves: 'adjustable', shelvesUpMm: [200], ...rest });

  it('stand at the hole next to the height stated, with a spare at each end', () => {
    const fitOut = onPins();
    expect(fitOut.problems).toEqual([]);
    // Holes every 32 from the floor; the shelf of 12 lies on a pin of 5: hole 6 at 192 + 2.5 + 12 = 206.5, hole 5 at 174.5.
    expect(fitOut.rooms[1]?.pose.at[2]).toBeCloseTo(17.7 + 206.5, 9);
    expect(fitOut.rooms[0]?.size[2]).toBeCloseTo(206.5 - 12, 9);
    const shelf = panelOf(fitOut, 'opening-1/shelf-1');
    // 864.6 − 2 × 1; nothing is housed, so the side keeps its volume.
    expect([shelf.length, shelf.width].map((side) => Math.round(side * 10) / 10)).toEqual([862.6, 581.6]);
    const [side, plain] = [fitOut, alone()].map((each) => panelOf(each, 'carcass-1/side-left').volumeMm3);
    expect(side).toBeCloseTo(plain ?? Number.NaN, 6);
  });

  it('lie on four pins in two rows of blind holes, three more above and below', () => {
    const fitOut = onPins();
    const holes = panelOf(fitOut, 'carcass-1/side-right').cuts.filter((cut) => cut.kind === 'hole');
    // Holes 3 to 9 in each of two rows.
    expect(holes).toHaveLength(14);
    expect(holes.every((hole) => hole.diameter === 5 && hole.face === 'a')).toBe(true);
    // 10 deep, or half of 17.7 where that is less.
    expect(holes[0]?.depth).toBeCloseTo(8.85, 9);
    expect(fitOut.hardware.find(({ item }) => item === 'shelf-pin-lock-5')?.quantity).toBe(4);
    // A shelf at the floor has no holes below the first: 1 to 4.
    const low = onPins({ shelvesUpMm: [47] });
    expect(panelOf(low, 'carcass-1/side-right').cuts.filter((cut) => cut.kind === 'hole')).toHaveLength(8);
    // 4 × 6 g.
    expect(fitOut.masses.find(({ id }) => id === 'opening-1/shelf-1/pins')?.massKg).toBeCloseTo(0.024, 9);
  });

  it('ask for as much depth as their rows of holes take', () => {
    // 2 × 37 + 5 deep; 206.5 + 40 up.
    expect(onPins().openings[0]?.least.map((mm) => Math.round(mm * 10) / 10)).toEqual([40, 79, 246.5]);
  });
});

describe('the floor of a bay', () => {
  it('carries a mat by the metre, on which gear stands', () => {
    const fitOut = alone({ mat: 'mat-rubber-3', lipHeightMm: 40 });
    expect(fitOut.problems).toEqual([]);
    // 864.6 × (581.6 − 12 of lip) of a roll 1000 wide: 0.4925 m, 3.6 kg each.
    const mat = fitOut.hardware.find(({ id }) => id === 'opening-1/mat');
    expect(mat?.quantity).toBeCloseTo((864.6 * 569.6) / 1e6, 9);
    expect(fitOut.masses.find(({ id }) => id === 'opening-1/mat')?.massKg).toBeCloseTo(1.7729, 4);
    expect(fitOut.rooms[0]?.pose.at[2]).toBeCloseTo(17.7 + 3, 9);
    // The lip stands 40 above the mat.
    expect(panelOf(fitOut, 'opening-1/lip-1').width).toBe(43);
  });

  it('drains through a round hole in its middle', () => {
    const fitOut = alone({ drain: 'drain-flush-25' });
    expect(fitOut.problems).toEqual([]);
    const [floor, plain] = [fitOut, alone()].map((each) => panelOf(each, 'carcass-1/bottom'));
    const hole = floor?.cuts.find((cut) => cut.kind === 'cutout');
    expect(hole).toMatchObject({ why: 'drain', outline: { shape: 'circle', diameter: expect.closeTo(25, 9) } });
    // π × 12.5² × 17.7.
    expect((plain?.volumeMm3 ?? 0) - (floor?.volumeMm3 ?? 0)).toBeCloseTo(Math.PI * 12.5 ** 2 * 17.7, 3);
    expect(alone({ drain: 'no-drain' }).problems).toMatchObject([{ code: 'unknown-hardware', because: ['no-drain'] }]);
  });

  it('has nothing to drain through where no panel lies below', () => {
    const top = solved([
      carcass(
        divided(
          'opening-1',
          'rows',
          [
            [fixed(300), fitted('opening-2', bay({ drain: 'drain-flush-25' }))],
            [share(), empty('opening-3')],
          ],
          'none',
        ),
      ),
    ]);
    expect(top.problems).toMatchObject([
      { code: 'bad-joint', at: 'opening-2', because: ['drain meets no panel below'] },
    ]);
  });
});
