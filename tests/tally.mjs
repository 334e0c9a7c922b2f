// Counting: what vitest's own report says, in the terms of the last line.

/**
 * @typedef {object} Tally
 * @property {number} passed
 * @property {number} failed
 * @property {readonly string[]} notRun names of what did not run
 */

/**
 * The part of vitest's JSON report that is counted.
 * @typedef {object} VitestReport
 * @property {readonly { name: string, status: string,
 *   assertionResults: readonly { status: string, fullName: string }[] }[]} testResults
 */

/**
 * The tally of one vitest run. A file that could not be loaded, and a run that ended badly although every test in it
 * passed (an error outside any test), each count as one failure.
 * @param {VitestReport | null} report null when the run left none
 * @param {boolean} endedWell whether the exit code was 0
 * @returns {Tally}
 */
export const tallyOf = (report, endedWell) => {
  if (!report) return { passed: 0, failed: 1, notRun: [] };
  const tests = report.testResults.flatMap((file) => file.assertionResults);
  const unloadable = report.testResults.filter(
    (file) => file.status === 'failed' && !file.assertionResults.some((test) => test.status === 'failed'),
  );
  const failed = tests.filter((test) => test.status === 'failed').length + unloadable.length;
  return {
    passed: tests.filter((test) => test.status === 'passed').length,
    failed: failed === 0 && !endedWell ? 1 : failed,
    notRun: tests.filter((test) => !['passed', 'failed'].includes(test.status)).map((test) => test.fullName.trim()),
  };
};

/** @param {readonly Tally[]} tallies */
export const totals = (tallies) => ({
  passed: tallies.reduce((sum, one) => sum + one.passed, 0),
  failed: tallies.reduce((sum, one) => sum + one.failed, 0),
  notRun: tallies.flatMap((one) => one.notRun),
});

/** @param {Tally} tally */
export const lastLine = ({ passed, failed, notRun }) => `${passed} passed, ${failed} failed, ${notRun.length} skipped`;
