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

  test('a single slow frame changes nothing', () => {
    expect(after([...times(3, 200), 16, ...times(3, 200)])).toBe(1);
  });

  test('falls step by step on a slow machine, never below half', () => {
    expect(after(times(4, 90))).toBe(0.7);
    expect(after(times(8, 90))).toBe(0.5);
    expect(after(times(80, 90))).toBe(0.5);
  });

  test('comes back once there is room', () => {
    expect(after([...times(8, 90), ...times(30, 10)])).toBe(0.7);
    expect(after([...times(8, 90), ...times(60, 10)])).toBe(1);
  });
});
