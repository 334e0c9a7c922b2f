import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type FaceRect, piecesAround } from '../../src/fitout/pieces-around.ts';
import { netSolid } from '../../src/fitout/recesses.ts';

const areaOf = ({ from, to }: FaceRect): number => (to[0] - from[0]) * (to[1] - from[1]);
const has = ({ from, to }: FaceRect, x: number, y: number): boolean =>
  from[0] < x && x < to[0] && from[1] < y && y < to[1];

const hole = fc
  .tuple(fc.integer({ min: 1, max: 80 }), fc.integer({ min: 1, max: 50 }), fc.nat(18), fc.nat(8))
  .map(([x, y, w, h]): FaceRect => ({ from: [x, y], to: [Math.min(99, x + w + 1), Math.min(59, y + h + 1)] }));

describe('a panel around its cut-outs', () => {
  it('is one piece without any, four around one, and the same wood as the holes leave', () => {
    expect(piecesAround(100, 60, [])).toEqual([{ from: [0, 0], to: [100, 60] }]);
    const pieces = piecesAround(100, 60, [{ from: [20, 10], to: [50, 40] }]);
    expect(pieces).toEqual([
      { from: [0, 0], to: [20, 60] },
      { from: [20, 0], to: [50, 10] },
      { from: [20, 40], to: [50, 60] },
      { from: [50, 0], to: [100, 60] },
    ]);
    // 100 × 60 − 30 × 30
    expect(pieces.reduce((sum, piece) => sum + areaOf(piece), 0)).toBe(5100);
  });

  it('covers every point outside the holes once and none inside them', () => {
    fc.assert(
      fc.property(fc.array(hole, { maxLength: 4 }), (holes) => {
        const pieces = piecesAround(100, 60, holes);
        for (let x = 0.5; x < 100; x += 3)
          for (let y = 0.5; y < 60; y += 3) {
            const cut = holes.some((each) => has(each, x, y));
            expect(pieces.filter((piece) => has(piece, x, y)).length).toBe(cut ? 0 : 1);
          }
      }),
      { seed: 20260801, numRuns: 40 },
    );
  });

  it('weighs what is left: recesses and holes together, an overlap once, rounded corners given back', () => {
    const groove = { kind: 'groove', face: 'a', from: [0, 0], to: [100, 10], depth: 4, takes: null } as const;
    const through = { from: [40, 20], to: [60, 40], leftAreaMm2: 0 } as const;
    // 100 × 60 × 12 − 100 × 10 × 4 − 20 × 20 × 12
    expect(netSolid([100, 60, 12], [groove], [through]).volumeMm3).toBeCloseTo(72_000 - 4000 - 4800, 9);
    expect(netSolid([100, 60, 12], [groove], [through]).web).toBe(8);
    // Over the groove: 20 × 20 × 12 from 0 up, of which 20 × 10 × 4 was gone already
    const over = { ...through, from: [40, 0], to: [60, 20] } as const;
    expect(netSolid([100, 60, 12], [groove], [over]).volumeMm3).toBeCloseTo(72_000 - 4000 - 4800 + 800, 9);
    // Corners of radius 5: (4 − π) · 25 · 12 stand
    const left = (4 - Math.PI) * 25;
    const rounded = netSolid([100, 60, 12], [], [{ ...through, leftAreaMm2: left }]).volumeMm3;
    expect(rounded).toBeCloseTo(72_000 - 4800 + left * 12, 9);
  });
});
