import { describe, expect, test } from 'vitest';
import { createPace } from '../../../src/views/editor/bay/scene/pace.ts';

const after = (frames: readonly number[]): number => {
  const pace = createPace();
  return frames.reduce((_, ms) => pace.moving(ms), 1);
};
const times = (count: number, ms: number): readonly number[] => Array.from({ length: count }, () => ms);

describe('createPace', () => {
  test('stays sharp on a machine that keeps up', () => {
    expect(after(times(100, 16))).toBe(1);
  });

  test('a single slow frame among quick ones changes nothing', () => {
    expect(after([...times(10, 14), 80, ...times(10, 14)])).toBe(1);
  });

  test('falls step by step on a slow machine', () => {
    expect(after(times(4, 90))).toBe(0.7);
    expect(after(times(8, 90))).toBe(0.5);
    expect(after(times(80, 90))).toBe(0.4);
  });

  test('goes down at once where it is hopeless, also when frames come in pairs of a long and a short one', () => {
    expect(after(times(4, 400))).toBe(0.4);
    expect(after([15, 400, 15, 400, 15, 400])).toBe(0.4);
  });

  test('comes back once there is room', () => {
    const slow = times(8, 90);
    // the average forgets 90 ms: below 19 ms after 6 frames of 10 ms, since 10 + 80 × 0.6⁵ = 16
    expect(after([...slow, ...times(40, 10)])).toBe(0.7);
    expect(after([...slow, ...times(80, 10)])).toBe(1);
  });
});
