import { type Box, boxesMeet, boxGrown, boxUnion, ROUNDING_MM } from '../../base/index.ts';
import { gapWithin, shapeAt, shapeBox, travelBox, travelIsClear } from '../../bodies/index.ts';
import { chainOf, chainPose, type Ground, heldAt, motionBetween, type Shares, type Solid, type Unit } from './units.ts';

/** What is in the way of a move: units by id; `fixed` where something that never moves is. */
export interface Blockers {
  readonly units: readonly string[];
  readonly fixed: boolean;
}

export const CLEAR: Blockers = { units: [], fixed: false };

/**
 * What a moving solid is not judged against: hardware of its own node, which runs in itself, and what it touches or
 * overlaps where both are stowed, which the rules at rest judge.
 */
const builtAgainst = (moving: Solid, standing: Solid): boolean =>
  (moving.origin === standing.origin && (moving.kind === 'hardware' || standing.kind === 'hardware')) ||
  (boxesMeet(boxGrown(moving.box, ROUNDING_MM), standing.box) &&
    gapWithin(moving.shape, standing.shape, ROUNDING_MM) !== null);

/** Of what stands, what is judged: nothing that any of the moving solids is built against. */
const judged = (moving: readonly Solid[], standing: readonly Solid[]): readonly Solid[] =>
  standing.filter((solid) => !moving.some((own) => builtAgainst(own, solid)));

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
  return travelIsClear(
    motionBetween(unit, from, to),
    solidsAt(rider.solids, inner, shares),
    solidsAt(against, chain, shares),
    0,
    carriers.map((carrier) => heldAt(carrier, shares)),
  );
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
}

/** Boxes of units in places they were seen in, and of ways, made once. */
export const createLanes = (ground: Ground): Lanes => {
  const chains = new Map(ground.units.map((unit) => [unit.id, chainOf(ground, unit.id)]));
  const chain = (unit: Unit): readonly Unit[] => chains.get(unit.id) ?? [unit];
  const riders = (unit: Unit): readonly Unit[] => ground.units.filter((own) => chain(own).includes(unit));
  const placeBoxes = new Map<string, Box | null>();
  const placeBox = (unit: Unit, shares: Shares): Box | null => {
    const key = `${unit.id} ${sharesKey(chain(unit), shares)}`;
    const known = placeBoxes.get(key);
    if (known !== undefined) return known;
    const shapes = solidsAt(unit.solids, chain(unit), shares);
    const box = shapes.length === 0 ? null : shapes.map(shapeBox).reduce(boxUnion);
    placeBoxes.set(key, box);
    return box;
  };
  const wayBoxes = new Map<string, Box | null>();
  const goingOf = (unit: Unit, rider: Unit, from: number, to: number): Going => {
    const whole = chain(rider);
    const at = whole.indexOf(unit);
    return { unit, rider, from, to, carriers: whole.slice(0, at), inner: whole.slice(at + 1) };
  };
  const fixedNear = (box: Box | null): readonly Solid[] =>
    box === null ? ground.fixed : ground.fixed.filter((solid) => boxesMeet(box, solid.box));
  return {
    ground,
    blockers: (unit, from, to, shares) => {
      const moving = riders(unit);
      const met = new Set<string>();
      let fixed = false;
      for (const rider of moving) {
        const going = goingOf(unit, rider, from, to);
        const way = `${unit.id} ${rider.id} ${from} ${to} ${sharesKey(chain(rider), { ...shares, [unit.id]: 0 })}`;
        const known = wayBoxes.get(way);
        const box = known === undefined ? wayBox(going) : known;
        if (known === undefined) wayBoxes.set(way, box);
        if (!fixed) fixed = !remembered(rider, ground.fixed, way, () => isClear(going, fixedNear(box), [], shares));
        for (const other of ground.units) {
          if (moving.includes(other) || met.has(other.id)) continue;
          const place = placeBox(other, shares);
          if (place === null || (box !== null && !boxesMeet(box, place))) continue;
          const key = `${way} | ${sharesKey(chain(other), shares)}`;
          if (!remembered(rider, other, key, () => isClear(going, other.solids, chain(other), shares)))
            met.add(other.id);
        }
      }
      return { units: [...met], fixed };
    },
  };
};

/** Where a solid stands when its riders stand as given. */
export const solidPlaced = (ground: Ground, solid: Solid, rides: string | null, shares: Shares) => {
  const chain = chainOf(ground, rides);
  if (chain.every(({ id }) => (shares[id] ?? 0) === 0)) return solid.shape;
  return shapeAt(solid.shape, chainPose(chain, shares));
};
