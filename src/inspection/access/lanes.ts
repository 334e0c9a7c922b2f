import { type Box, boxesMeet, boxGrown, boxUnion, ROUNDING_MM } from '../../base/index.ts';
import {
  boxShape,
  type ConvexShape,
  gapWithin,
  shapeAt,
  shapeBox,
  travelBox,
  travelIsClear,
} from '../../bodies/index.ts';
import { nearPairs } from '../broad-phase.ts';
import { chainOf, chainPose, type Ground, heldAt, motionBetween, type Shares, type Solid, type Unit } from './units.ts';

/** What is in the way of a move: units by id; `fixed` where something that never moves is. */
export interface Blockers {
  readonly units: readonly string[];
  readonly fixed: boolean;
}

/**
 * What a moving solid is not judged against: hardware of its own node, which runs in itself, and what it touches or
 * overlaps where both are stowed, which the rules at rest judge.
 */
const builtAgainst = (moving: Solid, around: Box, standing: Solid): boolean =>
  (moving.origin === standing.origin && (moving.kind === 'hardware' || standing.kind === 'hardware')) ||
  (boxesMeet(around, standing.box) && gapWithin(moving.shape, standing.shape, ROUNDING_MM) !== null);

/** Of what stands, what is judged: nothing that any of the moving solids is built against. */
const judged = (moving: readonly Solid[], standing: readonly Solid[]): readonly Solid[] => {
  const around = moving.map((own) => ({ own, box: boxGrown(own.box, ROUNDING_MM) }));
  return standing.filter((solid) => !around.some(({ own, box }) => builtAgainst(own, box, solid)));
};

/** What was proven between two units, by the two and where they and what carries them stand. */
const knownPairs = new WeakMap<Unit, WeakMap<Unit | readonly Solid[], Map<string, boolean>>>();

const remembered = (a: Unit, b: Unit | readonly Solid[], key: string, prove: () => boolean): boolean => {
  const byOther = knownPairs.get(a) ?? new WeakMap<Unit | readonly Solid[], Map<string, boolean>>();
  knownPairs.set(a, byOther);
  const byKey = byOther.get(b) ?? new Map<string, boolean>();
  byOther.set(b, byKey);
  const known = byKey.get(key);
  if (known !== undefined) return known;
  const proven = prove();
  byKey.set(key, proven);
  return proven;
};

const sharesKey = (chain: readonly Unit[], shares: Shares): string => chain.map(({ id }) => shares[id] ?? 0).join(',');

/** One unit going from one share of its travel to another, with one of the units that ride on it or itself. */
interface Going {
  readonly unit: Unit;
  readonly from: number;
  readonly to: number;
  readonly carriers: readonly Unit[];
  /** Units between the moving one and the rider, the rider included; empty for the moving one itself. */
  readonly inner: readonly Unit[];
  readonly rider: Unit;
}

const solidsAt = (solids: readonly Solid[], chain: readonly Unit[], shares: Shares) => {
  const still = chain.every(({ id }) => (shares[id] ?? 0) === 0);
  if (still) return solids.map(({ shape }) => shape);
  const pose = chainPose(chain, shares);
  return solids.map(({ shape }) => shapeAt(shape, pose));
};

const isClear = (going: Going, standing: readonly Solid[], chain: readonly Unit[], shares: Shares): boolean => {
  const { unit, from, to, carriers, inner, rider } = going;
  const against = judged(rider.solids, standing);
  if (against.length === 0 || rider.solids.length === 0) return true;
  const motion = motionBetween(unit, from, to);
  const moving = solidsAt(rider.solids, inner, shares);
  const obstacles = solidsAt(against, chain, shares);
  const held = carriers.map((carrier) => heldAt(carrier, shares));
  const isFree = (of: readonly ConvexShape[]): boolean => travelIsClear(motion, moving, of, 0, held);
  // What turns mostly keeps clear of the whole box around the others, which is one proof instead of one for each.
  const whole = boxShape(obstacles.map(shapeBox).reduce(boxUnion));
  return (motion.kind === 'turn' && obstacles.length > 1 && isFree([whole])) || isFree(obstacles);
};

/** The box around everything that a rider passes through. */
const wayBox = ({ unit, from, to, carriers, inner, rider }: Going): Box | null => {
  const carried = carriers.length > 0 || inner.length > 0;
  const boxes = carried ? null : rider.solids.map(({ shape }) => travelBox(motionBetween(unit, from, to), shape));
  return boxes === null || boxes.length === 0 ? null : boxes.reduce(boxUnion);
};

export interface Lanes {
  readonly ground: Ground;
  /** What keeps a unit from going from one share of its travel to another while all else stands as given. */
  readonly blockers: (unit: Unit, from: number, to: number, shares: Shares) => Blockers;
  /** Whether one other unit, standing as given, does. */
  readonly meets: (unit: Unit, other: Unit, from: number, to: number, shares: Shares) => boolean;
  /** Pairs of units whose whole ways come near each other, neither carrying the other. */
  readonly pairs: () => readonly (readonly [Unit, Unit])[];
}

