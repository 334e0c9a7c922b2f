import { type JointVerdict, jointTravel } from '../../bodies/index.ts';
import type { Lanes } from '../access/lanes.ts';
import { chainOf, heldAt, type Unit } from '../access/units.ts';
import { accessOf } from '../access/work-out-order.ts';
import type { Finding, Severity } from '../finding.ts';
import type { Job } from '../job.ts';
import { found, limitAt, NO_OVERLAP, NOTHING, type Verdict } from '../verdict.ts';

/** Cells of 1/32 of a travel tell the order; the four sides of the square are certified whatever the cells. */
const HALVINGS = 5;

/** What a pair of movers is told as; null where there is nothing to tell. */
const SEVERITY: Readonly<Record<JointVerdict, Severity | null>> = {
  'always-free': null,
  'either-first': 'note',
  'first-leads': 'note',
  'second-leads': 'note',
  'in-step': 'caution',
  'never-together': 'caution',
  'at-odds': null,
};

/** Verdicts of pairs that were cut into cells, for as long as both are kept. */
const knownVerdicts = new WeakMap<Unit, WeakMap<Unit, JointVerdict>>();

const verdictOf = ({ ground }: Lanes, a: Unit, b: Unit): JointVerdict => {
  const byOther = knownVerdicts.get(a) ?? new WeakMap<Unit, JointVerdict>();
  knownVerdicts.set(a, byOther);
  const known = byOther.get(b);
  if (known) return known;
  const moverOf = (unit: Unit) => {
    const carriers = chainOf(ground, unit.id).slice(0, -1);
    const out = Object.fromEntries(carriers.map(({ id }) => [id, 1]));
    return {
      motion: unit.motion,
      shapes: unit.solids.filter(({ kind }) => kind !== 'hardware').map(({ shape }) => shape),
      carriers: carriers.map((carrier) => heldAt(carrier, out)),
    };
  };
  const { verdict } = jointTravel(moverOf(a), moverOf(b), 0, HALVINGS);
  byOther.set(b, verdict);
  return verdict;
};

/** Whether either of two movers can be in the way of the other at any of its rests. */
const canMeet = (lanes: Lanes, a: Unit, b: Unit): boolean => {
  const out = Object.fromEntries(
    [a, b].flatMap(({ id }) => chainOf(lanes.ground, id).slice(0, -1)).map(({ id }) => [id, 1]),
  );
  return (
    b.rests.some(({ share }) => lanes.meets(a, b, 0, 1, { ...out, [b.id]: share })) ||
    a.rests.some(({ share }) => lanes.meets(b, a, 0, 1, { ...out, [a.id]: share }))
  );
};

/**
 * Every pair of movers of the cabinet that can be in each other's way, over all places of both: a note where one must
 * go before the other, a caution where they can never both be out or only in step. How they get on with closures is
 * the opening order's to tell, since every closure must open before what is behind it.
 */
export const moverPairs = (job: Job): Verdict => {
  const movers = job.fitout.movers.length;
  if (movers < 2) return NOTHING;
  const { lanes } = accessOf(job);
  const findings = lanes.pairs().flatMap(([a, b]): readonly Finding[] => {
    if (a.closure || b.closure || !canMeet(lanes, a, b)) return [];
    const verdict = verdictOf(lanes, a, b);
    const severity = SEVERITY[verdict];
    if (severity === null) return [];
    return [
      found('mover-pairs', {
        severity,
        parts: [a.part, b.part],
        value: 0,
        limit: limitAt(NO_OVERLAP, 0, 'mm'),
        margin: 'travel',
        facts: { verdict, first: a.name, second: b.name },
      }),
    ];
  });
  return { ...NOTHING, findings, pairs: (movers * (movers - 1)) / 2 };
};
