import type { Lanes } from '../access/lanes.ts';
import { chainOf, type Shares, type Unit } from '../access/units.ts';
import { accessOf } from '../access/work-out-order.ts';
import type { Finding } from '../finding.ts';
import type { Job } from '../job.ts';
import { found, limitAt, NO_OVERLAP, NOTHING, type Verdict } from '../verdict.ts';

/** Triples looked at, so that two hundred movers do not make a million of them. */
const MOST_TRIPLES = 400;

/** Boards and doors turn, drawers and trays slide: a working person has one of each out, under the open closures. */
const workers = (lanes: Lanes): { readonly turning: readonly Unit[]; readonly sliding: readonly Unit[] } => {
  const own = lanes.ground.units.filter(({ closure }) => !closure);
  return {
    turning: own.filter(({ motion }) => motion.kind === 'turn'),
    sliding: own.filter(({ motion }) => motion.kind === 'slide'),
  };
};

/** The movers of a triple with all that carries them, in the order in which carriers go first. */
const movedFor = (lanes: Lanes, units: readonly Unit[]): readonly Unit[] => [
  ...new Set(units.flatMap((unit) => chainOf(lanes.ground, unit.id))),
];

/** True when some order brings all of them out, each going its whole way while the others stand stowed or out. */
const canAllBeOut = (lanes: Lanes, units: readonly Unit[], shares: Shares): boolean => {
  if (units.length === 0) return true;
  return units.some(
    (unit) =>
      lanes.blockers(unit, 0, 1, shares).units.length === 0 &&
      canAllBeOut(
        lanes,
        units.filter((own) => own !== unit),
        { ...shares, [unit.id]: 1 },
      ),
  );
};

/**
 * What a working person has out at once: the closures open, a board or a door, and a drawer or a tray. A caution where
 * the two get on with each other, yet no order brings all three out.
 */
export const workingTriple = (job: Job): Verdict => {
  if (job.fitout.movers.length < 2) return NOTHING;
  const { lanes } = accessOf(job);
  const closures = lanes.ground.units.filter(({ closure }) => closure);
  const { turning, sliding } = workers(lanes);
  const near = new Set(lanes.pairs().map(([a, b]) => `${a.id} ${b.id}`));
  const findings: Finding[] = [];
  let pairs = 0;
  for (const board of turning)
    for (const tray of sliding) {
      if (!near.has(`${board.id} ${tray.id}`) && !near.has(`${tray.id} ${board.id}`)) continue;
      if (pairs >= MOST_TRIPLES) break;
      pairs += 1;
      if (canAllBeOut(lanes, movedFor(lanes, [...closures, board, tray]), {})) continue;
      findings.push(
        found('working-triple', {
          severity: 'caution',
          parts: [board.part, tray.part],
          value: 0,
          limit: limitAt(NO_OVERLAP, 0, 'mm'),
          margin: 'travel',
          facts: { first: board.name, second: tray.name, closures: closures.map(({ name }) => name).join(', ') },
        }),
      );
    }
  return { ...NOTHING, findings, pairs };
};
