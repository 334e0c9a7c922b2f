import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Vec2 } from '../../src/base/index.ts';
import { triangulate } from '../../src/shop/index.ts';

const area = (corners: readonly Vec2[], [a, b, c]: readonly [number, number, number]): number => {
  const [p, q, r] = [corners[a], corners[b], corners[c]];
  if (!p || !q || !r) throw new RangeError('no corner');
  return ((q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0])) / 2;
};
const box = (x: number, y: number, w: number, h: number): readonly Vec2[] => [
  [x, y],
  [x + w, y],
  [x + w, y + h],
  [x, y + h],
];

describe('cutting a panel with holes into triangles', () => {
  it('a plain rectangle takes two', () => {
    expect(triangulate(box(0, 0, 10, 5), [])).toHaveLength(2);
  });

  it('leaves the holes free: the triangles turn one way and their area is the panel less its holes', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 3 }), fc.integer({ min: 1, max: 3 }), fc.nat(9), (columns, rows, shift) => {
        const outer = box(0, 0, columns * 40, rows * 40);
        const holes = Array.from({ length: columns * rows }, (_, i) =>
          box((i % columns) * 40 + 5 + shift, Math.floor(i / columns) * 40 + 10, 20, 15 + shift),
        );
        const corners = [...outer, ...holes.flat()];
        const areas = triangulate(outer, holes).map((triangle) => area(corners, triangle));
        expect(Math.min(...areas)).toBeGreaterThanOrEqual(0);
        // 40 × 40 a field, 20 × (15 + shift) a hole.
        const left = columns * rows * (1600 - 20 * (15 + shift));
        expect(areas.reduce((sum, each) => sum + each, 0)).toBeCloseTo(left, 6);
      }),
      { seed: 20310404, numRuns: 40 },
    );
  });
});
