import { add, distance, dot, scale, subtract, unit, type Vec3 } from '../base/index.ts';
import { type SpringLeaf, springSwing } from './carry/index.ts';
import { forceOf, type HeldMover, heldMovers } from './hold/index.ts';
import type { InspectionInput } from './job.ts';

/** What the gas springs of one leaf do over its swing. */
export interface SpringFigures {
  readonly held: HeldMover;
  /** Moment (N mm) that keeps it open at its end on the coldest day; negative lets it fall. */
  readonly holdsOpen: number;
  /** Greatest hand force (N) that closes it on the hottest day. */
  readonly handN: number;
}

/** The leaf of a mover with the gas springs at its opening, or null where it has none. */
const leafOf = (job: InspectionInput, { mover, kg, centre }: HeldMover): SpringLeaf | null => {
  const { motion, origin, id } = mover;
  if (motion.kind !== 'turn') return null;
  const springs = job.fitout.hardware.flatMap(({ id: part, origin: own, item }) => {
    const record = job.catalog.hardware.get(item);
    if (own !== origin || record?.kind !== 'gas-spring' || !record.ratedN || !record.sizeMm) return [];
    const [wall, leaf] = job.fitout.bodies.find((body) => body.id === part)?.shape.vertices ?? [];
    return wall && leaf ? [{ wall, leaf, ratedN: record.ratedN, fullMm: record.sizeMm[0] }] : [];
  });
  if (springs.length === 0) return null;
  const axis = unit(motion.axis);
  const fromHinge = (at: Vec3): number => {
    const foot = add(motion.point, scale(axis, dot(subtract(at, motion.point), axis)));
    return distance(at, foot);
  };
  const corners = job.fitout.bodies
    .filter((body) => body.mover === id && body.kind === 'panel')
    .flatMap(({ shape }) => shape.vertices);
  return {
    point: motion.point,
    axis,
    travelRad: motion.travelRad,
    weightN: forceOf(job, kg, 1),
    centre,
    handMm: Math.max(1, ...corners.map(fromHinge)),
    springs,
  };
};

/** The leaves of a cabinet that hang on gas springs, or those among the movers given. */
export const gasSpringFigures = (
  input: InspectionInput,
  held: readonly HeldMover[] = heldMovers(input),
): readonly SpringFigures[] => {
  const { rules } = input;
  const common = { rise: rules.value('gas-spring-rise'), strokeShare: rules.value('gas-spring-stroke-share') };
  const [cold, hot] = [rules.value('gas-spring-cold-factor'), rules.value('gas-spring-hot-factor')];
  return held.flatMap((own) => {
    const leaf = leafOf(input, own);
    return leaf ? [{ held: own, ...springSwing(leaf, { ...common, day: cold }, { ...common, day: hot }) }] : [];
  });
};
