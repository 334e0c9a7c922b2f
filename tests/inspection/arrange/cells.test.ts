import { describe, expect, test } from 'vitest';
import { seededRandom, type Vec3 } from '../../../src/base/index.ts';
import { type Cell, shareRoom, standsAlone } from '../../../src/inspection/arrange/cells.ts';

const overlap = (a: Cell, b: Cell): boolean =>
  ([0, 1, 2] as const).every(
    (axis) => a.from[axis] < b.from[axis] + b.size[axis] - 1e-6 && b.from[axis] < a.from[axis] + a.size[axis] - 1e-6,
  );

describe('a room shared out', () => {
  test('one box has the whole of it', () => {
    const room: Vec3 = [600, 500, 300];
    expect(shareRoom(room, [{ from: [20, 30, 0], size: [100, 100, 100] }])).toEqual([{ from: [0, 0, 0], size: room }]);
  });

  test('two side by side: the first takes what lies between them', () => {
    // room 600 across; boxes at 0..100 and 300..400: the first grows to 300, the second to the wall
    const cells = shareRoom(
      [600, 500, 300],
      [
        { from: [0, 0, 0], size: [100, 500, 100] },
        { from: [300, 0, 0], size: [100, 500, 100] },
      ],
    );
    expect(cells.map(({ from, size }) => [from[0], size[0]])).toEqual([
      [0, 300],
      [300, 300],
    ]);
  });

  test('cells of boxes that do not overlap do not either, hold their boxes and stay in the room', () => {
    const random = seededRandom(4);
    for (let round = 0; round < 200; round++) {
      const room: Vec3 = [800, 600, 400];
      const boxes: Cell[] = [];
      for (let i = 0; i < 6; i++) {
        const size: Vec3 = [50 + random() * 250, 50 + random() * 250, 50 + random() * 200];
        const from: Vec3 = [
          random() * (800 - size[0]),
          random() * (600 - size[1]),
          random() < 0.6 ? 0 : random() * 150,
        ];
        if (boxes.every((other) => !overlap(other, { from, size }))) boxes.push({ from, size });
      }
      const cells = shareRoom(room, boxes);
      cells.forEach((cell, i) => {
        for (const axis of [0, 1, 2] as const) {
          expect(cell.from[axis]).toBeLessThanOrEqual((boxes[i]?.from[axis] ?? 0) + 1e-9);
          expect(cell.from[axis]).toBeGreaterThanOrEqual(0);
          expect(cell.from[axis] + cell.size[axis]).toBeLessThanOrEqual(room[axis] + 1e-9);
        }
        for (const other of cells.slice(i + 1)) expect(overlap(cell, other)).toBe(false);
      });
    }
  });

  test('what is piled is not taken out of its pile', () => {
    const low: Cell = { from: [0, 0, 0], size: [200, 200, 100] };
    const high: Cell = { from: [50, 50, 100], size: [100, 100, 100] };
    const beside: Cell = { from: [300, 0, 0], size: [100, 100, 100] };
    const all = [low, high, beside];
    expect(all.map((cell) => standsAlone(cell, all))).toEqual([false, false, true]);
  });
});
