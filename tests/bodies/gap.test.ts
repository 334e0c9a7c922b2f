import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  add,
  boxAt,
  boxGap,
  distance,
  dot,
  length,
  ROUNDING_MM,
  scale,
  seededRandom,
  turnAbout,
  type Vec3,
} from '../../src/base/index.ts';
import { nearestFeatures } from '../../src/bodies/features.ts';
import {
  boxShape,
  type ConvexShape,
  capsuleShape,
  gapBetween,
  gapWithin,
  shapeAt,
  shapeBox,
} from '../../src/bodies/index.ts';
import { anySeed, SEED, someBox, somePose, someShape } from './scenes.ts';

const board = boxShape(boxAt([0, 0, 0], [600, 500, 18]));
const at = (shape: ConvexShape, by: Vec3): ConvexShape => ({
  ...shape,
  vertices: shape.vertices.map((vertex) => add(vertex, by)),
});

/** The same body grown by `by` all round. */
const enlarged = (shape: ConvexShape, by: number): ConvexShape => ({ ...shape, radius: shape.radius + by });

describe('gapBetween, closed forms', () => {
  it('gives the distance of parallel faces and points on both', () => {
    const gap = gapBetween(board, at(board, [100, 0, 28]));
    expect(gap.distance).toBe(10); // 28 − 18
    expect(gap.direction[2]).toBeCloseTo(1, 12);
    expect(gap.from[2]).toBe(18);
    expect(gap.to[2]).toBe(28);
  });

  it('gives the distance of two edges and of two corners', () => {
    expect(gapBetween(board, at(board, [603, 0, 22])).distance).toBeCloseTo(5, 9); // √(3² + 4²)
    expect(gapBetween(board, at(board, [602, 503, 24])).distance).toBeCloseTo(7, 9); // √(2² + 3² + 6²)
  });

  it('takes touching for gap 0: face on face, edge on edge, corner on corner', () => {
    for (const by of [
      [0, 0, 18],
      [10, 7, 18],
      [600, 0, 18],
      [600, 500, 18],
      [600, 0, 0],
    ] as const)
      expect(gapBetween(board, at(board, by)).distance).toBe(0);
  });

  it('gives depth and the shortest way out of an overlap', () => {
    const gap = gapBetween(board, at(board, [590, 480, 5]));
    expect(gap.distance).toBeCloseTo(-10, 9); // least of 600 − 590, 500 − 480, 18 − 5
    expect(gap.direction.map(Math.round)).toEqual([1, 0, 0]);
    expect(gap.from[0] - gap.to[0]).toBeCloseTo(10, 9);
  });

  it('sees a body wholly inside another', () => {
    const inner = boxShape(boxAt([100, 100, 6], [10, 10, 6]));
    expect(gapBetween(board, inner).distance).toBeCloseTo(-12, 9); // 18 − 6, up or down
  });

  it('measures bars and balls to their round surface', () => {
    const ball = capsuleShape([0, 0, 48], [0, 0, 48], 10);
    expect(gapBetween(board, ball).distance).toBeCloseTo(20, 9); // 48 − 18 − 10
    expect(gapBetween(board, ball).to).toEqual([0, 0, 38]);
    const across = capsuleShape([50, -50, 0], [50, 50, 0], 5);
    expect(gapBetween(capsuleShape([0, 0, 0], [100, 0, 0], 5), across).distance).toBe(-10); // cores cross: 5 + 5
    expect(gapBetween(ball, ball).distance).toBe(-20); // one ball twice: 10 + 10
    expect(gapBetween(board, capsuleShape([9, 9, 12], [9, 9, 40], 4)).distance).toBeCloseTo(-10, 9); // 18 − 12 + 4
  });

  it('keeps flat and straight pieces apart from their neighbours', () => {
    const sheet: ConvexShape = {
      vertices: [
        [0, 0, 20],
        [90, 0, 20],
        [90, 90, 20],
        [0, 90, 20],
      ],
      faces: [],
      radius: 0,
    };
    expect(gapBetween(board, sheet).distance).toBeCloseTo(2, 9); // 20 − 18
    expect(gapBetween(sheet, at(sheet, [45, 45, 0])).distance).toBe(0); // in one plane: nothing to part
    expect(gapBetween(board, at(sheet, [5, 5, -7])).distance).toBeCloseTo(-5, 9); // 18 − 13
  });

  it('refuses a shape without vertices', () => {
    expect(() => gapBetween(board, { vertices: [], faces: [], radius: 0 })).toThrow(RangeError);
  });

  it.each([1e-3, 1e-5, 2e-6])('keeps the sign of a turned gap and a turned overlap of %s mm', (small) => {
    const pose = somePose(seededRandom(7), 2000);
    const turned = (by: number): ConvexShape => shapeAt(at(board, [0, 0, 18 + by]), pose);
    expect(gapBetween(shapeAt(board, pose), turned(small)).distance).toBeCloseTo(small, 8);
    expect(gapBetween(shapeAt(board, pose), turned(-small)).distance).toBeCloseTo(-small, 8);
    expect(gapBetween(shapeAt(board, pose), turned(0)).distance).toBe(0);
  });
});

