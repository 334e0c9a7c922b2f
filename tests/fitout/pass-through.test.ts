import { describe, expect, it } from 'vitest';
import type { Body } from '../../src/fitout/index.ts';
import { carcass, divided, empty, fitted, fixed, panelOf, share, solved } from './designs.ts';
import { bodyBox, depthInto } from './measures.ts';

const through = {
  kind: 'pass-through',
  through: 'right',
  widthMm: 220,
  heightMm: 320,
  beyondMm: 300,
  frameMaterial: 'hdpe-6',
  edgeTrim: 'trim-edge-rubber',
};
/** A column of 200 (17.7 to 217.7), a divider of 17.7, and a column of 646.9 beyond it. */
const bay = (fitting: Readonly<Record<string, unknown>>, beside = empty('opening-3'), rest = {}) =>
  solved(
    [
      carcass(
        divided('opening-1', 'columns', [
          [fixed(200), fitted('opening-2', fitting)],
          [share(), beside],
        ]),
      ),
    ],
    rest,
  );
const irons = {
  id: 'gear-1',
  name: 'Irons',
  sizeMm: [480, 190, 300],
  massKg: 8.8,
  massFrom: 'measured',
  place: { opening: 'opening-2', at: [0, 3, 0], turnDeg: 90 },
};

describe('a pass-through', () => {
  it('cuts the divider right through, an edge trim larger than the clear hole, with a frame on this side', () => {
    const fitOut = bay(through);
    expect(fitOut.problems).toEqual([]);
    const [cut] = panelOf(fitOut, 'opening-1/divider-1').cuts.filter(({ kind }) => kind === 'cutout');
    if (cut?.kind !== 'cutout' || cut.outline.shape !== 'rectangle') throw new Error('no hole');
    const { from, to, cornerRadius } = cut.outline;
    const sizes = [to[0] - from[0], to[1] - from[1]].sort((a, b) => a - b);
    // 220 + 2 × 3 by 320 + 2 × 3, corners of a router of 8.
    expect(sizes[0]).toBeCloseTo(226, 9);
    expect(sizes[1]).toBeCloseTo(326, 9);
    expect(cornerRadius).toBe(4);
    const frame = panelOf(fitOut, 'opening-2/frame');
    // 220 + 2 × 40 deep by 320 + 2 × 40 up, of 6 mm sheet.
    expect([frame.length, frame.width, frame.thickness]).toEqual([300, 400, 6]);
    // 2 × (0.22 + 0.32) m of trim at 0.18 kg
    const trim = fitOut.masses.find(({ id }) => id === 'opening-2/edge-trim');
    expect(trim?.massKg).toBeCloseTo(1.08 * 0.18, 9);
  });

  it('takes what it cuts off the weight of the wall', () => {
    const [whole, cut] = [bay({ ...through, through: 'left' }), bay(through)].map((fitOut) =>
      panelOf(fitOut, 'opening-1/divider-1'),
    );
    // (226 × 326 − (4 − π) · 4²) × 17.7
    expect((whole?.volumeMm3 ?? 0) - (cut?.volumeMm3 ?? 0)).toBeCloseTo((73_676 - (4 - Math.PI) * 16) * 17.7, 3);
  });

  it('gives gear the hole from the far side of its opening to as far beyond as it may reach', () => {
    const [room] = bay(through).rooms.filter(({ opening }) => opening === 'opening-2');
    // 200 + 17.7 + 300 across; 220 about the middle of 581.6; from 40 above the floor.
    expect(room?.size[0]).toBeCloseTo(517.7, 9);
    expect(room?.size.slice(1)).toEqual([220, 320]);
    expect(room?.pose.at[0]).toBeCloseTo(17.7, 9);
    expect(room?.pose.at[1]).toBeCloseTo(581.6 / 2 - 110, 9);
    expect(room?.pose.at[2]).toBeCloseTo(57.7, 9);
  });

  it('leaves a hole in the body of the wall, so that what passes meets no wood', () => {
    const fitOut = bay(through, empty('opening-3'), { gear: [irons] });
    const stood = bodyBox(fitOut.bodies.find(({ id }) => id === 'gear-1/body') as Body);
    // 480 of it: 200 here, 17.7 in the wall, 262.3 beyond.
    expect(stood.max[0]).toBeCloseTo(17.7 + 480, 9);
    const wood = fitOut.bodies.filter(({ kind }) => kind === 'panel').map((body) => bodyBox(body as Body));
    expect(Math.max(...wood.map((box) => depthInto(box, stood)))).toBeLessThanOrEqual(0);
    // Around the hole in the divider and in the frame: four pieces each.
    expect(fitOut.bodies.filter(({ id }) => id.startsWith('opening-1/divider-1')).length).toBe(4);
    expect(fitOut.bodies.some(({ id }) => id === 'opening-2/beyond')).toBe(false);
  });

  it('keeps the room beyond free while nothing passes yet', () => {
    const kept = bay(through).bodies.find(({ id }) => id === 'opening-2/beyond');
    expect(kept?.kind).toBe('plug-room');
    const box = bodyBox(kept as Body);
    expect(box.min[0]).toBeCloseTo(235.4, 9);
    expect(box.max[0]).toBeCloseTo(535.4, 9);
  });

  it('says when the hole meets what is housed in the wall on its other side, or when there is no wall', () => {
    const shelf = fitted('opening-3', { kind: 'open-storage', shelvesUpMm: [200], shelfMaterial: 'birch-ply-12' });
    expect(bay(through, shelf).problems).toMatchObject([{ code: 'bad-joint', at: 'opening-2' }]);
    const open = divided(
      'opening-1',
      'columns',
      [
        [fixed(200), fitted('opening-2', through)],
        [share(), empty('opening-3')],
      ],
      'none',
    );
    expect(solved([carcass(open)]).problems).toMatchObject([
      { code: 'bad-joint', because: ['pass-through meets no panel at its right'] },
    ]);
  });

  it('asks for the frame along the wall and what is worth it through it', () => {
    const least = bay(through).openings.find(({ id }) => id === 'opening-2')?.least;
    // 6 + 40 across, 220 + 80 deep, 320 + 80 up.
    expect(least).toEqual([46, 300, 400]);
  });
});
