import load, { type Manifold } from 'manifold-3d';
import { describe, expect, it } from 'vitest';
import { ROUNDING_MM3, seededRandom } from '../../src/base/index.ts';
import {
  type ConvexShape,
  certifiedTravel,
  gapBetween,
  motionPose,
  motionSpan,
  shapeAt,
  TRAVEL_TOLERANCE_MM,
} from '../../src/bodies/index.ts';
import { SEED, someBox, someMotion, somePose } from './scenes.ts';

const kernel = await load();
kernel.setup();

/** Beyond this the kernel only says "at least"; within it, it is exact to about 1e-5 mm. */
const SEARCH_MM = 400;

const solidOf = ({ vertices }: ConvexShape): Manifold => kernel.Manifold.hull(vertices.map(([x, y, z]) => [x, y, z]));

const compare = (a: ConvexShape, b: ConvexShape): { gap: number; volume: number } => {
  const [p, q] = [solidOf(a), solidOf(b)];
  const both = kernel.Manifold.intersection(p, q);
  const found = { gap: p.minGap(q, SEARCH_MM), volume: both.volume() };
  for (const solid of [p, q, both]) solid.delete();
  return found;
};

describe(`against the solid kernel, seed ${SEED}`, () => {
  it('agrees on 300 pairs: apart by as much, or overlapping', () => {
    const random = seededRandom(SEED);
    let overlaps = 0;
    for (let i = 0; i < 300; i++) {
      const a = shapeAt(someBox(random, 150), somePose(random, 100));
      const b = shapeAt(someBox(random, 150), somePose(random, 100));
      const { distance } = gapBetween(a, b);
      const { gap, volume } = compare(a, b);
      if (distance > 0) {
        expect(volume).toBeLessThan(ROUNDING_MM3);
        expect(gap).toBeCloseTo(Math.min(distance, SEARCH_MM), 3);
      } else {
        overlaps += 1;
        expect(gap).toBe(0);
        if (distance < -TRAVEL_TOLERANCE_MM) expect(volume).toBeGreaterThan(0);
      }
    }
    expect(overlaps).toBeGreaterThan(50);
    expect(overlaps).toBeLessThan(250);
  });

  it('misses no hit of 300 travels, and invents none deeper than the tolerance', () => {
    const random = seededRandom(SEED + 1);
    let blocked = 0;
    for (let i = 0; i < 300; i++) {
      const [motion, shape] = [someMotion(random, 400), shapeAt(someBox(random, 150), somePose(random, 100))];
      const obstacle = shapeAt(someBox(random, 400), somePose(random, 100));
      const travel = certifiedTravel(motion, [shape], [obstacle], 0);
      const at = (amount: number) => compare(shapeAt(shape, motionPose(motion, amount)), obstacle);
      if (travel.clear) {
        const [from, to] = motionSpan(motion);
        for (let k = 0; k <= 40; k++) {
          const { gap, volume } = at(from + ((to - from) * k) / 40);
          // An overlap no deeper than the tolerance, over a contact of at most 600 by 600 mm.
          expect(volume).toBeLessThan(600 * 600 * TRAVEL_TOLERANCE_MM);
          expect(gap).toBeGreaterThanOrEqual(Math.min(travel.leastGap, SEARCH_MM) - 1e-3);
        }
        continue;
      }
      blocked += 1;
      expect(at(travel.nearest?.at ?? Number.NaN).volume).toBeGreaterThan(0);
      if (travel.contact && travel.reaches !== motionSpan(motion)[0]) expect(at(travel.reaches).gap).toBeLessThan(1e-3);
    }
    expect(blocked).toBeGreaterThan(50);
    expect(blocked).toBeLessThan(280);
  });
});
