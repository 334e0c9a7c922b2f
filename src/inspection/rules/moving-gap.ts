import { dot, ROUNDING_MM, type Vec3 } from '../../base/index.ts';
import { wholePart } from '../../fitout/index.ts';
import type { Job } from '../job.ts';
import { type BodyPair, overlaps } from '../pairs.ts';
import type { CabinetBody } from '../standing.ts';
import { ruleLimit, type Verdict } from '../verdict.ts';
import { judgePairs } from './pair-verdict.ts';

const canRub = (body: CabinetBody): boolean => body.kind === 'panel' || body.kind === 'gear' || body.kind === 'device';

/** The direction in which each mover slides; turning movers have none. */
const slidesOf = (job: Job): ReadonlyMap<string, Vec3> =>
  new Map(
    job.fitout.movers.flatMap(({ id, motion }) => (motion.kind === 'slide' ? [[id, motion.direction] as const] : [])),
  );

/**
 * True when a front closes onto what it faces: the two meet along its slide, which is what stops it. Sideways they must
 * still keep apart.
 */
const closesOnto = (pair: BodyPair, front: CabinetBody, slides: ReadonlyMap<string, Vec3>): boolean => {
  const slide = front.mover === null ? undefined : slides.get(front.mover);
  if (!slide) return false;
  const along = Math.abs(dot(pair.gap.direction, slide));
  return along * along > 1 - along * along;
};

/**
 * Stowed, a mover and what it carries keep the gap between moving parts to everything else of their carcass. Slides and
 * latches touch both sides by design and are left out. A drawer front or a door keeps the reveal instead, which the
 * shop may set smaller, and may close onto what stands behind it.
 */
export const movingGap = (job: Job): Verdict => {
  const fronts = new Set(job.fitout.panels.filter((panel) => panel.role === 'front').map((panel) => panel.id));
  const slides = slidesOf(job);
  const frontsIn = (pair: BodyPair) => [pair.a.body, pair.b.body].filter(({ id }) => fronts.has(wholePart(id)));
  const apart = job.pairs.filter(
    (pair) =>
      pair.relation === 'same-carcass' &&
      !overlaps(pair) &&
      canRub(pair.a.body) &&
      canRub(pair.b.body) &&
      !frontsIn(pair).some((front) => closesOnto(pair, front, slides)),
  );
  const limitOf = (pair: BodyPair) =>
    ruleLimit(job.rules, frontsIn(pair).length > 0 ? 'reveal-front' : 'gap-moving-parts');
  return judgePairs('moving-gap', apart, limitOf, (pair, limit) =>
    pair.gap.distance < limit.value - ROUNDING_MM ? 'caution' : null,
  );
};
