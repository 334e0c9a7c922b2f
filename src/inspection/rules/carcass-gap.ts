import { ROUNDING_MM } from '../../base/index.ts';
import type { Job } from '../job.ts';
import { type BodyPair, overlaps } from '../pairs.ts';
import { ruleLimit, type Verdict } from '../verdict.ts';
import { judgePairs } from './pair-verdict.ts';

/** One carcass stands on the other where they face each other upright: a bearing, not a gap to keep. */
const stands = ({ gap }: BodyPair): boolean =>
  Math.abs(gap.direction[2]) > Math.max(Math.abs(gap.direction[0]), Math.abs(gap.direction[1]));

/** Carcasses side by side keep the gap between carcasses, so that each can be carried in and lined up on its own. */
export const carcassGap = (job: Job): Verdict => {
  const limit = ruleLimit(job.rules, 'gap-between-carcasses');
  const boards = job.pairs.filter(
    (pair) =>
      pair.relation === 'two-carcasses' &&
      pair.a.body.kind === 'panel' &&
      pair.b.body.kind === 'panel' &&
      !overlaps(pair) &&
      !stands(pair),
  );
  return judgePairs(
    'carcass-gap',
    boards,
    () => limit,
    (pair) => (pair.gap.distance < limit.value - ROUNDING_MM ? 'caution' : null),
  );
};
