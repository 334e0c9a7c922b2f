import { boxMiddle, dot, ROUNDING_MM, type Vec3 } from '../../base/index.ts';
import { shapeBox } from '../../bodies/index.ts';
import type { InspectionInput } from '../job.ts';
import { type Coupling, liftIndex, liftLimitKg } from './lifting.ts';

/** One item of gear as a person lifts it out, at its origin and where it is set down. */
export interface Lift {
  readonly gear: string;
  readonly name: string;
  readonly kg: number;
  /** Hands before the ankles and above ground (mm), with its tray in and as far out as helps. */
  readonly stowedReachMm: number;
  readonly reachMm: number;
  readonly heightMm: number;
  readonly coupling: Coupling;
  readonly limitKg: number;
  /** Load over limit at the origin; null where the lift lies outside the equation. */
  readonly index: number | null;
  readonly stowedIndex: number | null;
  /** Held close at knuckle height, where it is set down. */
  readonly destinationIndex: number | null;
  readonly at: Vec3;
  /** The face that it is lifted out of: rear over the bumper, or a side. */
  readonly over: 'bumper' | 'side';
}

const COUPLING: Readonly<Record<string, Coupling>> = {
  bag: 'good',
  pack: 'good',
  case: 'good',
  box: 'fair',
  cylinder: 'fair',
  long: 'poor',
};

const CM = 10;

/**
 * Every stowed item that somebody lifts, by the revised equation. A person stands at the edge of the bumper, or at the
 * face of a carcass that looks aside; sill and bumper add the greater of the house rule and the bumper itself. Empty
 * without the height of the floor above ground.
 */
export const liftsOf = (input: Pick<InspectionInput, 'design' | 'fitout' | 'catalog' | 'rules'>): readonly Lift[] => {
  const { design, fitout, catalog, rules } = input;
  const floor = design.vehicle.floorAboveGroundMm;
  if (floor === null) return [];
  const gear = new Map<string, (typeof design.gear)[number]>(design.gear.map((item) => [item.id, item]));
  const movers = new Map<string, (typeof fitout.movers)[number]>(fitout.movers.map((mover) => [mover.id, mover]));
  const outOf = new Map(fitout.rooms.map(({ opening, level, pose }) => [`${opening} ${level}`, pose.turn[1]]));
  const bodies = new Map(fitout.bodies.map((body) => [body.id, body]));
  const carcassOf = new Map<string, (typeof fitout.carcasses)[number]>(fitout.carcasses.map((each) => [each.id, each]));
  const best = rules.value('lifting-height-best');
  const [frequencyFactor, asymmetryDeg] = [rules.value('lifting-frequency-factor'), rules.value('lifting-twist')];
  const near = rules.value('lifting-reach-best');
  const sill = rules.value('sill-reach-add');
  return fitout.gear
    .flatMap((placed): readonly Lift[] => {
      const [item, body] = [gear.get(placed.gear), bodies.get(placed.body)];
      const inward = outOf.get(`${placed.opening} ${placed.level}`);
      if (!item || !body || !inward) return [];
      const at = boxMiddle(shapeBox(body.shape));
      const over = inward[0] > 0.5 ? 'bumper' : Math.abs(inward[1]) > 0.5 ? 'side' : null;
      if (over === null) return [];
      const carcass = body.carcass === null ? undefined : carcassOf.get(body.carcass);
      // Behind the sill for the rear; behind its own face for a carcass that looks aside.
      const face = over === 'bumper' ? 0 : dot(carcass?.pose.at ?? at, inward);
      const stand = over === 'bumper' ? Math.max(sill, design.vehicle.bumperBehindSillMm) : sill;
      const stowedReachMm = dot(at, inward) - face + stand;
      const mover = body.mover === null ? undefined : movers.get(body.mover);
      const travel = mover?.motion.kind === 'slide' ? mover.motion.travel : 0;
      const reachMm = Math.min(stowedReachMm, Math.max(near, stowedReachMm - travel));
      const heightMm = floor + at[2];
      const coupling = COUPLING[(item.kind === null ? undefined : catalog.gear.get(item.kind)?.form) ?? ''] ?? 'fair';
      const travelCm = Math.abs(heightMm - best) / CM;
      const limitAt = (reach: number, height: number): number =>
        liftLimitKg({
          horizontalCm: reach / CM,
          verticalCm: height / CM,
          travelCm,
          asymmetryDeg,
          frequencyFactor,
          coupling,
        });
      const limitKg = limitAt(reachMm, heightMm);
      return [
        {
          gear: item.id,
          name: item.name,
          kg: item.massKg,
          stowedReachMm,
          reachMm,
          heightMm,
          coupling,
          limitKg,
          index: liftIndex(item.massKg, limitKg),
          stowedIndex: liftIndex(item.massKg, limitAt(stowedReachMm, heightMm)),
          destinationIndex: liftIndex(item.massKg, limitAt(near, best)),
          at,
          over,
        },
      ];
    })
    .toSorted(
      (a, b) =>
        (b.index ?? Infinity) - (a.index ?? Infinity) ||
        b.kg - a.kg ||
        (Math.abs(a.heightMm - b.heightMm) < ROUNDING_MM ? 0 : a.heightMm - b.heightMm),
    );
};
