import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  add,
  between,
  cross,
  degrees,
  distance,
  dot,
  length,
  middle,
  negate,
  ROUNDING_MM,
  radians,
  sameLength,
  scale,
  subtract,
  unit,
  type Vec3,
} from '../../src/base/index.ts';

const SEEDED = { seed: 20266, numRuns: 1000 } as const;

const coordinate = fc.integer({ min: -1000, max: 1000 });
const vector: fc.Arbitrary<Vec3> = fc.tuple(coordinate, coordinate, coordinate);

describe('vectors', () => {
  test('the axes of the vehicle are right-handed: forward × left = up', () => {
    expect(cross([1, 0, 0], [0, 1, 0])).toEqual([0, 0, 1]);
  });

  test('a product is square to both, and as long as their parallelogram', () => {
    fc.assert(
      fc.property(vector, vector, (a, b) => {
        const c = cross(a, b);
        expect(dot(a, c)).toBe(0);
        expect(dot(b, c)).toBe(0);
        // |a × b|² + (a · b)² = |a|² |b|² (Lagrange); whole numbers up to 10^13, exact in doubles
        expect(dot(c, c) + dot(a, b) ** 2).toBe(dot(a, a) * dot(b, b));
      }),
      SEEDED,
    );
  });

  test('adding, subtracting, turning round', () => {
    fc.assert(
      fc.property(vector, vector, (a, b) => {
        expect(subtract(add(a, b), b)).toEqual(a);
        expect(add(add(a, b), negate(b))).toEqual(a);
        expect(distance(a, b)).toBe(length(subtract(b, a)));
        expect(middle(a, b)).toEqual(between(a, b, 0.5));
        expect(between(a, b, 0)).toEqual(a);
        expect(between(a, b, 1)).toEqual(b);
      }),
      SEEDED,
    );
  });

  test('a direction has length one and keeps its side', () => {
    expect(length([3, 4, 12])).toBe(13); // 9 + 16 + 144 = 169
    expect(unit([0, 0, -7])).toEqual([0, 0, -1].map((x) => x + 0));
    fc.assert(
      fc.property(
        vector.filter((v) => length(v) > 0),
        (v) => {
          expect(length(unit(v))).toBeCloseTo(1, 14);
          expect(distance(scale(unit(v), length(v)), v)).toBeLessThan(1e-9);
        },
      ),
      SEEDED,
    );
  });

  test('no direction without length', () => {
    expect(() => unit([0, 0, 0])).toThrow('(0, 0, 0)');
    expect(() => unit([Number.NaN, 0, 0])).toThrow(RangeError);
  });
});

describe('angles and tolerance', () => {
  test('degrees and radians', () => {
    expect(radians(180)).toBe(Math.PI);
    expect(degrees(Math.PI / 2)).toBe(90);
  });

  test('lengths that differ by rounding are the same; a difference of exactly the tolerance counts as the same', () => {
    expect(sameLength(ROUNDING_MM, 0)).toBe(true);
    expect(sameLength(0, ROUNDING_MM)).toBe(true);
    expect(sameLength(2 * ROUNDING_MM, 0)).toBe(false);
    expect(sameLength(0.1 + 0.2, 0.3)).toBe(true);
    expect(sameLength(Number.NaN, 0)).toBe(false);
  });
});
