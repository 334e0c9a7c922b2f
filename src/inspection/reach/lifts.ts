import { boxMiddle, dot, negate, ROUNDING_MM, type Vec3 } from '../../base/index.ts';
import { shapeBox } from '../../bodies/index.ts';
import { standsInAisle } from '../aisle.ts';
import type { InspectionInput } from '../job.ts';
import { type Coupling, liftIndex, liftLimitKg } from './lifting.ts';

/** One item of gear as a person lifts it out, at its origin and where it is set down. */
export interface Lift {
  readonly gear: string;
  readonly name: string;
  readonly kg: number;
  /** Hands before the ankles and above what is stood on, the ground or the floor of an aisle (mm), with its tray in and as far out as helps. */
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

type LiftInput = Pick<InspectionInput, 'design' | 'fitout' | 'catalog' | 'rules'>;
type Gear = InspectionInput['design']['gear'][number];
type Room = InspectionInput['fitout']['rooms'][number];

/** How an item would be lifted whose middle lies at a point of a room; null for a room that nobody lifts out of. */
export type LiftAt = (item: Gear, room: Room, at: Vec3) => Lift | null;

/**
 * Judges lifts in a cabinet by the revised equation. A person stands at the edge of the bumper, or at the face of a
 * carcass that looks aside; sill and bumper add the greater of the house rule and the bumper itself. Null without the
 * height of the floor above ground.
 */
export const liftGround = (input: LiftInput): LiftAt | null => {
  const { design, fitout, catalog, rules } = input;
  const floor = design.vehicle.floorAboveGroundMm;
  if (floor === null) return null;
  const movers = new Map<string, (typeof fitout.movers)[number]>(fitout.movers.map((mover) => [mover.id, mover]));
  const carcassOf = new Map<string, (typeof fitout.carcasses)[number]>(fitout.carcasses.map((each) => [each.id, each]));
  const best = rules.value('lifting-height-best');
  const [frequencyFactor, asymmetryDeg] = [rules.value('lifting-frequency-factor'), rules.value('lifting-twist')];
  const near = rules.value('lifting-reach-best');
  const sill = rules.value('sill-reach-add');
  const inAisle = standsInAisle(design, rules);
  return (item, room, at) => {
    const inward = room.pose.turn[1];
    const over = inward[0] > 0.5 ? 'bumper' : Math.abs(inward[1]) > 0.5 ? 'side' : null;
    if (over === null) return null;
    // Behind the sill for the rear; behind its own face for a carcass that looks aside.
    const face = over === 'bumper' ? 0 : dot(carcassOf.get(room.carcass)?.pose.at ?? at, inward);
    const stand = over === 'bumper' ? Math.max(sill, design.vehicle.bumperBehindSillMm) : sill;
    const stowedReachMm = dot(at, inward) - face + stand;
    const mover = room.mover === null ? undefined : movers.get(room.mover);
    const travel = mover?.motion.kind === 'slide' ? mover.motion.travel : 0;
    const reachMm = Math.min(stowedReachMm, Math.max(near, stowedReachMm - travel));
    const heightMm = at[2] + (inAisle(negate(inward)) ? 0 : floor);
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
    return {
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
    };
  };
};

/** From the shoulder of a small person in boots to the hands of a lift (mm). */
export const armsLength = ({ reachMm, heightMm }: Lift, rules: InspectionInput['rules']): number =>
  Math.hypot(reachMm, heightMm - (rules.value('shoulder-small') + rules.value('boots-height')));

/** Every stowed item that somebody lifts, the hardest first. Empty without the height of the floor above ground. */
export const liftsOf = (input: LiftInput): readonly Lift[] => {
  const liftAt = liftGround(input);
  if (!liftAt) return [];
  const { design, fitout } = input;
  const gear = new Map<string, Gear>(design.gear.map((item) => [item.id, item]));
  const bodies = new Map(fitout.bodies.map((body) => [body.id, body]));
  const rooms = new Map(fitout.rooms.map((room) => [`${room.opening} ${room.level}`, room]));
  return fitout.gear
    .flatMap((placed): readonly Lift[] => {
      const [item, body] = [gear.get(placed.gear), bodies.get(placed.body)];
      const room = rooms.get(`${placed.opening} ${placed.level}`);
      return item && body && room
        ? [liftAt(item, room, boxMiddle(shapeBox(body.shape)))].flatMap((lift) => lift ?? [])
        : [];
    })
    .toSorted(
      (a, b) =>
        (b.index ?? Infinity) - (a.index ?? Infinity) ||
        b.kg - a.kg ||
        (Math.abs(a.heightMm - b.heightMm) < ROUNDING_MM ? 0 : a.heightMm - b.heightMm),
    );
};
