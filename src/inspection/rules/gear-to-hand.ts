import type { GearReach } from '../access/opening-order.ts';
import { accessOf } from '../access/work-out-order.ts';
import type { Finding, FindingFacts, Measured } from '../finding.ts';
import type { Job } from '../job.ts';
import { found, type Limit, measured, NOTHING, ruleLimit, type Verdict } from '../verdict.ts';

const reachesOf = (job: Job): readonly GearReach[] => {
  const { reach } = accessOf(job);
  return job.design.gear.flatMap(({ id }) => reach(id) ?? []);
};

const nameIn = (job: Job, gear: string): string => job.design.gear.find(({ id }) => id === gear)?.name ?? gear;

/** First-due gear comes to hand within the motions that the house allows, counted from the closed vehicle. */
export const firstDue = (job: Job): Verdict => {
  if (!job.design.gear.some((gear) => gear.firstDue && gear.place !== null)) return NOTHING;
  const limit = ruleLimit(job.rules, 'first-due-motions');
  const findings: Finding[] = [];
  const taken: Measured[] = [];
  for (const { gear, opening, firstDue: wanted, count, steps } of reachesOf(job)) {
    if (!wanted || count === null) continue;
    const parts = [gear, opening];
    taken.push(measured('first-due', { margin: 'reach', parts, value: count, limit, sense: 'at most' }));
    if (count <= limit.value) continue;
    const facts: FindingFacts = {
      gear: nameIn(job, gear),
      acts: steps.map(({ act }) => act).join(' '),
      done: steps.map(({ part }) => part).join(' '),
      held: steps.find(({ act, mover }) => act === 'undo' && mover === null)?.part ?? '',
    };
    findings.push(found('first-due', { severity: 'caution', parts, value: count, limit, margin: 'reach', facts }));
  }
  return { findings, measured: taken, pairs: 0 };
};

const ONE_WAY: Limit = { value: 1, unit: 'count', source: 'what goes in must come out', status: 'geometry' };

/**
 * Every item of gear comes straight out of its place, or lifted and then out, once what can be opened is open and what
 * stands before it is set aside. Not found is not proven impossible, so it is a caution.
 */
export const gearOut = (job: Job): Verdict => ({
  ...NOTHING,
  findings: reachesOf(job)
    .filter((reach) => !reach.found)
    .map(({ gear, opening, stuck }) =>
      found('gear-out', {
        severity: 'caution',
        parts: [gear, opening],
        value: 0,
        limit: ONE_WAY,
        margin: 'reach',
        facts: { gear: nameIn(job, gear), met: (stuck?.parts ?? []).join(' '), fixed: stuck?.fixed ?? '' },
      }),
    ),
});
