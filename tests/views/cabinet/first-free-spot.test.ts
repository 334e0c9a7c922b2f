import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Vec3 } from '../../../src/base/index.ts';
import { type Block, firstFreeSpot } from '../../../src/views/editor/sheets/cabinet/first-free-spot.ts';

const room: Vec3 = [400, 500, 200];

describe('firstFreeSpot', () => {
  test('an empty room is begun at the front left, a gap off both walls', () => {
    expect(firstFreeSpot(room, [], [100, 100, 50], 5)).toEqual([5, 5, 0]);
  });

  test('the next one stands to the right of the first', () => {
    const first: Block = { from: [5, 5, 0], size: [100, 100, 50] };
    // 5 + 100 + 5
    expect(firstFreeSpot(room, [first], [100, 100, 50], 5)).toEqual([110, 5, 0]);
  });

  test('a row that is full is followed by one behind it', () => {
    const full: Block = { from: [5, 5, 0], size: [350, 120, 50] };
    // 5 + 120 + 5 deep, at the left again
    expect(firstFreeSpot(room, [full], [100, 100, 50], 5)).toEqual([5, 130, 0]);
  });

  test('too tall, too wide or no floor left gives nothing', () => {
    expect(firstFreeSpot(room, [], [100, 100, 201], 5)).toBeNull();
    expect(firstFreeSpot(room, [], [391, 100, 50], 5)).toBeNull();
    expect(firstFreeSpot(room, [{ from: [0, 0, 0], size: [400, 450, 10] }], [100, 100, 50], 5)).toBeNull();
  });

  test('whatever is packed one after another stands inside and clear', () => {
    const side = fc.integer({ min: 20, max: 180 });
    fc.assert(
      fc.property(fc.array(fc.tuple(side, side, side), { maxLength: 12 }), (sizes) => {
        const standing: Block[] = [];
        for (const size of sizes) {
          const from = firstFreeSpot(room, standing, size, 4);
          if (from) standing.push({ from, size });
        }
        const inside = standing.every(({ from, size }) =>
          [0, 1, 2].every((i) => (from[i] ?? 0) >= 0 && (from[i] ?? 0) + (size[i] ?? 0) <= (room[i] ?? 0)),
        );
        const clear = standing.every((a, i) =>
          standing
            .slice(i + 1)
            .every((b) =>
              [0, 1].some(
                (k) =>
                  (a.from[k] ?? 0) >= (b.from[k] ?? 0) + (b.size[k] ?? 0) + 4 ||
                  (b.from[k] ?? 0) >= (a.from[k] ?? 0) + (a.size[k] ?? 0) + 4,
              ),
            ),
        );
        return inside && clear;
      }),
      { seed: 6, numRuns: 200 },
    );
  });
});
