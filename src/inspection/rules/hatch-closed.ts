import { boxesMeet, boxGrown } from '../../base/index.ts';
import { type Gap, gapWithin } from '../../bodies/index.ts';
import type { Obstacle } from '../../design/index.ts';
import { wholePart } from '../../fitout/index.ts';
import { halfWidthTo, type Job } from '../job.ts';
import type { StandingBody, StandingVehicle } from '../standing.ts';
import { type Limit, ruleLimit, type Verdict } from '../verdict.ts';
import { judgeGaps, type Nearness, segmentOf } from './nearness.ts';

const GLASS = 'hatch-glass';

/** Glass and struts have gaps of their own; everything else on a closure counts as its inner trim. */
const limitFor = (job: Job): ((vehicle: StandingVehicle) => Limit) => {
  const kinds = new Map<string, string>(job.space?.closures.map(({ id, kind }) => [id, kind]));
  const obstacles = new Map<string, Obstacle['kind']>(job.design.survey.obstacles.map(({ id, kind }) => [id, kind]));
  return ({ body }) => {
    if (obstacles.get(body.origin) === 'strut') return ruleLimit(job.rules, 'gap-strut');
    const glass = kinds.get(body.closure ?? '') === GLASS;
    return ruleLimit(job.rules, glass ? 'gap-hatch-glass' : 'gap-hatch-trim');
  };
};

/** For each closure, itself and every closure that carries it or that it carries. */
const kinOf = (job: Job): ((a: string | null, b: string | null) => boolean) => {
  const carriers = new Map<string, string | null>(job.space?.closures.map(({ id, carriedBy }) => [id, carriedBy]));
  const chain = (id: string | null): readonly string[] => {
    const ids: string[] = [];
    for (let next = id; next !== null && !ids.includes(next); next = carriers.get(next) ?? null) ids.push(next);
    return ids;
  };
  return (a, b) => a !== null && b !== null && (chain(a).includes(b) || chain(b).includes(a));
};

const nearnessOf = (job: Job, limit: Limit, standing: StandingBody, vehicle: StandingVehicle, gap: Gap): Nearness => ({
  parts: [standing.subject, vehicle.body.closure ?? vehicle.body.origin],
  value: gap.distance,
  limit,
  uncertainty: halfWidthTo(job, vehicle.body.id),
  at: segmentOf(gap),
  facts: { body: wholePart(standing.body.id), bodyName: standing.body.name, closure: vehicle.body.name },
});

/**
 * Every body of the cabinet, stowed, against every closure, closed, and what the closure carries: the gap that the
 * house rules ask for. What hangs on a closure is not checked against it, nor against one that carries it or that it
 * carries. The nearest body of each closure is measured however far it stands, so that the margin is known.
 */
export const hatchClosed = (job: Job): Verdict => {
  const limitOf = limitFor(job);
  const kin = kinOf(job);
  const seen: Nearness[] = [];
  let pairs = 0;
  for (const vehicle of job.vehicle.filter(({ body }) => body.closure !== null)) {
    const limit = limitOf(vehicle);
    const reach = limit.value + halfWidthTo(job, vehicle.body.id);
    let least = Infinity;
    for (const standing of job.standing) {
      if (kin(standing.closure, vehicle.body.closure)) continue;
      if (boxesMeet(standing.box, boxGrown(vehicle.box, reach))) pairs++;
      const gap = gapWithin(standing.body.shape, vehicle.body.shape, Math.max(reach, least));
      if (!gap) continue;
      least = Math.min(least, gap.distance);
      seen.push(nearnessOf(job, limit, standing, vehicle, gap));
    }
  }
  return judgeGaps('hatch-closed', 'hatch', seen, pairs);
};
