import type { Job } from '../job.ts';
import { fittedItems } from '../loads/index.ts';
import { found, type Limit, limitAt, NOTHING, ruleLimit, type Verdict } from '../verdict.ts';

/** The house rule of the region, or the lesser of the stated mass and the share of the gross rating; without a rating the stated mass. */
const threshold = (job: Job): Limit => {
  const { sale, region } = job.design.vehicle;
  if (region === 'eu' || region === 'other') return ruleLimit(job.rules, 'disclosure-other-mass-kg');
  if (sale === 'in-service') return ruleLimit(job.rules, 'capacity-statement-mass-kg');
  const mass = ruleLimit(job.rules, 'disclosure-mass-kg');
  const share = ruleLimit(job.rules, 'disclosure-mass-share');
  const { grossKg } = job.design.vehicle.ratings;
  if (grossKg === null || share.value * grossKg >= mass.value) return mass;
  return limitAt(share, share.value * grossKg, 'kg');
};

/**
 * Mass of the cabinet with everything fixed in it, gear left out: before the first sale rules in the United States ask
 * for a label from a limit on; in service a statement of what is left is good practice; elsewhere the shop asks. A note:
 * whether it applies is for the shop to find out.
 */
export const disclosure = (job: Job): Verdict => {
  const limit = threshold(job);
  const kg = fittedItems(job.fitout, job.rules)
    .filter((item) => item.what === 'cabinet')
    .reduce((sum, item) => sum + item.kg, 0);
  if (kg <= limit.value) return NOTHING;
  const { sale, region } = job.design.vehicle;
  const asked = region === 'eu' || region === 'other' ? 'other' : (sale ?? 'ask');
  const what = { severity: 'note', parts: [], value: kg, limit, facts: { sale: asked } } as const;
  return { ...NOTHING, findings: [found('disclosure', what)] };
};
