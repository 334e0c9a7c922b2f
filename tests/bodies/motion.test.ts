import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boxAt, distance, HOME, length, ROUNDING_MM, radians, seededRandom, unit } from '../../src/base/index.ts';
import {
  boxShape,
  greatestSpeed,
  type Motion,
  motionPose,
  motionSpan,
  reversed,
  shapeAt,
  shapeBox,
  travelBox,
} from '../../src/bodies/index.ts';
import { carriedPose, checkedMotion, greatestReach, motionAt } from '../../src/bodies/motion.ts';
import { anySeed, SEED, someMotion, somePoint, someShape } from './scenes.ts';

const quarter: Motion = { kind: 'turn', point: [100, 0, 0], axis: [0, 0, 1], fromRad: 0, toRad: radians(90) };
const box = boxShape(boxAt([100, 0, 0], [30, 40, 7]));

describe('motion', () => {
  it('slides along, and turns right-handed about its line', () => {
    const out = motionPose({ kind: 'slide', along: [1, 0, 0], fromMm: 0, toMm: 500 }, 20);
    expect(out.at).toEqual([20, 0, 0]);
    const turned = shapeAt(boxShape(boxAt([110, 0, 0], [1, 1, 1])), motionPose(quarter, radians(90)));
    expect(turned.vertices[0]?.[0]).toBeCloseTo(100, 12); // 10 off the line along x comes to stand 10 off along y
    expect(turned.vertices[0]?.[1]).toBeCloseTo(10, 12);
  });

  it('gives the greatest speed: 1 for a slide, the furthest corner for a turn', () => {
    expect(greatestSpeed({ kind: 'slide', along: [1, 0, 0], fromMm: 0, toMm: 9 }, box)).toBe(1);
    expect(greatestSpeed(quarter, { ...box, radius: 2 })).toBeCloseTo(52, 12); // √(30² + 40²) + 2
  });

  it('boxes a quarter turn by its arcs, not by its ends', () => {
    const { min, max } = travelBox(quarter, box);
    expect(max[1]).toBeCloseTo(50, 9); // the far corner passes straight over the line: √(30² + 40²)
    expect(min[0]).toBeCloseTo(60, 9); // and ends 40 to its other side
    expect(max[0]).toBeCloseTo(130, 9);
    expect([min[2], max[2]]).toEqual([0, 7]);
  });

  it('stacks carriers outermost first', () => {
    const slide: Motion = { kind: 'slide', along: [1, 0, 0], fromMm: 0, toMm: 400 };
    const pose = carriedPose([
      { motion: quarter, at: radians(90) },
      { motion: slide, at: 30 },
    ]);
    expect(pose.at[0]).toBeCloseTo(100, 12); // the slide, now along y, from where the turn brings the origin
    expect(pose.at[1]).toBeCloseTo(-100 + 30, 12);
    expect(carriedPose([])).toEqual(HOME);
    const ridden = motionAt(slide, pose);
    expect(ridden.kind === 'slide' ? ridden.along[1] : 0).toBeCloseTo(1, 12);
  });

  it.each<[string, Motion]>([
    ['a slide without direction', { kind: 'slide', along: [0, 0, 0], fromMm: 0, toMm: 1 }],
    ['a turn without axis', { kind: 'turn', point: [0, 0, 0], axis: [0, 0, 0], fromRad: 0, toRad: 1 }],
    ['a turn of more than once round', { kind: 'turn', point: [0, 0, 0], axis: [0, 0, 1], fromRad: -1, toRad: 6 }],
    ['a travel to nowhere', { kind: 'slide', along: [1, 0, 0], fromMm: 0, toMm: Number.NaN }],
  ])('refuses %s', (_, motion) => expect(() => checkedMotion(motion)).toThrow(RangeError));

  it('reaches no further than it says, and as far', () =>
    fc.assert(
      fc.property(anySeed, (seed) => {
        const random = seededRandom(seed);
        const motion = checkedMotion(someMotion(random, 400));
        const shape = someShape(random, 300);
        const direction = unit(somePoint(random, 1));
        const [from, to] = motionSpan(motion);
        const [low, high] = [Math.min(from, to), Math.max(from, to)];
        const cut = Math.min(high, low + Math.PI);
        const said = greatestReach(motion, shape, direction, low, cut);
        const around = travelBox(motion, shape);
        let most = -Infinity;
        let out = -Infinity;
        for (let i = 0; i <= 400; i++) {
          const stood = shapeAt(shape, motionPose(motion, low + ((cut - low) * i) / 400));
          const reach = Math.max(
            ...stood.vertices.map((v) => v[0] * direction[0] + v[1] * direction[1] + v[2] * direction[2]),
          );
          most = Math.max(most, reach + shape.radius);
          const { min, max } = shapeBox(stood);
          for (const axis of [0, 1, 2] as const)
            out = Math.max(out, around.min[axis] - min[axis], max[axis] - around.max[axis]);
        }
        expect(out).toBeLessThanOrEqual(ROUNDING_MM);
        expect(most).toBeLessThanOrEqual(said + ROUNDING_MM);
        // The top of an arc lies at most half a step from a sample: its height lost is r (1 − cos(step / 2)).
        expect(said - most).toBeLessThan(greatestSpeed(motion, shape) * (1 - Math.cos((cut - low) / 800)) + 1e-6);
      }),
      { seed: SEED, numRuns: 60 },
    ));

  it('runs backwards through the same places', () => {
    expect(motionSpan(reversed(quarter))).toEqual([radians(90), 0]);
    const slide: Motion = { kind: 'slide', along: [0, 3, 4], fromMm: 10, toMm: 60 };
    expect(motionSpan(reversed(slide))).toEqual([60, 10]);
    const { along } = checkedMotion(slide) as typeof slide;
    expect(length(along)).toBeCloseTo(1, 12);
    expect(distance(along, [0, 0.6, 0.8])).toBeLessThan(1e-12);
  });
});
