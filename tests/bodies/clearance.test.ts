import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  add,
  boxAt,
  boxGrown,
  distance,
  length,
  ROUNDING_MM,
  scale,
  seededRandom,
  type Vec2,
  type Vec3,
} from '../../src/base/index.ts';
import {
  boxShape,
  type ConvexShape,
  capsuleShape,
  certifiedTravel,
  clearanceInside,
  gapBetween,
  loadSolids,
  loftShell,
  type Motion,
  prepareShell,
  shapeAt,
  shellHolds,
  shellTriangles,
  skinGap,
  skinShapes,
  travelBox,
} from '../../src/bodies/index.ts';
import { anySeed, SEED, someBox, someCapsule, somePose } from './scenes.ts';

/** A room 900 deep, 1100 wide, 900 high, with a wheelhouse 150 wide and 250 high along either side. */
const ring: readonly Vec2[] = [
  [-400, 0],
  [400, 0],
  [400, 250],
  [550, 250],
  [550, 900],
  [-550, 900],
  [-550, 250],
  [-400, 250],
];
const room = prepareShell(
  loftShell([
    { x: 0, ring },
    { x: 450, ring },
    { x: 900, ring },
  ]),
);
const LIMIT = 60;
const clear = (shape: ConvexShape): number | undefined => clearanceInside(shape, room, LIMIT)?.distance;
const box = (at: Vec3, size: Vec3): ConvexShape => boxShape(boxAt(at, size));

describe('clearanceInside, closed forms', () => {
  it('gives the clearance of a body wholly inside, with both points', () => {
    const gap = clearanceInside(box([300, -100, 12], [200, 200, 100]), room, LIMIT);
    expect(gap?.distance).toBeCloseTo(12, 9);
    expect(gap?.from[2]).toBeCloseTo(12, 9);
    expect(gap?.to[2]).toBeCloseTo(0, 9);
    expect(gap?.direction[2]).toBeCloseTo(-1, 9);
    // To the wheelhouse edge at y 400, z 250, three to the side and four above: 5.
    expect(clear(box([300, 100, 254], [100, 297, 100]))).toBeCloseTo(5, 9);
    expect(clear(box([300, 100, 254], [100, 403, 100]))).toBeCloseTo(4, 9); // over its top
  });

  it('says null when the clearance is beyond the limit', () => {
    expect(clear(box([300, -100, 300], [200, 200, 100]))).toBeUndefined();
  });

  it('takes standing on the floor, leaning on a wall and filling a corner for touching', () => {
    expect(clear(box([300, -100, 0], [200, 200, 100]))).toBe(0);
    expect(clear(box([300, 200, 0], [200, 200, 250]))).toBe(0);
    expect(clear(box([0, 350, 250], [900, 200, 650]))).toBe(0);
    expect(clear(capsuleShape([300, 0, 30], [500, 0, 30], 30))).toBe(0);
  });

  it('gives the depth at a vertex, at an edge and behind the edge of a wheelhouse', () => {
    expect(clear(box([300, -100, -7], [200, 200, 100]))).toBeCloseTo(-7, 9);
    expect(clear(box([-30, -100, -7], [200, 200, 100]))).toBeCloseTo(-Math.hypot(30, 7), 9); // its corner, from the sill edge
    // Lowered 20 on to both wheelhouses at once: its bottom stands 20 below their tops, its corners beyond the walls.
    expect(clear(box([300, -540, 230], [200, 1080, 100]))).toBeCloseTo(-20, 9);
    // A board through the wall: its end stands 40 outside.
    expect(clear(box([300, 300, 500], [200, 290, 18]))).toBeCloseTo(-40, 9);
  });

  it('gives the depth of a bar by its round surface', () => {
    expect(clear(capsuleShape([300, 0, 50], [500, 0, 50], 52))).toBeCloseTo(-2, 9); // core inside, surface 2 out
    expect(clear(capsuleShape([300, 0, 50], [300, 0, -50], 10))).toBeCloseTo(-60, 9); // 50 + 10
  });

  it('gives a body wholly outside the distance of its furthest corner', () => {
    expect(clear(box([2000, -100, 400], [300, 200, 100]))).toBeCloseTo(-1400, 9); // 2300 − 900
  });

  it('sees a body so big that the whole room lies inside it', () => {
    expect(clear(box([-100, -800, -100], [1200, 1600, 1200]))).toBeLessThan(-100);
  });
});

