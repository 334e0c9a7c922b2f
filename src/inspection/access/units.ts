import { after, type Box, HOME, type Pose } from '../../base/index.ts';
import { type ConvexShape, type Motion, motionPose, shapeBox } from '../../bodies/index.ts';
import { type CargoSpace, type PlacedClosure, vehicleBodyAt } from '../../envelope/index.ts';
import type { FitOut } from '../../fitout/index.ts';
import { namedPart } from '../standing.ts';
import { type CabinetMover, motionOf, openPose, swingOf, unsoundMotion } from '../travel/movers.ts';

export type CabinetBody = FitOut['bodies'][number];

/** A solid that stands still, or rides on one unit. */
export interface Solid {
  /** What a finding names: the node or part. */
  readonly part: string;
  readonly name: string;
  readonly origin: string;
  readonly kind: CabinetBody['kind'] | 'vehicle';
  readonly shape: ConvexShape;
  readonly box: Box;
}

export interface Rest {
  readonly name: string;
  readonly share: number;
}

/** One mover with what rides on it directly: a closure of the vehicle, a drawer, a tray, a door, a board. */
export interface Unit {
  readonly id: string;
  /** What a finding names. */
  readonly part: string;
  readonly name: string;
  readonly closure: boolean;
  /** From 0 (stowed) to its whole travel, its carriers stowed. */
  readonly motion: Motion;
  readonly carriedBy: string | null;
  readonly rests: readonly Rest[];
  readonly solids: readonly Solid[];
}

const solidOf = (body: CabinetBody): Solid => ({
  part: namedPart(body),
  name: body.name,
  origin: body.origin,
  kind: body.kind,
  shape: body.shape,
  box: shapeBox(body.shape),
});

/** One solid for one body, for as long as the body is kept: what was proven of it is then found again. */
const knownSolids = new WeakMap<CabinetBody, Solid>();
export const cabinetSolid = (body: CabinetBody): Solid => {
  const known = knownSolids.get(body) ?? solidOf(body);
  knownSolids.set(body, known);
  return known;
};

type VehicleBody = CargoSpace['bodies'][number];
const knownVehicle = new WeakMap<VehicleBody, Solid>();
export const vehicleSolid = (body: VehicleBody): Solid => {
  const known = knownVehicle.get(body) ?? {
    part: body.closure ?? body.origin,
    name: body.name,
    origin: body.origin,
    kind: 'vehicle' as const,
    shape: body.shape,
    box: shapeBox(body.shape),
  };
  knownVehicle.set(body, known);
  return known;
};

/**
 * A strut as it stands while its closure is open, which is when anything else moves. It is hardware of its closure, which
 * runs in it; how it swings is judged by the check of closures.
 */
const strutSolid = (body: VehicleBody, closure: string, closures: readonly PlacedClosure[]): Solid => {
  const known = knownVehicle.get(body);
  if (known) return known;
  const shape = vehicleBodyAt(body, openPose(new Map(closures.map((own) => [own.id as string, own])), closure));
  const solid: Solid = {
    part: body.origin,
    name: body.name,
    origin: closure,
    kind: 'hardware',
    shape,
    box: shapeBox(shape),
  };
  knownVehicle.set(body, solid);
  return solid;
};

const CLOSURE_RESTS: readonly Rest[] = [
  { name: 'closed', share: 0 },
  { name: 'open', share: 1 },
];

const closureUnit = (closure: PlacedClosure, solids: readonly Solid[]): Unit => ({
  id: closure.id,
  part: closure.id,
  name: closure.name,
  closure: true,
  motion: swingOf(closure),
  carriedBy: closure.carriedBy,
  rests: CLOSURE_RESTS,
  solids,
});

const cabinetUnit = (mover: CabinetMover, solids: readonly Solid[]): Unit => ({
  id: mover.id,
  part: mover.origin,
  name: mover.name,
  closure: false,
  motion: motionOf(mover),
  carriedBy: mover.carriedBy,
  rests: mover.rests,
  solids,
});

/** Units made before, by their mover or closure: the same object again while nothing on it has changed. */
const knownUnits = new WeakMap<object, Unit>();
const remembered = (of: object, solids: readonly Solid[], make: () => Unit): Unit => {
  const known = knownUnits.get(of);
  if (known && known.solids.length === solids.length && known.solids.every((solid, i) => solid === solids[i]))
    return known;
  const made = make();
  knownUnits.set(of, made);
  return made;
};

