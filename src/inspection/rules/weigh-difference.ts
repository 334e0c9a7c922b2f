import type { Job } from '../job.ts';
import { weighIn } from '../loads/index.ts';
import { found, NOTHING, ruleLimit, type Verdict } from '../verdict.ts';

/** The scale after the build agrees with what was predicted for the same loading case. */
export const weighDifference = (job: Job): Verdict => {
  const { built } = job.design.vehicle;
  const told = built && weighIn(built, job.cases, job.rules);
  if (!told) return NOTHING;
  const limit = ruleLimit(job.rules, 'weigh-difference-share');
  if (told.share <= limit.value) return NOTHING;
  const facts = { case: told.case, moreKg: told.moreKg, addedKg: told.addedKg, sigmas: told.sigmas };
  const what = { severity: 'caution', parts: [told.case], value: told.share, limit, facts } as const;
  return { ...NOTHING, findings: [found('weigh-difference', what)] };
};
