import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Box,
  boxAround,
  boxAt,
  boxCorners,
  boxesMeet,
  boxGap,
  boxGrown,
  boxMiddle,
  boxSize,
  boxUnion,
  boxVolume,
  distance,
  type Vec3,
} from '../../src/base/index.ts';

const SEEDED = { seed: 20265, numRuns: 1000 } as const;

const whole = fc.integer({ min: 0, max: 8 });
const triple: fc.Arbitrary<Vec3> = fc.tuple(whole, whole, whole);
const box: fc.Arbitrary<Box> = fc.tuple(triple, triple).map(([a, b]) => boxAround([a, b]));

/** Every whole point of a box on a small grid. */
const gridPoints = ({ min, max }: Box): readonly Vec3[] => {
  const points: Vec3[] = [];
  for (let x = min[0]; x <= max[0]; x++)
    for (let y = min[1]; y <= max[1]; y++) for (let z = min[2]; z <= max[2]; z++) points.push([x, y, z]);
  return points;
};

describe('boxes', () => {
  test('size, middle and volume of a panel', () => {
    const panel = boxAt([100, -300, 50], [18, 600, 500]);
    expect(panel.max).toEqual([118, 300, 550]);
    expect(boxSize(panel)).toEqual([18, 600, 500]);
    expect(boxMiddle(panel)).toEqual([109, 0, 300]);
    expect(boxVolume(panel)).toBe(5_400_000); // 18 × 600 × 500
  });

  test('around no points there is no box', () => {
    expect(() => boxAround([])).toThrow('no points');
  });

  test('a box is the smallest around its eight corners', () => {
    fc.assert(
      fc.property(box, (a) => {
        expect(boxAround(boxCorners(a))).toEqual(a);
        expect(boxCorners(a)).toHaveLength(8);
      }),
      SEEDED,
    );
  });

  test('a union holds both and no more', () => {
    fc.assert(
      fc.property(box, box, (a, b) => {
        expect(boxUnion(a, b)).toEqual(boxAround([...boxCorners(a), ...boxCorners(b)]));
      }),
      SEEDED,
    );
  });

  test('gap: as far as the nearest two points; none exactly when the boxes meet; touching meets', () => {
    fc.assert(
      fc.property(box, box, (a, b) => {
        // With whole corners the nearest points can be taken whole.
        const points = gridPoints(b);
        const nearest = Math.min(...gridPoints(a).map((p) => Math.min(...points.map((q) => distance(p, q)))));
        expect(boxGap(a, b)).toBeCloseTo(nearest, 12);
        expect(boxesMeet(a, b)).toBe(nearest === 0);
      }),
      { ...SEEDED, numRuns: 150 },
    );
  });

  test('growing by half of a gap along one axis makes boxes touch', () => {
    const [a, b] = [boxAt([0, 0, 0], [10, 10, 10]), boxAt([14, 0, 0], [10, 10, 10])];
    expect(boxGap(a, b)).toBe(4);
    expect(boxesMeet(boxGrown(a, 2), boxGrown(b, 2))).toBe(true);
    expect(boxesMeet(boxGrown(a, 1.9), boxGrown(b, 2))).toBe(false);
  });
});
