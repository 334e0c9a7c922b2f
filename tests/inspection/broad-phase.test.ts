import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Box } from '../../src/base/index.ts';
import { nearBetween, nearPairs } from '../../src/inspection/broad-phase.ts';

const coordinate = fc.integer({ min: 0, max: 60 });
const size = fc.integer({ min: 0, max: 20 });
const box: fc.Arbitrary<Box> = fc
  .tuple(coordinate, coordinate, coordinate, size, size, size)
  .map(([x, y, z, a, b, c]) => ({ min: [x, y, z], max: [x + a, y + b, z + c] }));

/** The plain twin: every pair, every axis. */
const near = (a: Box, b: Box, reach: number): boolean =>
  ([0, 1, 2] as const).every((axis) => a.min[axis] - b.max[axis] <= reach && b.min[axis] - a.max[axis] <= reach);

describe('broad phase, seed 7', () => {
  test('nearPairs shows exactly the pairs that plain comparison finds', () => {
    fc.assert(
      fc.property(fc.array(box, { maxLength: 30 }), fc.integer({ min: 0, max: 8 }), (boxes, reach) => {
        const found: string[] = [];
        nearPairs(boxes, reach, (a, b) => found.push(`${a} ${b}`));
        const plain = boxes.flatMap((one, a) =>
          boxes.flatMap((other, b) => (a < b && near(one, other, reach) ? [`${a} ${b}`] : [])),
        );
        expect(found.toSorted()).toEqual(plain.toSorted());
      }),
      { seed: 7, numRuns: 200 },
    );
  });
  test('nearBetween compares one list with the other', () => {
    fc.assert(
      fc.property(
        fc.array(box, { maxLength: 12 }),
        fc.array(box, { maxLength: 12 }),
        fc.integer({ min: 0, max: 8 }),
        (some, others, reach) => {
          const found: string[] = [];
          nearBetween(some, others, reach, (a, b) => found.push(`${a} ${b}`));
          const plain = some.flatMap((one, a) =>
            others.flatMap((other, b) => (near(one, other, reach) ? [`${a} ${b}`] : [])),
          );
          expect(found).toEqual(plain);
        },
      ),
      { seed: 7, numRuns: 200 },
    );
  });
});
