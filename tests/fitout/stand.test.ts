import { describe, expect, it } from 'vitest';
import { ROUNDING_MM } from '../../src/base/index.ts';
import { carcass, empty, openingOf, panelOf, solved } from './designs.ts';

const stood = (stand: unknown, rest: Parameters<typeof carcass>[1] = {}) =>
  solved([carcass(empty('opening-1'), { stand, ...rest })]);

describe('what a carcass stands on', () => {
  it('stands on runners under its bottom, the outside height the same', () => {
    const fitOut = stood({ kind: 'riser', heightMm: 100, runners: 3 });
    expect(fitOut.problems).toEqual([]);
    // 700 − 100.
    expect(panelOf(fitOut, 'carcass-1/side-left').length).toBeCloseTo(600, 9);
    // 700 − 100 − 2 × 17.7.
    expect(openingOf(fitOut, 'opening-1').size[2]).toBeCloseTo(564.6, 9);
    expect(openingOf(fitOut, 'opening-1').from[2]).toBeCloseTo(117.7, 9);
    const runners = [1, 2, 3].map((n) => panelOf(fitOut, `carcass-1/runner-${n}`));
    // From the face to the back, 600 × 100; flush at both sides and one half way: (900 − 17.7)/2 = 441.15.
    expect(runners.map(({ length, width }) => [length, width])).toEqual([1, 2, 3].map(() => [600, 100]));
    const across = fitOut.bodies
      .filter(({ id }) => id.includes('/runner-'))
      .map(({ shape }) => Math.min(...shape.vertices.map(([x]) => x)));
    for (const [i, at] of [0, 441.15, 882.3].entries()) expect(across[i]).toBeCloseTo(at, 9);
    // The riser is of the carcass: 3 × 600 × 100 × 17.7 mm³ of birch.
    expect(runners.reduce((sum, { volumeMm3 }) => sum + volumeMm3, 0)).toBeCloseTo(3 * 600 * 100 * 17.7, 3);
  });

  it('stands on a sheet, and its floor anchors go through that sheet to the vehicle', () => {
    const anchor = {
      id: 'anchor-1',
      on: 'floor',
      across: { from: 'left', mm: 80 },
      deep: { from: 'back', mm: 80 },
      bolt: 'bolt-m8x40',
    };
    const fitOut = stood({ kind: 'sub-floor', material: 'birch-ply-12' }, { anchors: [anchor] });
    expect(fitOut.problems).toEqual([]);
    const sub = panelOf(fitOut, 'carcass-1/sub-floor');
    expect([sub.length, sub.width]).toEqual([900, 600]);
    expect(panelOf(fitOut, 'carcass-1/side-left').length).toBeCloseTo(700 - sub.thickness, 9);
    const holes = sub.cuts.filter((cut) => cut.kind === 'hole');
    expect(holes).toHaveLength(1);
    expect(Math.abs(fitOut.anchors[0]?.at[2] ?? 1)).toBeLessThan(ROUNDING_MM);
  });
});

describe('an opening for wiring through a panel of a carcass', () => {
  const chase = { id: 'chase-1', panel: 'right', alongMm: 300, acrossMm: 400, sizeMm: [80, 50], cornerRadiusMm: 10 };

  it('is cut right through, with its rounded corners, its trim by the metre', () => {
    const fitOut = solved([carcass(empty('opening-1'), { chases: [{ ...chase, edgeTrim: 'trim-edge-rubber' }] })]);
    expect(fitOut.problems).toEqual([]);
    const plain = panelOf(solved([carcass(empty('opening-1'))]), 'carcass-1/side-right');
    const cut = panelOf(fitOut, 'carcass-1/side-right');
    // 80 × 50 less the corners of a square of 20 beside its circle: 4000 − (4 − π) × 100.
    expect(plain.volumeMm3 - cut.volumeMm3).toBeCloseTo((4000 - (4 - Math.PI) * 100) * 17.7, 4);
    // 2 × (80 + 50) − 8 × 10 + 2π × 10 = 242.83 mm.
    const trim = fitOut.hardware.find(({ id }) => id === 'chase-1/trim');
    expect(trim?.quantity).toBeCloseTo(0.24283, 5);
    // Wood stands above and below the hole, none in it.
    const pieces = fitOut.bodies.filter(({ id }) => id.startsWith('carcass-1/side-right'));
    expect(pieces.length).toBeGreaterThan(1);
  });

  it('is named where it runs off its panel, and where there is no panel', () => {
    const off = solved([carcass(empty('opening-1'), { chases: [{ ...chase, alongMm: 590 }] })]);
    expect(off.problems).toMatchObject([{ code: 'bad-joint', at: 'carcass-1' }]);
    const none = { corner: 'dado', dadoDepthMm: 6, back: { kind: 'none' } };
    const gone = solved([carcass(empty('opening-1'), { joints: none, chases: [{ ...chase, panel: 'back' }] })]);
    expect(gone.problems).toMatchObject([{ code: 'bad-joint', because: ['wiring chase meets no panel at its back'] }]);
  });
});
