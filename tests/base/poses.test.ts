import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  after,
  cross,
  distance,
  dot,
  HOME,
  inverse,
  length,
  type Pose,
  placed,
  radians,
  shift,
  subtract,
  turnAbout,
  turned,
  type Vec3,
} from '../../src/base/index.ts';

const SEEDED = { seed: 20262, numRuns: 500 } as const;

const coordinate = fc.double({ min: -4000, max: 4000, noNaN: true });
const point: fc.Arbitrary<Vec3> = fc.tuple(coordinate, coordinate, coordinate);
const axis: fc.Arbitrary<Vec3> = fc
  .tuple(fc.integer({ min: -9, max: 9 }), fc.integer({ min: -9, max: 9 }), fc.integer({ min: -9, max: 9 }))
  .filter((v) => v.some((x) => x !== 0));
const angleRad = fc.double({ min: -7, max: 7, noNaN: true });
const pose: fc.Arbitrary<Pose> = fc
  .tuple(point, axis, angleRad, point)
  .map(([through, along, angle, by]) => after(shift(by), turnAbout(through, along, angle)));

/** Coordinates of some metres, through a handful of products: doubles leave about 1e-12 of their size. */
const near = (a: Vec3, b: Vec3): void => {
  expect(distance(a, b)).toBeLessThan(1e-8);
};

describe('poses', () => {
  test('home leaves a point where it is', () => {
    fc.assert(
      fc.property(point, (p) => near(placed(HOME, p), p)),
      SEEDED,
    );
  });

  test('after: the outer pose acts on what the inner one placed', () => {
    fc.assert(
      fc.property(pose, pose, point, (outer, inner, p) =>
        near(placed(after(outer, inner), p), placed(outer, placed(inner, p))),
      ),
      SEEDED,
    );
  });

  test('after: brackets do not matter', () => {
    fc.assert(
      fc.property(pose, pose, pose, point, (a, b, c, p) =>
        near(placed(after(after(a, b), c), p), placed(after(a, after(b, c)), p)),
      ),
      SEEDED,
    );
  });

  test('inverse brings every point back, from both sides', () => {
    fc.assert(
      fc.property(pose, point, (a, p) => {
        near(placed(after(inverse(a), a), p), p);
        near(placed(after(a, inverse(a)), p), p);
      }),
      SEEDED,
    );
  });

  test('a pose is rigid: lengths, angles and handedness stay', () => {
    fc.assert(
      fc.property(pose, point, point, (a, p, q) => {
        expect(distance(placed(a, p), placed(a, q))).toBeCloseTo(distance(p, q), 7);
        const [x, y, z] = a.turn;
        expect(dot(x, y)).toBeCloseTo(0, 12);
        expect(length(z)).toBeCloseTo(1, 12);
        near(cross(x, y), z);
      }),
      SEEDED,
    );
  });

  test('a direction is turned but not moved', () => {
    fc.assert(
      fc.property(pose, point, point, (a, p, q) =>
        near(turned(a, subtract(q, p)), subtract(placed(a, q), placed(a, p))),
      ),
      SEEDED,
    );
  });
});

describe('turnAbout', () => {
  test('a right-handed quarter turn about z brings x to y', () => {
    near(placed(turnAbout([0, 0, 0], [0, 0, 5], radians(90)), [1, 0, 0]), [0, 1, 0]);
  });

  test('a quarter turn about a line away from the origin', () => {
    // About the vertical line through (10, 0): (12, 0) goes 2 to the left of it, to (10, 2); height stays.
    near(placed(turnAbout([10, 0, 0], [0, 0, 1], radians(90)), [12, 0, 7]), [10, 2, 7]);
  });

  test('a hatch opens upward: a turn about y by a negative angle lifts what lies forward', () => {
    // Right-handed about y takes z to x and x to −z: 90° backward takes x to z.
    near(placed(turnAbout([0, 0, 0], [0, 1, 0], radians(-90)), [100, 0, 0]), [0, 0, 100]);
  });

  test('the axis stays where it is', () => {
    fc.assert(
      fc.property(
        point,
        axis,
        angleRad,
        fc.double({ min: -100, max: 100, noNaN: true }),
        (through, along, angle, t) => {
          const on: Vec3 = [through[0] + t * along[0], through[1] + t * along[1], through[2] + t * along[2]];
          near(placed(turnAbout(through, along, angle), on), on);
        },
      ),
      SEEDED,
    );
  });

  test('angles about one axis add up', () => {
    fc.assert(
      fc.property(point, axis, angleRad, angleRad, point, (through, along, a, b, p) =>
        near(
          placed(after(turnAbout(through, along, a), turnAbout(through, along, b)), p),
          placed(turnAbout(through, along, a + b), p),
        ),
      ),
      SEEDED,
    );
  });

  test('needs a direction', () => {
    expect(() => turnAbout([0, 0, 0], [0, 0, 0], 1)).toThrow('no direction');
  });
});
