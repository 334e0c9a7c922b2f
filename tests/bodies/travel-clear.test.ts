import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../src/base/index.ts';
import {
  boxShape,
  certifiedTravel,
  fillsBox,
  type Motion,
  shapeAt,
  shapeBox,
  TRAVEL_TOLERANCE_MM,
  travelIsClear,
} from '../../src/bodies/index.ts';
import { SEED, someBox, someMotion, somePose, someShape } from './scenes.ts';

const box = (min: readonly [number, number, number], max: readonly [number, number, number]) => boxShape({ min, max });

describe('travelIsClear', () => {
  it(`says of 300 random travels what a certified travel says, seed ${SEED + 7}`, () => {
    const random = seededRandom(SEED + 7);
    let blocked = 0;
    for (let i = 0; i < 300; i++) {
      const [motion, shape, obstacle] = [someMotion(random, 400), someShape(random, 200), someShape(random, 400)];
      const travel = certifiedTravel(motion, [shape], [obstacle], 0);
      // Where the least gap lies within the tolerance of contact either may be said.
      if (Math.abs(travel.leastGap) <= TRAVEL_TOLERANCE_MM) continue;
      expect(travelIsClear(motion, [shape], [obstacle], 0), `scene ${i}`).toBe(travel.clear);
      if (!travel.clear) blocked += 1;
    }
    expect(blocked).toBeGreaterThan(50);
    expect(blocked).toBeLessThan(250);
  });

  it('finds a thin plate in the middle of a long slide, and passes along a face in contact', () => {
    const out: Motion = { kind: 'slide', along: [-1, 0, 0], fromMm: 0, toMm: 1000 };
    const drawer = box([0, 0, 0], [100, 100, 100]);
    expect(travelIsClear(out, [drawer], [box([-501, 0, 0], [-500, 100, 100])], 0)).toBe(false);
    expect(travelIsClear(out, [drawer], [box([-900, 0, 100], [0, 100, 120])], 0)).toBe(true);
    // 3 mm are wanted and 2 are there.
    expect(travelIsClear(out, [drawer], [box([-900, 0, 102], [0, 100, 120])], 3)).toBe(false);
  });

  it('carries what rides on a held mover', () => {
    const rise: Motion = { kind: 'slide', along: [0, 0, 1], fromMm: 0, toMm: 200 };
    const carrier = { motion: { kind: 'slide', along: [-1, 0, 0], fromMm: 0, toMm: 500 } as Motion, at: 500 };
    const [lid, shelf] = [box([0, 0, 0], [100, 100, 10]), box([0, 0, 100], [300, 100, 110])];
    expect(travelIsClear(rise, [lid], [shelf], 0)).toBe(false);
    expect(travelIsClear(rise, [lid], [shelf], 0, [carrier])).toBe(true);
  });
});

it('fillsBox knows a box square to the axes from everything else', () => {
  const random = seededRandom(SEED + 8);
  const square = box([1, 2, 3], [40, 50, 60]);
  expect(fillsBox(square, shapeBox(square))).toBe(true);
  expect(fillsBox({ ...square, radius: 1 }, shapeBox(square))).toBe(false);
  const turned = shapeAt(someBox(random, 100), somePose(random, 10));
  expect(fillsBox(turned, shapeBox(turned))).toBe(false);
  // Eight points on the corners of a box, one corner twice and one never.
  const wedge = { ...square, vertices: square.vertices.map((v, i) => (i === 7 ? (square.vertices[0] ?? v) : v)) };
  expect(fillsBox(wedge, shapeBox(wedge))).toBe(false);
});
