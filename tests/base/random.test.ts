import { describe, expect, test } from 'vitest';
import { seededRandom } from '../../src/base/index.ts';

const take = (count: number, seed: number): readonly number[] => {
  const random = seededRandom(seed);
  return Array.from({ length: count }, () => random());
};

/** The same generator in whole numbers of any size, as its description states it. */
const plainTwin = (count: number, seed: number): readonly number[] => {
  const mask = (1n << 32n) - 1n;
  const times = (a: bigint, b: bigint): bigint => (a * b) & mask;
  let state = BigInt(seed) & mask;
  return Array.from({ length: count }, () => {
    state = (state + 0x6d2b79f5n) & mask;
    let t = times(state ^ (state >> 15n), state | 1n);
    t = (t ^ (t + times(t ^ (t >> 7n), t | 61n))) & mask;
    return Number(t ^ (t >> 14n)) / 2 ** 32;
  });
};

describe('seededRandom', () => {
  test.each([0, 1, 42, 2 ** 31, 2 ** 32 - 1])('seed %d runs as described, every time', (seed) => {
    expect(take(200, seed)).toEqual(plainTwin(200, seed));
    expect(take(200, seed)).toEqual(take(200, seed));
  });

  test('two sources do not disturb each other', () => {
    const [a, b] = [seededRandom(7), seededRandom(7)];
    const first = [a(), a()];
    expect([b(), b()]).toEqual(first);
  });

  test('other seeds, other numbers', () => {
    expect(take(5, 1)).not.toEqual(take(5, 2));
  });

  test('stays in [0, 1) and is spread evenly', () => {
    const numbers = take(20_000, 3);
    expect(numbers.every((n) => n >= 0 && n < 1)).toBe(true);
    const tenths = Array.from({ length: 10 }, (_, i) => numbers.filter((n) => Math.floor(n * 10) === i).length);
    // 2,000 expected in each tenth, standard deviation √(20,000 × 0.1 × 0.9) = 42: five of them either way.
    for (const count of tenths) expect(Math.abs(count - 2000)).toBeLessThan(210);
  });
});