describe('gapBetween, boards nearly parallel', () => {
  it('proves its distance by a plane across it, however slight the tilt and the gap', () => {
    const random = seededRandom(SEED);
    const between = (least: number, most: number): number => least + (most - least) * random();
    const boardAt = (z: number): ConvexShape =>
      boxShape(boxAt([between(-900, 900), between(-900, 900), z], [between(100, 900), between(100, 900), 18]));
    let [unproven, apart] = [0, 0];
    for (let i = 0; i < 4000; i++) {
      const by = [0, 1e-6, 3e-6, 1e-5, 1e-3, 5][Math.floor(random() * 6)] ?? 0;
      const tilt = turnAbout(
        [between(-900, 900), 0, 18],
        [between(-1, 1), between(-1, 1), 0.1],
        10 ** between(-13, -2),
      );
      const pose = somePose(random, 3000);
      const [a, b] = [shapeAt(boardAt(0), pose), shapeAt(shapeAt(boardAt(18 + by), tilt), pose)];
      const { distance: said, direction } = gapBetween(a, b);
      const high = Math.max(...a.vertices.map((v) => dot(v, direction)));
      const low = Math.min(...b.vertices.map((v) => dot(v, direction)));
      unproven = Math.max(unproven, Math.abs(low - high - said));
      if (said > 0) apart = Math.max(apart, Math.abs(said - Math.sqrt(nearestFeatures(a, b).square)));
    }
    expect(unproven).toBeLessThan(2 * ROUNDING_MM);
    expect(apart).toBeLessThan(ROUNDING_MM);
  });
});

describe('gapBetween, laws', () => {
  const law = (name: string, holds: (seed: number) => void): void =>
    it(name, () => fc.assert(fc.property(anySeed, holds), { seed: SEED, numRuns: 400 }));

  law('is the same from both sides', (seed) => {
    const random = seededRandom(seed);
    const [a, b] = [someShape(random, 300), someShape(random, 300)];
    const [there, back] = [gapBetween(a, b), gapBetween(b, a)];
    expect(Math.abs(there.distance - back.distance)).toBeLessThanOrEqual(ROUNDING_MM);
  });

  law('states points that bear the distance out', (seed) => {
    const random = seededRandom(seed);
    const [a, b] = [someShape(random, 300), someShape(random, 300)];
    const gap = gapBetween(a, b);
    expect(length(gap.direction)).toBeCloseTo(1, 9);
    expect(distance(gap.to, add(gap.from, scale(gap.direction, gap.distance)))).toBeLessThan(ROUNDING_MM);
    if (gap.distance <= 0) return;
    const reachA = Math.max(...a.vertices.map((v) => dot(v, gap.direction))) + a.radius;
    const startB = Math.min(...b.vertices.map((v) => dot(v, gap.direction))) - b.radius;
    expect(startB - reachA).toBeCloseTo(gap.distance, 5); // the plane across the gap proves it
  });

  law('does not change when both bodies move together', (seed) => {
    const random = seededRandom(seed);
    const [a, b, pose] = [someShape(random, 300), someShape(random, 300), somePose(random, 3000)];
    const here = gapBetween(a, b);
    const there = gapBetween(shapeAt(a, pose), shapeAt(b, pose));
    expect(Math.abs(there.distance - here.distance)).toBeLessThanOrEqual(ROUNDING_MM);
  });

  law('never grows when a body grows', (seed) => {
    const random = seededRandom(seed);
    const [a, b] = [someShape(random, 300), someShape(random, 300)];
    const by = random() * 50;
    expect(gapBetween(enlarged(a, by), b).distance).toBeLessThanOrEqual(gapBetween(a, b).distance + ROUNDING_MM);
    const more: ConvexShape = { vertices: [...a.vertices, [random() * 900, 0, 0]], faces: [], radius: a.radius };
    expect(gapBetween(more, b).distance).toBeLessThanOrEqual(gapBetween(a, b).distance + ROUNDING_MM);
  });

  law('agrees with the plain twin where bodies are apart, and with the boxes where they are square', (seed) => {
    const random = seededRandom(seed);
    const [a, b] = [someShape(random, 400), someShape(random, 400)];
    const gap = gapBetween(a, b);
    const core = gap.distance + a.radius + b.radius;
    if (core > ROUNDING_MM) expect(core).toBeCloseTo(Math.sqrt(nearestFeatures(a, b).square), 6);
    const [p, q] = [someBox(random, 300), someBox(random, 300)];
    expect(Math.max(0, gapBetween(p, q).distance)).toBeCloseTo(boxGap(shapeBox(p), shapeBox(q)), 6);
  });

  law('parts the bodies by the move it states, and by none much shorter', (seed) => {
    const random = seededRandom(seed);
    const [a, b] = [someShape(random, 120), someShape(random, 120)];
    const gap = gapBetween(a, b);
    if (gap.distance >= 0) return;
    expect(gapBetween(a, at(b, scale(gap.direction, -gap.distance))).distance).toBeCloseTo(0, 5);
    for (let i = 0; i < 20; i++) {
      const way: Vec3 = [random() - 0.5, random() - 0.5, random() - 0.5];
      const shorter = scale(way, (-gap.distance * 0.99) / length(way));
      expect(gapBetween(a, at(b, shorter)).distance).toBeLessThan(0);
    }
  });

  law('is found within a limit exactly when it is no more than the limit', (seed) => {
    const random = seededRandom(seed);
    const [a, b] = [someShape(random, 300), someShape(random, 300)];
    const gap = gapBetween(a, b);
    expect(gapWithin(a, b, gap.distance + 1)?.distance).toBe(gap.distance);
    expect(gapWithin(a, b, gap.distance - 1)).toBeNull();
  });
});
