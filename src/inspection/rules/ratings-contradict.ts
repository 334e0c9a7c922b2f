import { type VehicleFact, vehicleFacts } from '../../envelope/index.ts';
import type { Job } from '../job.ts';
import { found, NOTHING, type Verdict } from '../verdict.ts';

/** Where the limit comes from: the label, the slip, or the vehicle itself. */
const sourceOf = ({ code }: VehicleFact): string =>
  code.startsWith('slip') ? 'weigh slip and label' : 'label of the vehicle';

/** Ratings, slip and sizes that cannot all be true. What is merely not known yet is the business of `figures-missing`. */
export const ratingsContradict = ({ design, rules }: Job): Verdict => ({
  ...NOTHING,
  findings: vehicleFacts(design.vehicle, rules)
    .filter(({ severity }) => severity !== 'note')
    .map((fact) =>
      found('ratings-contradict', {
        severity: fact.severity,
        parts: [fact.at],
        value: fact.value,
        limit: { value: fact.limit, unit: fact.unit, source: sourceOf(fact), status: 'design' },
        facts: { fact: fact.code },
      }),
    ),
});
