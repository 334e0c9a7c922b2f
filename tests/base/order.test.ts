import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compareMarks, compareText, groupBy } from '../../src/base/index.ts';

const SEEDED = { seed: 20264, numRuns: 2000 } as const;

const mark = fc
  .array(fc.constantFrom('L', 'R', '-', '0', '1', '2', '10', '02', 'a', '~', ' '), { maxLength: 5 })
  .map((parts) => parts.join(''));

describe.each([
  ['compareText', compareText],
  ['compareMarks', compareMarks],
])('%s is an order', (_, compare) => {
  test('equal only to itself, turned round by swapping, passed on from one to the next', () => {
    fc.assert(
      fc.property(mark, mark, mark, (a, b, c) => {
        expect(compare(a, b) === 0).toBe(a === b);
        expect(Math.sign(compare(a, b)) + Math.sign(compare(b, a))).toBe(0);
        if (compare(a, b) <= 0 && compare(b, c) <= 0) expect(compare(a, c)).toBeLessThanOrEqual(0);
      }),
      SEEDED,
    );
  });
});

test('marks order as a person counts', () => {
  const marks = ['L10', 'L2', 'L1', 'L', 'A3-10', 'A3-9', 'L2b', 'L2a', 'L02'];
  expect([...marks].sort(compareMarks)).toEqual(['A3-9', 'A3-10', 'L', 'L1', 'L02', 'L2', 'L2a', 'L2b', 'L10']);
});

test('text orders by code unit, capitals first, whatever the language', () => {
  expect(['b', 'ä', 'a', 'B'].sort(compareText)).toEqual(['B', 'a', 'b', 'ä']);
});

test('groups keep the order of first standing, and lose nothing', () => {
  const groups = groupBy([3, 1, 4, 1, 5, 9, 2, 6], (n) => (n % 2 === 0 ? 'even' : 'odd'));
  expect([...groups]).toEqual([
    ['odd', [3, 1, 1, 5, 9]],
    ['even', [4, 2, 6]],
  ]);
});
