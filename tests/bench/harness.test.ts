import { describe, expect, test } from 'vitest';
import { seededRandom } from '../../src/base/index.ts';
import { type BenchRow, benchTable, median, runBench, shuffled } from './harness.ts';

test('the median is the middle, or between the two middle ones', () => {
  expect(median([3, 1, 2])).toBe(2);
  expect(median([4, 1, 3, 2])).toBe(2.5);
  expect(() => median([])).toThrow('no numbers');
});

test('shuffling keeps every item, and the seed keeps the order', () => {
  const items = [1, 2, 3, 4, 5, 6, 7, 8];
  const once = shuffled(items, seededRandom(5));
  expect([...once].sort((a, b) => a - b)).toEqual(items);
  expect(once).not.toEqual(items);
  expect(shuffled(items, seededRandom(5))).toEqual(once);
});

/** A machine whose clock only moves when work is done. */
const machine = () => {
  let now = 0;
  let calls: string[] = [];
  const row = (name: string, ms: number): BenchRow => ({
    name,
    roundMs: 1,
    make: () => () => {
      now += ms;
      calls.push(name);
      return now;
    },
  });
  const take = (): readonly string[] => {
    const taken = calls;
    calls = [];
    return taken;
  };
  return { row, take, clock: () => now };
};

describe('runBench', () => {
  test('medians and ratios come out as the work was made', () => {
    const { row, clock } = machine();
    const figures = runBench([row('base', 0.5), row('twice', 1), row('slow', 40)], 'base', {
      rounds: 9,
      random: seededRandom(1),
      clock,
    });
    expect(figures.map(({ name }) => name)).toEqual(['base', 'twice', 'slow']);
    // 1 ms = 1,000 µs; 1 / 0.5 = 2; 40 / 0.5 = 80
    expect(figures.map(({ medianUs }) => Math.round(medianUs))).toEqual([500, 1000, 40_000]);
    expect(figures.map(({ ratio }) => Math.round(ratio * 1e6) / 1e6)).toEqual([1, 2, 80]);
  });

  test('rows are interleaved: each runs once a round, not all rounds at a stretch', () => {
    const { row, take, clock } = machine();
    const rows = ['a', 'b', 'c'].map((name) => row(name, 5));
    runBench(rows, 'a', { rounds: 20, random: seededRandom(1), clock });
    const rounds = take().slice(3); // one call each to find the number of pieces
    expect(rounds).toHaveLength(60);
    const orders = Array.from({ length: 20 }, (_, i) => rounds.slice(3 * i, 3 * i + 3).join(''));
    expect(orders.every((order) => ['a', 'b', 'c'].every((name) => order.includes(name)))).toBe(true);
    expect(new Set(orders).size).toBeGreaterThan(1);
  });

  test('needs its baseline, and names that differ', () => {
    const { row, clock } = machine();
    const setting = { rounds: 1, random: seededRandom(1), clock };
    expect(() => runBench([row('a', 5)], 'b', setting)).toThrow('no row "b"');
    expect(() => runBench([row('a', 5), row('a', 5)], 'a', setting)).toThrow('same name');
  });

  test('the table names its baseline and aligns its columns', () => {
    const { row, clock } = machine();
    const figures = runBench([row('base', 5), row('longer name', 10)], 'base', {
      rounds: 3,
      random: seededRandom(1),
      clock,
    });
    const lines = benchTable(figures, 'base').split('\n');
    expect(lines[0]).toContain('× base');
    expect(new Set(lines.map((line) => line.length)).size).toBe(1);
  });
});
