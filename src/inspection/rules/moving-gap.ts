import { ROUNDING_MM } from '../../base/index.ts';
import type { Job } from '../job.ts';
import { type BodyPair, overlaps } from '../pairs.ts';
import type { CabinetBody } from '../standing.ts';
import { ruleLimit, type Verdict } from '../verdict.ts';
import { judgePairs } from './pair-verdict.ts';

const canRub = (body: CabinetBody): boolean => body.kind === 'panel' || body.kind === 'gear' || body.kind === 'device';

/**
 * Stowed, a mover and what it carries keep the gap between moving parts to everything else of their carcass. Slides and
 * latches touch both sides by design and are left out. A drawer front or a door keeps the reveal instead, which the
 * shop may set smaller.
 */
export const movingGap = (job: Job): Verdict => {
  const fronts = new Set(job.fitout.panels.filter((panel) => panel.role === 'front').map((panel) => panel.id));
  const apart = job.pairs.filter(
    (pair) => pair.relation === 'same-carcass' && !overlaps(pair) && canRub(pair.a.body) && canRub(pair.b.body),
  );
  const limitOf = (pair: BodyPair) =>
    ruleLimit(
      job.rules,
      fronts.has(pair.a.body.id) || fronts.has(pair.b.body.id) ? 'reveal-front' : 'gap-moving-parts',
    );
  return judgePairs('moving-gap', apart, limitOf, (pair, limit) =>
    pair.gap.distance < limit.value - ROUNDING_MM ? 'caution' : null,
  );
};
