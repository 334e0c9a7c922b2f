import { gapWithin } from '../../bodies/index.ts';
import type { Obstacle } from '../../design/index.ts';
import { nearBetween } from '../broad-phase.ts';
import { halfWidthTo, type Job } from '../job.ts';
import type { StandingVehicle } from '../standing.ts';
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

/**
 * Every body of the cabinet, stowed, against every closure, closed, and what the closure carries: the gap that the
 * house rules ask for. What hangs on a closure is not checked against it, nor against
 * one that carries it or that it carries.
 */
export const hatchClosed = (job: Job): Verdict => {
  const limitOf = limitFor(job);
  const kin = kinOf(job);
  const moving = job.vehicle.filter(({ body }) => body.closure !== null);
  const reach = Math.max(0, ...moving.map((vehicle) => limitOf(vehicle).value + halfWidthTo(job, vehicle.body.id)));
  const seen: Nearness[] = [];
  let pairs = 0;
  nearBetween(
    job.standing.map(({ box }) => box),
    moving.map(({ box }) => box),
    reach,
    (a, b) => {
      const [standing, vehicle] = [job.standing[a], moving[b]];
      if (!standing || !vehicle || kin(standing.closure, vehicle.body.closure)) return;
      pairs++;
      const gap = gapWithin(standing.body.shape, vehicle.body.shape, reach);
      if (!gap) return;
      const { body } = standing;
      seen.push({
        parts: [standing.subject, vehicle.body.closure ?? vehicle.body.origin],
        value: gap.distance,
        limit: limitOf(vehicle),
        uncertainty: halfWidthTo(job, vehicle.body.id),
        at: segmentOf(gap),
        facts: { body: body.id, bodyName: body.name, closure: vehicle.body.name },
      });
    },
  );
  return judgeGaps('hatch-closed', 'hatch', seen, pairs);
};
