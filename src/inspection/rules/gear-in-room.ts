import { placed, ROUNDING_MM, type Vec3 } from '../../base/index.ts';
import type { FitOut } from '../../fitout/index.ts';
import type { Finding, FindingFacts, Measured } from '../finding.ts';
import type { Job } from '../job.ts';
import { found, type Limit, limitAt, measured, ruleLimit, type Verdict } from '../verdict.ts';

type Room = FitOut['rooms'][number];
type Stowed = FitOut['gear'][number];

const AXES = ['across', 'deep', 'up'] as const;

/** One side of the room: how far the gear stays inside it, negative where it sticks out. */
interface Side {
  readonly axis: (typeof AXES)[number];
  readonly inside: number;
  readonly at: readonly [Vec3, Vec3];
}

/** Middle of the face of the gear at `face` along `axis`, and the point of the room's wall straight beside it. */
const beside = (room: Room, stowed: Stowed, axis: 0 | 1 | 2, face: number, wall: number): readonly [Vec3, Vec3] => {
  const middle = stowed.from.map((low, i) => low + (stowed.size[i] ?? 0) / 2);
  const point = (value: number): Vec3 => {
    const [x, y, z] = middle.map((own, i) => (i === axis ? value : own));
    return placed(room.pose, [x ?? 0, y ?? 0, z ?? 0]);
  };
  return [point(face), point(wall)];
};

const sidesOf = (room: Room, stowed: Stowed): readonly Side[] =>
  ([0, 1, 2] as const).flatMap((axis) => {
    const [low, high, end] = [stowed.from[axis], stowed.from[axis] + stowed.size[axis], room.size[axis]];
    return [
      { axis: AXES[axis], inside: low, at: beside(room, stowed, axis, low, 0) },
      { axis: AXES[axis], inside: end - high, at: beside(room, stowed, axis, high, end) },
    ];
  });

/** Spare on each side if the gear were pushed to the middle; upright it stands on the floor and all spare is above. */
const spareOn = (room: Room, stowed: Stowed, axis: 0 | 1 | 2): number =>
  (room.size[axis] - stowed.size[axis]) / (axis === 2 ? 1 : 2);

/** A set that its room would not take with the next larger cylinder, where that is to go on. */
const nextSizeTight = (room: Room, stowed: Stowed, limit: Limit, gear: string): readonly Finding[] => {
  const { growth } = room;
  if (!growth) return [];
  const spares = ([0, 1, 2] as const).map((axis) => ({
    axis: AXES[axis],
    value: room.size[axis] - stowed.size[axis] - growth[axis],
  }));
  const { axis, value } = spares.reduce((least, spare) => (spare.value < least.value ? spare : least));
  if (value >= -ROUNDING_MM) return [];
  const facts = { gear, axis, what: 'next-size' };
  const parts = [stowed.gear, stowed.opening];
  return [
    found('gear-in-room', { severity: 'caution', parts, value, limit: limitAt(limit, 0, 'mm'), margin: 'gap', facts }),
  ];
};

/**
 * Every item of gear lies inside its room (stop), and the room leaves it the spare that hands and bags need (caution),
 * except in a bracket, which is made to hold it tight.
 */
export const gearInRoom = (job: Job): Verdict => {
  const limit = ruleLimit(job.rules, 'gap-gear');
  const inside = limitAt(limit, 0, 'mm');
  const names = new Map<string, string>(job.design.gear.map(({ id, name }) => [id, name]));
  const openings = new Map<string, Vec3>(job.fitout.openings.map(({ id, size }) => [id, size]));
  const sizeOf =
    (opening: string) =>
    (axis: Side['axis']): FindingFacts => {
      const size = openings.get(opening)?.[AXES.indexOf(axis)];
      return size === undefined ? {} : { openingMm: size };
    };
  const findings: Finding[] = [];
  const taken: Measured[] = [];
  for (const stowed of job.fitout.gear) {
    const room = job.fitout.rooms.find((own) => own.opening === stowed.opening && own.level === stowed.level);
    if (!room) continue;
    const parts = [stowed.gear, stowed.opening];
    const worst = sidesOf(room, stowed).reduce((least, side) => (side.inside < least.inside ? side : least));
    const name = names.get(stowed.gear) ?? stowed.gear;
    const openingMm = sizeOf(stowed.opening);
    if (worst.inside < -ROUNDING_MM) {
      const facts = { gear: name, axis: worst.axis, what: 'sticks-out', ...openingMm(worst.axis) };
      const { inside: value, at } = worst;
      findings.push(found('gear-in-room', { severity: 'stop', parts, value, limit: inside, at, margin: 'gap', facts }));
      taken.push(measured('gear-in-room', { margin: 'gap', parts, value, limit: inside, sense: 'at least', at }));
      continue;
    }
    findings.push(...nextSizeTight(room, stowed, limit, name));
    if (room.keeps === 'bracket') continue;
    const spares = ([0, 1, 2] as const).map((axis) => ({ axis: AXES[axis], value: spareOn(room, stowed, axis) }));
    const tight = spares.reduce((least, spare) => (spare.value < least.value ? spare : least));
    const { value } = tight;
    // Openings sized to their gear leave just this spare: only a lack of it is a margin worth showing.
    if (value >= limit.value - ROUNDING_MM) continue;
    taken.push(measured('gear-in-room', { margin: 'gap', parts, value, limit, sense: 'at least', at: worst.at }));
    const facts = { gear: name, axis: tight.axis, what: 'tight', ...openingMm(tight.axis) };
    findings.push(
      found('gear-in-room', { severity: 'caution', parts, value, limit, at: worst.at, margin: 'gap', facts }),
    );
  }
  return { findings, measured: taken, pairs: job.fitout.gear.length };
};
