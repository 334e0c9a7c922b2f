import { describe, expect, it } from 'vitest';
import { type Polygon, signedArea } from '../../../src/base/index.ts';
import { convexPieces } from '../../../src/shop/assembly/convex-pieces.ts';

const areas = (ring: Polygon): readonly number[] => convexPieces(ring).map((piece) => Math.abs(signedArea(piece)));

describe('a ring as convex pieces', () => {
  it('leaves a convex ring alone', () => {
    const ring: Polygon = [
      [0, 0],
      [10, 0],
      [12, 6],
      [0, 8],
    ];
    expect(convexPieces(ring)).toEqual([ring]);
  });

  it('cuts upright strips at the corners of a notch in the lower edge', () => {
    const ring: Polygon = [
      [0, 0],
      [20, 0],
      [20, 30],
      [50, 30],
      [50, 0],
      [100, 0],
      [100, 60],
      [0, 60],
    ];
    // 20 × 60, 30 × 30 and 50 × 60.
    expect(areas(ring)).toEqual([1200, 900, 3000]);
  });

  it('cuts a strip twice where the ring runs through it twice, slanted edges with it', () => {
    const ring: Polygon = [
      [0, 0],
      [40, 0],
      [40, 10],
      [10, 10],
      [10, 30],
      [40, 40],
      [40, 60],
      [0, 60],
    ];
    // 10 × 60 at the left; 30 × 10 below; above 60 − 30 at the left and 60 − 40 at the right, 30 wide.
    expect(areas(ring)).toEqual([600, 300, 750]);
  });
});