describe('clearanceInside, a post of the vehicle poking up into the middle of a body', () => {
  it('finds the body outside though no vertex or edge of it is', async () => {
    const solids = await loadSolids();
    const free = solids.scope(() =>
      solids.toShell(
        solids.difference(solids.fromShell(room.shell), [solids.fromConvex(box([400, -20, -5], [40, 40, 105]))]),
      ),
    );
    const over = prepareShell(free);
    expect(clearanceInside(box([300, -100, 103], [240, 200, 50]), over, LIMIT)?.distance).toBeCloseTo(3, 6); // over its top
    expect(clearanceInside(box([300, -100, 100], [240, 200, 50]), over, LIMIT)?.distance).toBe(0);
    const through = clearanceInside(box([300, -100, 60], [240, 200, 50]), over, LIMIT)?.distance ?? 0;
    expect(through).toBeLessThan(-10); // somewhere in the post's 40 by 40; its middle is 20 from every side
    expect(through).toBeGreaterThanOrEqual(-20 - ROUNDING_MM);
  });
});

describe('clearanceInside, laws', () => {
  const somewhere = (seed: number): ConvexShape => {
    const random = seededRandom(seed);
    const turned = shapeAt(random() < 0.7 ? someBox(random, 150) : someCapsule(random, 150), somePose(random, 150));
    return shapeAt(turned, { turn: somePose(random, 1).turn, at: [450 + random() * 300, random() * 400, 450] });
  };

  it('agrees with looking at every triangle and at every corner', () =>
    fc.assert(
      fc.property(anySeed, (seed) => {
        const shape = somewhere(seed);
        const gap = clearanceInside(shape, room, 2000);
        const skin = shellTriangles(room.shell).map((vertices): ConvexShape => ({ vertices, faces: [], radius: 0 }));
        const plain = Math.min(...skin.map((triangle) => gapBetween(shape, triangle).distance));
        expect(gap).not.toBeNull();
        if (!gap) return;
        expect(distance(gap.to, add(gap.from, scale(gap.direction, gap.distance)))).toBeLessThan(ROUNDING_MM);
        expect(length(gap.direction)).toBeCloseTo(1, 9);
        const outside = shape.vertices.filter((vertex) => !shellHolds(room, vertex));
        if (gap.distance > 0) {
          expect(gap.distance).toBeCloseTo(plain, 6);
          expect(outside).toEqual([]);
          return;
        }
        // Depth is never less than that of any vertex outside, and its point is indeed that far outside.
        for (const vertex of outside) {
          const out = skinGap({ vertices: [vertex], faces: [], radius: 0 }, room, Infinity)?.distance ?? 0;
          expect(gap.distance).toBeLessThanOrEqual(-out - shape.radius + ROUNDING_MM);
        }
        if (plain > ROUNDING_MM) expect(outside).toHaveLength(shape.vertices.length); // clean outside
      }),
      { seed: SEED, numRuns: 300 },
    ));

  it('never grows when the body grows', () =>
    fc.assert(
      fc.property(anySeed, (seed) => {
        const shape = somewhere(seed);
        const small = clearanceInside(shape, room, 2000)?.distance ?? Infinity;
        const big = clearanceInside({ ...shape, radius: shape.radius + 9 }, room, 2000)?.distance ?? Infinity;
        expect(big).toBeLessThanOrEqual(small + ROUNDING_MM);
      }),
      { seed: SEED, numRuns: 200 },
    ));
});

describe('skinShapes', () => {
  it('makes the skin an obstacle for what turns inside it', () => {
    // A door 700 long, hinged at the middle of the floor, falls on to the side wall, 550 away.
    const door = box([300, 0, 300], [200, 18, 500]);
    const falling: Motion = { kind: 'turn', point: [300, 0, 300], axis: [-1, 0, 0], fromRad: 0, toRad: Math.PI / 2 };
    const near = skinShapes(room, boxGrown(travelBox(falling, door), 60));
    expect(near.length).toBeGreaterThan(0);
    expect(near.length).toBeLessThan(room.triangles.length);
    const travel = certifiedTravel(falling, [door], near, 0);
    expect(travel.clear).toBe(true);
    expect(travel.leastGap).toBeCloseTo(32, 2); // lying flat its under side comes 300 − 18 − 250 over the wheelhouse
    const longer = box([300, 0, 300], [200, 18, 560]);
    const stopped = certifiedTravel(falling, [longer], skinShapes(room, travelBox(falling, longer)), 0);
    // The outer top corner, 18 behind the hinge line, reaches y 550 at α: 560 sin α + 18 cos α = 550.
    const angle = Math.asin(550 / Math.hypot(560, 18)) - Math.atan2(18, 560);
    expect(stopped.reaches).toBeCloseTo(angle, 6);
  });
});
