import fc from 'fast-check';
import { expect } from 'vitest';
import { ROUNDING_MM3, type Vec3 } from '../../src/base/index.ts';
import { type Shell, type Solids, shellIsClosed, shellTriangles, shellVolume } from '../../src/bodies/index.ts';
import type { Survey } from '../../src/design/index.ts';
import { type CargoSpace, holdsPoint } from '../../src/envelope/index.ts';
import { type Points, surveyOf } from '../envelope/surveys.ts';

/** Volumes of a few cubic metres in mm³, summed over some hundred triangles: relative rounding of doubles. */
const sameVolume = (a: number, b: number): void => {
  expect(Math.abs(a - b)).toBeLessThan(ROUNDING_MM3);
};

/** Above the highest climb of a side: the roof runs level across the vehicle and meets no wall on its way. */
const ROOF = 2500;

/** A side that climbs from the floor to the roof, bulging in and out. */
const side: fc.Arbitrary<Points> = fc
  .array(fc.tuple(fc.integer({ min: 300, max: 750 }), fc.integer({ min: 20, max: 400 })), {
    minLength: 3,
    maxLength: 7,
  })
  .map((steps) => {
    let up = 0;
    return steps.map(([out, climb], i) => {
      up += i === 0 ? 0 : climb;
      return [out, i === steps.length - 1 ? ROOF : up] as const;
    });
  });

const obstacle = fc.oneof(
  fc
    .record({
      shape: fc.constant('box'),
      min: fc.tuple(
        fc.integer({ min: -100, max: 900 }),
        fc.integer({ min: -800, max: 500 }),
        fc.integer({ min: -50, max: 200 }),
      ),
      size: fc.tuple(
        fc.integer({ min: 20, max: 500 }),
        fc.integer({ min: 20, max: 300 }),
        fc.integer({ min: 20, max: 300 }),
      ),
    })
    .map(({ shape, min, size }) => ({ shape, min, max: min.map((low, i) => low + (size[i] ?? 1)) })),
  fc.record({
    shape: fc.constant('capsule'),
    from: fc.tuple(
      fc.integer({ min: 0, max: 900 }),
      fc.integer({ min: -600, max: 600 }),
      fc.integer({ min: 0, max: 900 }),
    ),
    to: fc.tuple(
      fc.integer({ min: 0, max: 900 }),
      fc.integer({ min: -600, max: 600 }),
      fc.integer({ min: 0, max: 900 }),
    ),
    radiusMm: fc.integer({ min: 5, max: 60 }),
  }),
  fc.record({
    shape: fc.constant('side-prism'),
    outline: fc.constantFrom(
      [
        [200, 0],
        [900, 0],
        [900, 200],
        [700, 300],
        [350, 300],
      ],
      [
        [200, 0],
        [350, 300],
        [700, 300],
      ],
    ),
    fromY: fc.integer({ min: 200, max: 400 }),
    toY: fc.integer({ min: 450, max: 800 }),
  }),
);

/** Surveys with two to five stations of three to seven points a side, and up to four fixed obstacles. */
export const anySurvey: fc.Arbitrary<Survey> = fc
  .record({
    stations: fc.array(fc.record({ run: fc.integer({ min: 50, max: 600 }), left: side, right: side }), {
      minLength: 2,
      maxLength: 5,
    }),
    solids: fc.array(obstacle, { maxLength: 4 }),
  })
  .map(({ stations, solids }) => {
    let xMm = 0;
    return surveyOf(
      stations.map(({ run, left, right }, i) => {
        xMm += i === 0 ? 0 : run;
        return { xMm, left, right };
      }),
      {
        obstacles: solids.map((solid, i) => ({
          id: `obstacle-${i + 1}`,
          name: `Obstacle ${i + 1}`,
          kind: 'other',
          solid,
        })),
      },
    );
  });

export const skinsAreClosedAndOutward = (space: CargoSpace): void => {
  expect(shellIsClosed(space.skin)).toBe(true);
  expect(shellIsClosed(space.free)).toBe(true);
  expect(shellVolume(space.skin)).toBeGreaterThan(0);
  sameVolume(shellVolume(space.free), space.freeVolumeMm3);
};

/** What the obstacles take of the skin and what is left of it make up the skin. */
export const obstaclesAndFreeMakeTheSkin = (space: CargoSpace, solids: Solids): void => {
  const taken = solids.scope(() => {
    const parts = space.bodies.filter((body) => body.closure === null).map((body) => solids.fromConvex(body.shape));
    return parts.length === 0
      ? 0
      : solids.volume(solids.intersection(solids.fromShell(space.skin), solids.union(parts)));
  });
  sameVolume(space.freeVolumeMm3 + taken, space.skinVolumeMm3);
};

/** Area of the skin's section at a depth that is no station: the oriented pieces in which its triangles meet the plane. */
const sectionArea = (skin: Shell, x: number): number => {
  let twice = 0;
  for (const triangle of shellTriangles(skin)) {
    const ends: Vec3[] = [];
    let rising = false;
    triangle.forEach((a, i) => {
      const b = triangle[(i + 1) % 3] ?? a;
      if (a[0] < x === b[0] < x) return;
      const t = (x - a[0]) / (b[0] - a[0]);
      if (ends.length === 0) rising = a[0] < x;
      ends.push([x, a[1] + (b[1] - a[1]) * t, a[2] + (b[2] - a[2]) * t]);
    });
    const [p, q] = ends;
    if (p && q) twice += (rising ? 1 : -1) * (p[1] * q[2] - q[1] * p[2]);
  }
  return Math.abs(twice) / 2;
};

/**
 * Between two stations every corner of the section runs straight, so its area is a quadratic of the depth and three
 * sections make the volume (the two-point rule of Gauss would do; the middle one is a check).
 */
export const volumeIsTheIntegralOfSections = (space: CargoSpace): void => {
  let volume = 0;
  space.sections.forEach(({ x }, i) => {
    const next = space.sections[i + 1];
    if (!next) return;
    const run = next.x - x;
    // Gauss with three points: exact up to the fifth power.
    const off = Math.sqrt(3 / 5) / 2;
    const [a, m, b] = [0.5 - off, 0.5, 0.5 + off].map((t) => sectionArea(space.skin, x + t * run));
    volume += (run / 18) * (5 * (a ?? 0) + 8 * (m ?? 0) + 5 * (b ?? 0));
  });
  sameVolume(volume, space.skinVolumeMm3);
};

/** Every corner of every section touches the skin; the free room holds it unless an obstacle covers it. */
export const cornersBelongToTheSkin = (space: CargoSpace): void => {
  if (space.bodies.length > 0) return;
  for (const { x, ring } of space.sections) for (const [y, z] of ring) expect(holdsPoint(space, [x, y, z])).toBe(true);
};
