import type { Box, Vec3 } from '../../base/index.ts';
import type { Finding } from '../finding.ts';
import type { Job } from '../job.ts';
import { found, type Limit, NOTHING, ruleLimit, type Verdict } from '../verdict.ts';

/** The steps of the table: up to how many watts which distance holds. */
const STEPS = ['7w', '15w', '39w', '110w'] as const;

/** How near people may be to an antenna of so much power; null beyond the table. */
const distanceFor = (job: Job, watts: number): Limit | null => {
  const step = STEPS.find((one) => watts <= job.rules.value(`rf-power-${one}`));
  return step === undefined ? null : ruleLimit(job.rules, `rf-distance-${step}`);
};

/** Where people stand and lean at the open hatch: the ground behind the bumper and the sill, as high as a tall person. */
const peopleAtHatch = (job: Job, floor: number): Box => {
  const { bumperBehindSillMm } = job.design.vehicle;
  const { rules, space } = job;
  const half = Math.max(...[space?.bounds.min[1] ?? 0, space?.bounds.max[1] ?? 0].map(Math.abs));
  const top = rules.value('stature-large') + rules.value('boots-height') + rules.value('helmet-height') - floor;
  return { min: [-bumperBehindSillMm - rules.value('stand-depth'), -half, -floor], max: [0, half, top] };
};

const distanceTo = ({ min, max }: Box, at: Vec3): number =>
  Math.hypot(...([0, 1, 2] as const).map((axis) => Math.max(min[axis] - at[axis], 0, at[axis] - max[axis])));

/**
 * Every antenna that sends stands far enough from people at the open hatch, by the table for its power. The distances
 * hold for half of the time sending. Whoever answers for the radios overrules them.
 */
export const rfDistance = (job: Job): Verdict => {
  const floor = job.design.vehicle.floorAboveGroundMm;
  if (floor === null) return NOTHING;
  const people = peopleAtHatch(job, floor);
  const findings = job.design.vehicle.antennas.flatMap(({ id, name, at, watts }): readonly Finding[] => {
    const limit = distanceFor(job, watts);
    const value = distanceTo(people, at);
    const facts = { antenna: name === '' ? id : name, watts };
    if (limit === null) {
      const none: Limit = { ...ruleLimit(job.rules, 'rf-power-110w'), value: 0, unit: 'mm' };
      return [found('rf-distance', { severity: 'caution', parts: [id], value, limit: none, facts })];
    }
    return value >= limit.value
      ? []
      : [found('rf-distance', { severity: 'caution', parts: [id], value, limit, facts })];
  });
  return { ...NOTHING, findings };
};
