import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boxAt, degrees, ROUNDING_MM, radians, seededRandom, type Vec3 } from '../../src/base/index.ts';
import {
  boxShape,
  type ConvexShape,
  capsuleShape,
  certifiedTravel,
  gapBetween,
  type Motion,
  motionPose,
  motionSpan,
  reversed,
  shapeAt,
  TRAVEL_TOLERANCE_MM,
  type Turn,
} from '../../src/bodies/index.ts';
import hatchSwing from '../reference/hatch-swing.json' with { type: 'json' };
import { anySeed, SEED, someMotion, someShape } from './scenes.ts';

const box = (at: Vec3, size: Vec3): ConvexShape => boxShape(boxAt(at, size));
const slide = (along: Vec3, toMm: number): Motion => ({ kind: 'slide', along, fromMm: 0, toMm });

describe('certifiedTravel, published hatch cases', () => {
  // The hinge line is the y axis; the hatch hangs down from it, its inner face in x = 0, its body behind (x < 0).
  const HATCH_THICK_MM = 30;
  const closing: Motion = { kind: 'turn', point: [0, 0, 0], axis: [0, 1, 0], fromRad: radians(120), toRad: 0 };

  it.each(hatchSwing.cases)('$name', ({ hatchLengthMm, prisms, expect: expected }) => {
    const hatch = box([-HATCH_THICK_MM, -600, -hatchLengthMm], [HATCH_THICK_MM, 1200, hatchLengthMm]);
    const bodies = prisms.map(({ cornerBehindHingeMm: behind, topBelowHingeMm: below }) =>
      box([-behind, -400, -1400], [behind + 900, 800, 1400 - below]),
    );
    const travel = certifiedTravel(closing, [hatch], bodies, 0);
    expect(Math.abs(degrees(travel.reaches) - expected.closesToDeg)).toBeLessThan(hatchSwing.tolerance);
    expect(travel.clear).toBe(expected.closesToDeg === 0);
    if (travel.contact) expect(Math.abs(travel.contact.distance)).toBeLessThan(1e-5);
  });
});

