import type { Job } from '../job.ts';
import { found, type Limit, type Verdict } from '../verdict.ts';

const needed = (mm: number | null): Limit => ({
  value: mm ?? 0,
  unit: 'mm',
  source: 'sizes and records of the design',
  status: 'design',
});

/** Every part of the cabinet that could not be solved: rules that cannot all hold, records that are not there. */
export const cabinetSolves = (job: Job): Verdict => ({
  findings: job.fitout.problems.map((problem) =>
    found('cabinet-solves', {
      severity: 'stop',
      parts: [problem.at],
      value: problem.haveMm ?? 0,
      limit: needed(problem.needMm),
      facts: {
        code: problem.code,
        axis: problem.axis ?? '',
        because: problem.because.join('; '),
        sized: problem.needMm !== null && problem.haveMm !== null ? 'yes' : 'no',
      },
    }),
  ),
  measured: [],
  pairs: 0,
});
