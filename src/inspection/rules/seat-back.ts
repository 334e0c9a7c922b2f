import { type Box, boxUnion } from '../../base/index.ts';
import type { Finding } from '../finding.ts';
import type { CarcassHold } from '../hold/index.ts';
import type { Job } from '../job.ts';
import { found, NOTHING, ruleLimit, type Verdict } from '../verdict.ts';

/** Nothing holds it, or not when it is thrown forward. */
const comesForward = (job: Job, { carcass, loose, anchors }: CarcassHold): boolean =>
  carcass.anchors.length === 0 ||
  loose !== null ||
  anchors.some(({ use, thrown }) => thrown.way === 'forward' && use > job.rules.value('hold-use-share'));

const behind = (box: Box, seat: Box): boolean =>
  (box.min[0] + box.max[0]) / 2 < (seat.min[0] + seat.max[0]) / 2 &&
  box.min[1] < seat.max[1] &&
  box.max[1] > seat.min[1];

/** Gear that nothing keeps, in a room that is open to the front. */
const looseGear = ({ fitout }: Job): ReadonlyMap<string, number> => {
  const open = new Set(
    fitout.rooms
      .filter(({ keeps, pose }) => keeps === 'nothing' && pose.turn[1][0] < -0.5)
      .map(({ opening, level }) => `${opening} ${level}`),
  );
  const gear = new Set<string>(
    fitout.gear.filter(({ opening, level }) => open.has(`${opening} ${level}`)).map((each) => each.gear),
  );
  const byCarcass = new Map<string, number>();
  for (const { origin, carcass, massKg, kind } of fitout.masses)
    if (kind === 'gear' && carcass !== null && gear.has(origin))
      byCarcass.set(carcass, (byCarcass.get(carcass) ?? 0) + massKg);
  return byCarcass;
};

/**
 * What would come against a seat-back from behind when the vehicle is struck from the front: every carcass whose
 * anchors do not hold forward, and loose gear that looks forward. A seat-back is not part of what holds a cabinet.
 */
export const seatBackLoad = (job: Job): Verdict => {
  const limit = ruleLimit(job.rules, 'seat-back-load-mass');
  const seats = new Set<string>(
    job.design.survey.obstacles.filter(({ kind }) => kind === 'seat-back').map(({ id }) => id),
  );
  const boxes = new Map<string, { readonly name: string; readonly box: Box }>();
  for (const { body, box } of job.vehicle) {
    if (!seats.has(body.origin)) continue;
    const known = boxes.get(body.origin);
    boxes.set(body.origin, { name: body.name, box: known ? boxUnion(known.box, box) : box });
  }
  const loose = looseGear(job);
  const findings = [...boxes].flatMap(([seat, { name, box }]): readonly Finding[] => {
    const all = job.holds.filter(({ carcass }) => behind(carcass.box, box));
    const kgOf = (hold: CarcassHold): number =>
      comesForward(job, hold) ? hold.carcass.kg : (loose.get(hold.carcass.id) ?? 0);
    const value = all.reduce((sum, hold) => sum + kgOf(hold), 0);
    if (value <= limit.value) return [];
    const parts = [seat, ...all.filter((hold) => kgOf(hold) > 0).map(({ carcass }) => carcass.id)];
    return [found('seat-back-load', { severity: 'stop', parts, value, limit, facts: { seat: name } })];
  });
  return { ...NOTHING, findings };
};