describe('certifiedTravel, closed forms', () => {
  const drawer = box([0, 0, 0], [400, 300, 100]);

  it('stops a slide where it meets a wall, and says how deep it would go', () => {
    const travel = certifiedTravel(slide([1, 0, 0], 500), [drawer], [box([620, 100, -50], [18, 50, 400])], 0);
    expect(travel.clear).toBe(false);
    expect(travel.reaches).toBeCloseTo(220, 5); // 620 − 400
    expect(travel.leastGap).toBeCloseTo(-150, 3); // deepest where the post, y 100–150, parts quickest sideways
  });

  it('keeps a required gap: the way ends where the gap does', () => {
    const wall = [box([620, 100, -50], [18, 50, 400])];
    expect(certifiedTravel(slide([1, 0, 0], 500), [drawer], wall, 12).reaches).toBeCloseTo(208, 5);
    expect(certifiedTravel(slide([1, 0, 0], 208), [drawer], wall, 12).clear).toBe(true);
    expect(certifiedTravel(slide([1, 0, 0], 208.2), [drawer], wall, 12).clear).toBe(false);
  });

  it('slides along a face in contact all the way without a block', () => {
    const beside = [box([-100, 300, -50], [1200, 18, 400]), box([-100, -18, -50], [1200, 18, 400])];
    const travel = certifiedTravel(slide([1, 0, 0], 600), [drawer], beside, 0);
    expect(travel).toMatchObject({ clear: true, reaches: 600, leastGap: 0 });
    expect(travel.steps).toBeLessThan(10);
  });

  it('turns a door against its own jamb in contact all the way without a block', () => {
    const door = box([0, 0, 0], [18, 400, 600]);
    const opening: Motion = { kind: 'turn', point: [0, 0, 0], axis: [0, 0, 1], fromRad: 0, toRad: radians(170) };
    const floor = box([-700, -700, -18], [1400, 1400, 18]); // the door's lower edge turns on it
    const travel = certifiedTravel(opening, [door], [floor], 0);
    expect(travel).toMatchObject({ clear: true, leastGap: 0 });
    expect(travel.steps).toBeLessThan(10);
  });

  it('stops a turn at the angle at which the corner passes a post', () => {
    // A bar 500 long along x turns up about the y axis and meets the lower edge of a beam 300 out, 100 up.
    const bar = box([0, -10, 0], [500, 20, 0.5]);
    const raising: Motion = { kind: 'turn', point: [0, 0, 0], axis: [0, -1, 0], fromRad: 0, toRad: radians(90) };
    const travel = certifiedTravel(raising, [bar], [box([300, -50, 100], [50, 100, 50])], 0);
    // Its upper face, 0.5 above the line through the pivot, touches (350, 100) at α with 350 sin α + 0.5 = 100 cos α …
    const angle = Math.atan2(100, 350) - Math.asin(0.5 / Math.hypot(350, 100));
    expect(travel.reaches).toBeCloseTo(angle, 7);
  });

  it('measures round bodies by their round surface', () => {
    const ball = capsuleShape([0, 0, 0], [0, 0, 0], 30);
    const travel = certifiedTravel(slide([1, 0, 0], 400), [ball], [capsuleShape([200, 50, 0], [200, 50, 0], 15)], 0);
    expect(travel).toMatchObject({ clear: true });
    expect(travel.leastGap).toBeCloseTo(5, 3); // 50 − 30 − 15
    expect(travel.nearest?.at).toBeCloseTo(200, 0);
  });

  it('lets an inner mover travel on an outer one held at its rest', () => {
    const outer: Motion = { kind: 'turn', point: [0, 0, 0], axis: [0, 0, 1], fromRad: 0, toRad: radians(90) };
    const tray = box([10, -20, 0], [50, 40, 20]);
    const wall = [box([-100, 300, -50], [200, 18, 100])];
    const inward = slide([1, 0, 0], 400);
    expect(certifiedTravel(inward, [tray], wall, 0).clear).toBe(true); // home: it slides away along x
    const swung = certifiedTravel(inward, [tray], wall, 0, { carriers: [{ motion: outer, at: radians(90) }] });
    expect(swung.reaches).toBeCloseTo(240, 5); // 300 − 60, now along y
  });

  it('names the shape and the obstacle that meet first, and looks no further than the limit', () => {
    const shapes = [drawer, box([0, 0, 200], [450, 300, 50])];
    const posts = [box([900, 0, 0], [10, 10, 400]), box([700, 0, 0], [10, 10, 400])];
    const travel = certifiedTravel(slide([1, 0, 0], 600), shapes, posts, 0);
    expect(travel.contact).toMatchObject({ shape: 1, obstacle: 1 });
    expect(travel.reaches).toBeCloseTo(250, 5); // 700 − 450
    const far = certifiedTravel(slide([1, 0, 0], 10), shapes, posts, 5, { limit: 60 });
    expect(far).toMatchObject({ clear: true, leastGap: Infinity, nearest: null, steps: 0 });
    expect(() => certifiedTravel(slide([1, 0, 0], 10), shapes, posts, 5, { limit: 3 })).toThrow(RangeError);
  });

  it('is blocked at once where it starts in an overlap, and travels nowhere when told so', () => {
    const post = [box([390, 0, 0], [50, 50, 50])];
    expect(certifiedTravel(slide([1, 0, 0], 100), [drawer], post, 0).reaches).toBe(0);
    expect(certifiedTravel(slide([1, 0, 0], 0), [drawer], [box([405, 0, 0], [50, 50, 50])], 0).leastGap).toBe(5);
  });
});

