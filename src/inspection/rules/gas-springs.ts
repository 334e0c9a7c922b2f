import type { Finding } from '../finding.ts';
import { gasSpringFigures } from '../gas-spring-figures.ts';
import type { Job } from '../job.ts';
import { found, type Limit, NOTHING, ruleLimit, type Verdict } from '../verdict.ts';

/**
 * Gas springs over the whole swing: on the coldest day they keep the leaf open, on the hottest day a hand still closes
 * it. Never the only prop of a heavy lid.
 */
export const gasSpring = (job: Job): Verdict => {
  const { rules } = job;
  const hand = ruleLimit(rules, 'gas-spring-close-force');
  const cold: Limit = { ...ruleLimit(rules, 'gas-spring-cold'), value: 0, unit: 'N.m' };
  const findings = gasSpringFigures(job, job.heldMovers).flatMap(({ held, holdsOpen, handN }): readonly Finding[] => {
    const parts = [held.mover.origin];
    const facts = { mover: held.mover.name, kg: held.kg };
    return [
      ...(holdsOpen < 0
        ? [
            found('gas-spring', {
              severity: 'caution',
              parts,
              value: holdsOpen / 1000,
              limit: cold,
              facts: { ...facts, day: 'cold' },
            }),
          ]
        : []),
      ...(handN > hand.value
        ? [
            found('gas-spring', {
              severity: 'caution',
              parts: [...parts, held.mover.id],
              value: handN,
              limit: hand,
              facts: { ...facts, day: 'hot' },
            }),
          ]
        : []),
    ];
  });
  return { ...NOTHING, findings };
};
