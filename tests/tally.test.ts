import { describe, expect, test } from 'vitest';
import { lastLine, tallyOf, totals } from './tally.mjs';

const file = (status: string, ...tests: readonly string[]) => ({
  name: 'a.test.ts',
  status,
  assertionResults: tests.map((one, i) => ({ status: one, fullName: ` test ${i}` })),
});

describe('the last line', () => {
  test('counts passed, failed and what did not run', () => {
    const report = { testResults: [file('failed', 'passed', 'failed', 'skipped'), file('passed', 'passed', 'todo')] };
    expect(tallyOf(report, false)).toEqual({ passed: 2, failed: 1, notRun: ['test 2', 'test 1'] });
  });

  test('a file that cannot be loaded is a failure', () => {
    expect(tallyOf({ testResults: [file('failed'), file('passed', 'passed')] }, false)).toMatchObject({
      passed: 1,
      failed: 1,
    });
  });

  test('an error outside any test is a failure, and so is a run without a report', () => {
    expect(tallyOf({ testResults: [file('passed', 'passed')] }, false)).toMatchObject({ passed: 1, failed: 1 });
    expect(tallyOf({ testResults: [file('passed', 'passed')] }, true)).toMatchObject({ passed: 1, failed: 0 });
    expect(tallyOf(null, true)).toMatchObject({ failed: 1 });
  });

  test('is one plain line', () => {
    const parts = [
      { passed: 2, failed: 0, notRun: ['a'] },
      { passed: 1, failed: 1, notRun: ['b', 'c'] },
    ];
    expect(lastLine(totals(parts))).toBe('3 passed, 1 failed, 3 skipped');
  });
});