describe('certifiedTravel, laws', () => {
  const gapAt = (motion: Motion, shape: ConvexShape, obstacle: ConvexShape, at: number): number =>
    gapBetween(shapeAt(shape, motionPose(motion, at)), obstacle).distance;

  it('proves a least gap under every one of 10,000 samples and within 0.05 mm of a gap that is there', () =>
    fc.assert(
      fc.property(anySeed, (seed) => {
        const random = seededRandom(seed);
        const [motion, shape, obstacle] = [someMotion(random, 500), someShape(random, 300), someShape(random, 500)];
        const travel = certifiedTravel(motion, [shape], [obstacle], 0);
        const [from, to] = motionSpan(motion);
        let least = Infinity;
        for (let i = 0; i <= 10000; i++)
          least = Math.min(least, gapAt(motion, shape, obstacle, from + ((to - from) * i) / 10000));
        expect(travel.leastGap).toBeLessThanOrEqual(least + ROUNDING_MM);
        const seen = travel.nearest;
        expect(seen).not.toBeNull();
        if (!seen) return;
        expect(gapAt(motion, shape, obstacle, seen.at)).toBeCloseTo(seen.distance, 6);
        expect(seen.distance - travel.leastGap).toBeLessThanOrEqual(TRAVEL_TOLERANCE_MM);
        expect(travel.clear).toBe(travel.contact === null);
      }),
      { seed: SEED, numRuns: 15 },
    ));

  it('ends the way neither late nor early', () =>
    fc.assert(
      fc.property(anySeed, (seed) => {
        const random = seededRandom(seed);
        const [motion, shape, obstacle] = [someMotion(random, 500), someShape(random, 300), someShape(random, 500)];
        const required = random() * 20;
        const travel = certifiedTravel(motion, [shape], [obstacle], required);
        const [from, to] = motionSpan(motion);
        const gaps = Array.from({ length: 501 }, (_, i) =>
          gapAt(motion, shape, obstacle, from + ((travel.reaches - from) * i) / 500),
        );
        if (travel.reaches !== from) expect(Math.min(...gaps)).toBeGreaterThanOrEqual(required - TRAVEL_TOLERANCE_MM);
        if (travel.clear) {
          expect(travel.leastGap).toBeGreaterThanOrEqual(required - TRAVEL_TOLERANCE_MM);
          return;
        }
        expect(travel.leastGap).toBeLessThan(required - TRAVEL_TOLERANCE_MM / 2);
        // Not early: at the end of the way the gap is just the required one, or the travel never had it.
        const there = gapAt(motion, shape, obstacle, travel.reaches);
        if (travel.reaches === from) expect(there).toBeLessThan(required);
        else expect(Math.abs(there - required)).toBeLessThan(TRAVEL_TOLERANCE_MM);
        expect(to).not.toBe(from);
      }),
      { seed: SEED, numRuns: 150 },
    ));

  it('has one least gap both ways, wherever the scene stands', () =>
    fc.assert(
      fc.property(anySeed, (seed) => {
        const random = seededRandom(seed);
        const [motion, shape, obstacle] = [someMotion(random, 500), someShape(random, 300), someShape(random, 500)];
        const there = certifiedTravel(motion, [shape], [obstacle], 0).leastGap;
        const back = certifiedTravel(reversed(motion), [shape], [obstacle], 0).leastGap;
        expect(Math.abs(there - back)).toBeLessThanOrEqual(TRAVEL_TOLERANCE_MM);
        const carriers = [{ motion: someMotion(random, 900), at: random() * 3 }];
        const moved = shapeAt(obstacle, motionPose(carriers[0]?.motion ?? motion, carriers[0]?.at ?? 0));
        const elsewhere = certifiedTravel(motion, [shape], [moved], 0, { carriers }).leastGap;
        expect(Math.abs(there - elsewhere)).toBeLessThanOrEqual(TRAVEL_TOLERANCE_MM);
      }),
      { seed: SEED, numRuns: 150 },
    ));

  it('never gains from a bigger body or a longer travel', () =>
    fc.assert(
      fc.property(anySeed, (seed) => {
        const random = seededRandom(seed);
        const [motion, shape, obstacle] = [someMotion(random, 500), someShape(random, 300), someShape(random, 500)];
        const { leastGap } = certifiedTravel(motion, [shape], [obstacle], 0);
        const grown = certifiedTravel(motion, [{ ...shape, radius: shape.radius + 5 }], [obstacle], 0).leastGap;
        expect(grown).toBeLessThanOrEqual(leastGap - 5 + TRAVEL_TOLERANCE_MM);
        const [from, to] = motionSpan(motion);
        const half: Motion =
          motion.kind === 'slide'
            ? { ...motion, toMm: (from + to) / 2 }
            : ({ ...motion, toRad: (from + to) / 2 } satisfies Turn);
        const less = certifiedTravel(half, [shape], [obstacle], 0).leastGap;
        expect(less).toBeGreaterThanOrEqual(leastGap - TRAVEL_TOLERANCE_MM);
      }),
      { seed: SEED, numRuns: 150 },
    ));
});
