import type { LoadingCaseResult } from '../finding.ts';
import type { Job } from '../job.ts';
import type { SolvedCase } from '../loads/index.ts';
import type { RuleId } from '../rule-ids.ts';
import { type Limit, limitAt, NOTHING, ruleLimit, type Verdict } from '../verdict.ts';
import { judgeRating } from './worst-case.ts';

const labelled = (kg: number): Limit => ({
  value: kg,
  unit: 'kg',
  source: 'rating label of the vehicle',
  status: 'rating',
});

const larger = (a: Limit, b: Limit): Limit => (b.value > a.value ? b : a);

/**
 * The whole vehicle under its gross rating. Wanted free: a share of the payload, that is of the rating less the weight
 * as received, or a share of the rating itself, whichever is more.
 */
export const payload = (job: Job): Verdict => {
  const { ratings, slip } = job.design.vehicle;
  if (ratings.grossKg === null || slip === null) return NOTHING;
  const share = ruleLimit(job.rules, 'payload-reserve-share');
  const grossShare = ruleLimit(job.rules, 'gross-reserve-share');
  const payloadKg = Math.max(0, ratings.grossKg - slip.frontKg - slip.rearKg);
  return judgeRating({
    rule: 'payload',
    margin: 'payload',
    rating: labelled(ratings.grossKg),
    reserve: larger(
      limitAt(share, share.value * payloadKg, 'kg'),
      limitAt(grossShare, grossShare.value * ratings.grossKg, 'kg'),
    ),
    weights: job.cases.map(({ id, totalKg, totalSpreadKg }) => ({ id, kg: totalKg, spreadKg: totalSpreadKg })),
  });
};

interface Axle {
  readonly rule: RuleId;
  readonly ratingKg: number | null;
  readonly kgOf: (result: LoadingCaseResult) => number;
  readonly spreadOf: (solved: SolvedCase) => number;
}

const axle = (job: Job, { rule, ratingKg, kgOf, spreadOf }: Axle): Verdict => {
  if (ratingKg === null) return NOTHING;
  const share = ruleLimit(job.rules, 'axle-reserve-share');
  return judgeRating({
    rule,
    margin: 'axle',
    rating: labelled(ratingKg),
    reserve: limitAt(share, share.value * ratingKg, 'kg'),
    weights: job.cases.flatMap((solved) =>
      solved.result === null ? [] : [{ id: solved.id, kg: kgOf(solved.result), spreadKg: spreadOf(solved) }],
    ),
  });
};

/** The front axle under its rating in every loading case, with the reserve the shop wants. */
export const frontAxle = (job: Job): Verdict =>
  axle(job, {
    rule: 'front-axle',
    ratingKg: job.design.vehicle.ratings.frontAxleKg,
    kgOf: (result) => result.frontKg,
    spreadOf: (solved) => solved.frontSpreadKg,
  });

/** The rear axle under its rating in every loading case, with the reserve the shop wants. */
export const rearAxle = (job: Job): Verdict =>
  axle(job, {
    rule: 'rear-axle',
    ratingKg: job.design.vehicle.ratings.rearAxleKg,
    kgOf: (result) => result.rearKg,
    spreadOf: (solved) => solved.rearSpreadKg,
  });
