import { ROUNDING_MM } from '../../base/index.ts';
import { gapWithin } from '../../bodies/index.ts';
import type { Obstacle } from '../../design/index.ts';
import { wholePart } from '../../fitout/index.ts';
import { nearBetween } from '../broad-phase.ts';
import { halfWidthTo, type Job } from '../job.ts';
import type { StandingBody, StandingVehicle } from '../standing.ts';
import { ruleLimit, type Verdict } from '../verdict.ts';
import { judgeGaps, type Nearness, segmentOf } from './nearness.ts';

/** The house rule that says how far each kind of obstacle is kept off. */
export const OBSTACLE_GAPS: Readonly<Record<Obstacle['kind'], string>> = {
  latch: 'gap-trim',
  striker: 'gap-trim',
  strut: 'gap-strut',
  'tie-down': 'gap-floor-obstacle',
  trim: 'gap-trim',
  lamp: 'gap-trim',
  'seat-back': 'gap-seat',
  wheelhouse: 'gap-floor-obstacle',
  other: 'gap-trim',
};

/** True when the cabinet stands on it or over it: it ends at or below the underside of the carcass. */
const standsOver = (standing: StandingBody, obstacle: StandingVehicle): boolean =>
  obstacle.box.max[2] <= standing.underside + ROUNDING_MM;

/**
 * Every body of the cabinet, at rest, against every fixed obstacle of the vehicle: clear by the house rule for that
 * kind of obstacle. What the carcass stands over is left out: it bears the carcass and does not rub against it.
 */
export const bodyObstacle = (job: Job): Verdict => {
  const kinds = new Map<string, Obstacle['kind']>(job.design.survey.obstacles.map(({ id, kind }) => [id, kind]));
  const fixed = job.vehicle.filter(({ body }) => body.kind === 'obstacle' && body.closure === null);
  const inside = job.standing.filter(({ closure }) => closure === null);
  const limitOf = (obstacle: StandingVehicle) =>
    ruleLimit(job.rules, OBSTACLE_GAPS[kinds.get(obstacle.body.origin) ?? 'other']);
  const reach = Math.max(0, ...fixed.map((obstacle) => limitOf(obstacle).value + halfWidthTo(job, obstacle.body.id)));
  const seen: Nearness[] = [];
  let pairs = 0;
  nearBetween(
    inside.map(({ box }) => box),
    fixed.map(({ box }) => box),
    reach,
    (a, b) => {
      const [standing, obstacle] = [inside[a], fixed[b]];
      if (!standing || !obstacle || standsOver(standing, obstacle)) return;
      pairs++;
      const gap = gapWithin(standing.body.shape, obstacle.body.shape, reach);
      if (!gap) return;
      seen.push({
        parts: [standing.subject, obstacle.body.origin],
        value: gap.distance,
        limit: limitOf(obstacle),
        uncertainty: halfWidthTo(job, obstacle.body.id),
        at: segmentOf(gap),
        facts: { body: wholePart(standing.body.id), bodyName: standing.body.name, obstacle: obstacle.body.name },
      });
    },
  );
  return judgeGaps('body-obstacle', 'gap', seen, pairs);
};