/** Everything that moves and everything that stands, each solid once. Room for plugs is air and is left out. */
export interface Ground {
  readonly units: readonly Unit[];
  readonly byId: ReadonlyMap<string, Unit>;
  readonly fixed: readonly Solid[];
  /** Placed gear by its node, each with the unit that it rides on. */
  readonly gear: ReadonlyMap<string, { readonly solid: Solid; readonly rides: string | null }>;
}

export const groundOf = (fitout: FitOut, space: CargoSpace | null): Ground => {
  const closures = space?.closures ?? [];
  // What cannot be judged as a mover counts as standing still; the check of travels says so.
  const movers = fitout.movers.filter((mover) => unsoundMotion(mover) === null);
  const moverIds = new Set<string>(movers.map(({ id }) => id));
  const closureIds = new Set<string>(closures.map(({ id }) => id));
  const mounted = new Map<string, string | null>(fitout.devices.map(({ origin, mover }) => [origin, mover]));
  const riderOf = (body: CabinetBody): string | null => {
    if (body.mover !== null) return moverIds.has(body.mover) ? body.mover : null;
    const carrier = mounted.get(body.origin) ?? null;
    return carrier !== null && closureIds.has(carrier) ? carrier : null;
  };
  const riding = new Map<string | null, Solid[]>();
  const put = (on: string | null, solid: Solid): void => {
    const list = riding.get(on);
    if (list) list.push(solid);
    else riding.set(on, [solid]);
  };
  const gear = new Map<string, { solid: Solid; rides: string | null }>();
  for (const body of fitout.bodies) {
    if (body.kind === 'plug-room') continue;
    const rides = riderOf(body);
    const solid = cabinetSolid(body);
    put(rides, solid);
    if (body.kind === 'gear') gear.set(body.origin, { solid, rides });
  }
  for (const body of space?.bodies ?? [])
    if (body.stays && body.closure !== null) put(null, strutSolid(body, body.closure, closures));
    else put(body.closure, vehicleSolid(body));
  const units = [
    ...closures.map((closure) => {
      const solids = riding.get(closure.id) ?? [];
      return remembered(closure, solids, () => closureUnit(closure, solids));
    }),
    ...movers.map((mover) => {
      const solids = riding.get(mover.id) ?? [];
      return remembered(mover, solids, () => cabinetUnit(mover, solids));
    }),
  ];
  return { units, byId: new Map(units.map((unit) => [unit.id, unit])), fixed: riding.get(null) ?? [], gear };
};

/** The unit and what carries it, the outermost first. A circle, which only a hurt file has, is cut open. */
export const chainOf = (ground: Ground, id: string | null): readonly Unit[] => {
  const chain: Unit[] = [];
  for (let at = id; at !== null; ) {
    const unit = ground.byId.get(at);
    if (!unit || chain.includes(unit)) break;
    chain.unshift(unit);
    at = unit.carriedBy;
  }
  return chain;
};

/** Where every unit stands: the share of its travel, 0 where it is not named. */
export type Shares = Readonly<Record<string, number>>;

const travelOf = (motion: Motion): number => (motion.kind === 'slide' ? motion.toMm : motion.toRad);

/** What a chain of units, outermost first, does to what rides on the last of them. */
export const chainPose = (chain: readonly Unit[], shares: Shares): Pose =>
  chain.reduce<Pose>((pose, { id, motion }) => {
    const share = shares[id] ?? 0;
    return share === 0 ? pose : after(pose, motionPose(motion, travelOf(motion) * share));
  }, HOME);

/** The motion of a unit between two shares of its travel. */
export const motionBetween = ({ motion }: Unit, from: number, to: number): Motion =>
  motion.kind === 'slide'
    ? { ...motion, fromMm: motion.toMm * from, toMm: motion.toMm * to }
    : { ...motion, fromRad: motion.toRad * from, toRad: motion.toRad * to };

export const heldAt = ({ id, motion }: Unit, shares: Shares) => ({ motion, at: travelOf(motion) * (shares[id] ?? 0) });
