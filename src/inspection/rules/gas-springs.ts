import { add, distance, dot, scale, subtract, unit, type Vec3 } from '../../base/index.ts';
import { type SpringLeaf, springSwing } from '../carry/index.ts';
import type { Finding } from '../finding.ts';
import { forceOf, type HeldMover } from '../hold/index.ts';
import type { Job } from '../job.ts';
import { found, type Limit, NOTHING, ruleLimit, type Verdict } from '../verdict.ts';

/** The leaf of a mover with the gas springs at its opening, or null where it has none. */
const leafOf = (job: Job, { mover, kg, centre }: HeldMover): SpringLeaf | null => {
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

/**
 * Gas springs over the whole swing: on the coldest day they keep the leaf open, on the hottest day a hand still closes
 * it. Never the only prop of a heavy lid.
 */
export const gasSpring = (job: Job): Verdict => {
  const { rules } = job;
  const hand = ruleLimit(rules, 'gas-spring-close-force');
  const cold: Limit = { ...ruleLimit(rules, 'gas-spring-cold'), value: 0, unit: 'N.m' };
  const common = { rise: rules.value('gas-spring-rise'), strokeShare: rules.value('gas-spring-stroke-share') };
  const findings = job.heldMovers.flatMap((held): readonly Finding[] => {
    const leaf = leafOf(job, held);
    if (!leaf) return [];
    const { holdsOpen, handN } = springSwing(
      leaf,
      { ...common, day: rules.value('gas-spring-cold-factor') },
      { ...common, day: rules.value('gas-spring-hot-factor') },
    );
    const parts = [held.mover.origin];
    const facts = { mover: held.mover.name, kg: held.kg };
    return [
      ...(holdsOpen < 0
        ? [
            found('gas-spring', {
              severity: 'caution',
              parts,
              value: holdsOpen / 1000,
              limit: cold,
              facts: { ...facts, day: 'cold' },
            }),
          ]
        : []),
      ...(handN > hand.value
        ? [
            found('gas-spring', {
              severity: 'caution',
              parts: [...parts, held.mover.id],
              value: handN,
              limit: hand,
              facts: { ...facts, day: 'hot' },
            }),
          ]
        : []),
    ];
  });
  return { ...NOTHING, findings };
};
