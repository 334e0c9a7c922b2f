import type { Job } from '../job.ts';
import { found, type Limit, type Verdict } from '../verdict.ts';

const ONE_PLACE: Limit = { value: 1, unit: 'count', source: 'gear list of the design', status: 'design' };

/** Gear on the list that has no place yet. */
export const gearUnplaced = (job: Job): Verdict => ({
  findings: job.design.gear
    .filter((gear) => gear.place === null)
    .map((gear) =>
      found('gear-unplaced', {
        severity: 'note',
        parts: [gear.id],
        value: 0,
        limit: ONE_PLACE,
        facts: { gear: gear.name, firstDue: gear.firstDue ? 'yes' : 'no' },
      }),
    ),
  measured: [],
  pairs: 0,
});