const EVERYWHERE: Box = { min: [-Infinity, -Infinity, -Infinity], max: [Infinity, Infinity, Infinity] };

/** The box around all places of a unit that nothing carries; everywhere for one that is carried. */
const wholeBox = (unit: Unit): Box => {
  if (unit.carriedBy !== null || unit.solids.length === 0) return EVERYWHERE;
  return unit.solids.map(({ shape }) => travelBox(unit.motion, shape)).reduce(boxUnion);
};

/** Units as they are judged: what carries and what rides on each, and boxes of places and ways, each made once. */
const createPlaces = (ground: Ground) => {
  const chains = new Map(ground.units.map((unit) => [unit, chainOf(ground, unit.id)]));
  const chain = (unit: Unit): readonly Unit[] => chains.get(unit) ?? [unit];
  const riding = new Map<Unit, Unit[]>();
  for (const own of ground.units)
    for (const unit of chain(own)) {
      const list = riding.get(unit);
      if (list) list.push(own);
      else riding.set(unit, [own]);
    }
  const whole = new Map(ground.units.map((unit) => [unit, wholeBox(unit)]));
  const boxes = new Map<string, Box | null>();
  const boxed = (key: string, make: () => Box | null): Box | null => {
    const known = boxes.get(key);
    if (known !== undefined) return known;
    const box = make();
    boxes.set(key, box);
    return box;
  };
  return {
    chain,
    riders: (unit: Unit): readonly Unit[] => riding.get(unit) ?? [unit],
    whole: (unit: Unit): Box => whole.get(unit) ?? EVERYWHERE,
    place: (unit: Unit, shares: Shares): Box | null =>
      boxed(`${unit.id} at ${sharesKey(chain(unit), shares)}`, () => {
        const shapes = solidsAt(unit.solids, chain(unit), shares);
        return shapes.length === 0 ? null : shapes.map(shapeBox).reduce(boxUnion);
      }),
    way: (key: string, going: Going): Box | null => boxed(`way ${key}`, () => wayBox(going)),
  };
};

export const createLanes = (ground: Ground): Lanes => {
  const { chain, riders, whole, place, way } = createPlaces(ground);
  const goingOf = (unit: Unit, rider: Unit, from: number, to: number): Going => {
    const all = chain(rider);
    const at = all.indexOf(unit);
    return { unit, rider, from, to, carriers: all.slice(0, at), inner: all.slice(at + 1) };
  };
  const keyFor = ({ unit, rider, from, to }: Going, shares: Shares): string =>
    `${unit.id} ${rider.id} ${from} ${to} ${sharesKey(chain(rider), { ...shares, [unit.id]: 0 })}`;
  const fixedNear = (box: Box | null): readonly Solid[] =>
    box === null ? ground.fixed : ground.fixed.filter((solid) => boxesMeet(box, solid.box));
  const meetsOne = (going: Going, key: string, box: Box | null, other: Unit, shares: Shares): boolean => {
    if (box !== null && !boxesMeet(box, whole(other))) return false;
    const stands = place(other, shares);
    if (stands === null || (box !== null && !boxesMeet(box, stands))) return false;
    const pair = `${key} | ${sharesKey(chain(other), shares)}`;
    return !remembered(going.rider, other, pair, () => isClear(going, other.solids, chain(other), shares));
  };
  return {
    ground,
    blockers: (unit, from, to, shares) => {
      const moving = riders(unit);
      const met = new Set<string>();
      let fixed = false;
      for (const rider of moving) {
        const going = goingOf(unit, rider, from, to);
        const key = keyFor(going, shares);
        const box = way(key, going);
        if (!fixed) fixed = !remembered(rider, ground.fixed, key, () => isClear(going, fixedNear(box), [], shares));
        for (const other of ground.units)
          if (!moving.includes(other) && !met.has(other.id) && meetsOne(going, key, box, other, shares))
            met.add(other.id);
      }
      return { units: [...met], fixed };
    },
    meets: (unit, other, from, to, shares) =>
      riders(unit).some((rider) => {
        const going = goingOf(unit, rider, from, to);
        const key = keyFor(going, shares);
        return meetsOne(going, key, way(key, going), other, shares);
      }),
    pairs: () => {
      const near: (readonly [Unit, Unit])[] = [];
      const seen = (i: number, j: number): void => {
        const [a, b] = [ground.units[i], ground.units[j]];
        if (a && b && !chain(a).includes(b) && !chain(b).includes(a)) near.push([a, b]);
      };
      nearPairs(ground.units.map(whole), 0, seen);
      return near;
    },
  };
};
