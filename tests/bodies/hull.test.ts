import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  boxAt,
  boxCorners,
  cross,
  dot,
  ROUNDING_MM,
  seededRandom,
  subtract,
  unit,
  type Vec3,
} from '../../src/base/index.ts';
import {
  boxShape,
  type ConvexShape,
  capsuleShape,
  convexHull,
  gapBetween,
  type Shell,
  shapeAt,
  shellIsClosed,
  shellVolume,
  sweptShape,
} from '../../src/bodies/index.ts';
import { anySeed, SEED, someBox, somePoint, somePose, someShape } from './scenes.ts';

/** The faces of a shape as a shell: each fanned from its first corner. */
const shellOf = ({ vertices, faces }: ConvexShape): Shell => ({
  positions: vertices.flat(),
  triangles: faces.flatMap((face) => face.slice(2).flatMap((corner, i) => [face[0] ?? 0, face[i + 1] ?? 0, corner])),
});

/** The validator of every hull: closed, outward, no vertex above a face by more than rounding, every point inside. */
const expectHull = (hull: ConvexShape, points: readonly Vec3[]): void => {
  expect(shellIsClosed(shellOf(hull))).toBe(true);
  expect(shellVolume(shellOf(hull))).toBeGreaterThan(0);
  for (const face of hull.faces) {
    const [a, b, c] = face.map((i) => hull.vertices[i]);
    if (!a || !b || !c) throw new Error('a face needs three corners');
    const normal = unit(cross(subtract(b, a), subtract(c, a)));
    expect(Math.max(...points.map((point) => dot(normal, subtract(point, a))))).toBeLessThan(1e-4);
  }
};

describe('convexHull', () => {
  it('gives a box its six square faces, whatever lies inside or on it', () => {
    const box = boxAt([10, 20, 30], [100, 50, 18]);
    const hull = convexHull([...boxCorners(box), [50, 40, 40], [60, 20, 30], [60, 30, 30]]);
    expect(hull.vertices).toHaveLength(8);
    expect(hull.faces.map((face) => face.length)).toEqual([4, 4, 4, 4, 4, 4]);
    expect(shellVolume(shellOf(hull))).toBeCloseTo(90000, 6); // 100 · 50 · 18
    expectHull(hull, hull.vertices);
  });

  it('gives points without volume no faces', () => {
    expect(convexHull([[1, 2, 3]]).faces).toEqual([]);
    expect(
      convexHull([
        [0, 0, 0],
        [5, 0, 0],
        [9, 0, 0],
      ]).faces,
    ).toEqual([]);
    expect(
      convexHull([
        [0, 0, 0],
        [5, 0, 0],
        [9, 7, 0],
        [3, 3, 0],
      ]).vertices,
    ).toHaveLength(4);
    expect(() => convexHull([])).toThrow(RangeError);
  });

  it('holds every point of a random cloud and needs only some', () =>
    fc.assert(
      fc.property(anySeed, (seed) => {
        const random = seededRandom(seed);
        const points = Array.from({ length: 6 + Math.floor(random() * 40) }, () => somePoint(random, 500));
        const hull = convexHull(points);
        expectHull(hull, points);
        const gaps = points.map((point) => gapBetween(hull, capsuleShape(point, point, 0)).distance);
        expect(Math.max(...gaps)).toBeLessThanOrEqual(ROUNDING_MM);
      }),
      { seed: SEED, numRuns: 60 },
    ));
});

describe('sweptShape', () => {
  it('sweeps a box along its edge into a longer box, and aslant into a six-cornered prism', () => {
    const box = boxShape(boxAt([0, 0, 0], [100, 50, 18]));
    expect(sweptShape(box, [300, 0, 0]).faces.map((face) => face.length)).toEqual([4, 4, 4, 4, 4, 4]);
    const slanted = sweptShape(box, [300, 40, 0]);
    expect(slanted.faces.map((face) => face.length).sort((a, b) => a - b)).toEqual([4, 4, 4, 4, 4, 4, 6, 6]);
    // The box itself, then the side faces 50 · 18 moved on 300 and 100 · 18 moved on 40.
    expect(shellVolume(shellOf(slanted))).toBeCloseTo(90000 + 900 * 300 + 1800 * 40, 5);
  });

  it('keeps a shape that does not move', () => {
    const bar = capsuleShape([0, 0, 0], [10, 0, 0], 4);
    expect(sweptShape(bar, [0, 0, 0])).toBe(bar);
    expect(sweptShape(bar, [0, 7, 0]).radius).toBe(4);
  });

  it('keeps plane faces plane when turned, and is as near as the nearest position', () =>
    fc.assert(
      fc.property(anySeed, (seed) => {
        const random = seededRandom(seed);
        const shape = shapeAt(someBox(random, 200), somePose(random, 100));
        const along = somePoint(random, 600);
        const swept = sweptShape(shape, along);
        expectHull(swept, swept.vertices);
        expect(swept.faces).toHaveLength(12); // a box swept askew: three faces at each end, six sides
        const other = someShape(random, 600);
        const whole = gapBetween(swept, other).distance;
        let least = Infinity;
        for (let i = 0; i <= 200; i++) {
          const by: Vec3 = [(along[0] * i) / 200, (along[1] * i) / 200, (along[2] * i) / 200];
          const moved = {
            ...shape,
            vertices: shape.vertices.map((v): Vec3 => [v[0] + by[0], v[1] + by[1], v[2] + by[2]]),
          };
          least = Math.min(least, gapBetween(moved, other).distance);
        }
        expect(whole).toBeLessThanOrEqual(least + ROUNDING_MM);
        if (whole > 0) expect(least - whole).toBeLessThan(3); // 200 steps of at most 1039 / 200 mm, half a step off
      }),
      { seed: SEED, numRuns: 60 },
    ));
});
