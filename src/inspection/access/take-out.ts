import {
  add,
  after,
  type Box,
  boxesMeet,
  boxUnion,
  dot,
  ORIGIN,
  type Pose,
  placed,
  ROUNDING_MM,
  ROUNDING_RAD,
  scale,
  turned,
  type Vec3,
} from '../../base/index.ts';
import {
  boxShape,
  type ConvexShape,
  fillsBox,
  gapWithin,
  type Motion,
  shapeAt,
  shapeBox,
  TRAVEL_TOLERANCE_MM,
  travelIsClear,
} from '../../bodies/index.ts';
import type { FitOut } from '../../fitout/index.ts';
import { chainOf, chainPose, type Ground, type Shares, type Solid, type Unit } from './units.ts';

export type Room = FitOut['rooms'][number];

/** An item of gear that the order looks at, with the room it lies in. */
export interface Stowed {
  readonly gear: string;
  readonly opening: string;
  readonly room: Room;
  readonly solid: Solid;
  readonly rides: string | null;
}

/** What is in the way of an item: movers by id, other items by node, and the name of what never moves. */
export interface InItsWay {
  readonly units: readonly string[];
  readonly gear: readonly string[];
  readonly fixed: string | null;
}

interface Leg {
  readonly along: Vec3;
  readonly mm: number;
}

export interface TakeGround {
  readonly ground: Ground;
  /** A direction's farthest point of the closed vehicle: past it an item is out in the open. */
  readonly outside: (towards: Vec3) => number;
  readonly stance: (towards: Vec3) => Stance;
  /** How far an item comes straight out of its bracket first, by its opening. */
  readonly strokes: ReadonlyMap<string, number>;
}

const UP: Vec3 = [0, 0, 1];

const reachAlong = ({ vertices, radius }: ConvexShape, along: Vec3): readonly [number, number] => {
  let [low, high] = [Infinity, -Infinity];
  for (const vertex of vertices) {
    const at = dot(vertex, along);
    low = Math.min(low, at);
    high = Math.max(high, at);
  }
  return [low - radius, high + radius];
};

/** A solid where it stands now. */
export interface Placed {
  readonly solid: Solid;
  readonly shape: ConvexShape;
  readonly box: Box;
  /** True where the shape fills its box, so that its slide along an axis fills the box around both ends. */
  readonly isBox: boolean;
  readonly unit: string | null;
}

/** How deep two boxes stand in each other: the least of the three overlaps, negative where they are apart. */
const boxDepth = (a: Box, b: Box): number =>
  Math.min(
    Math.min(a.max[0], b.max[0]) - Math.max(a.min[0], b.min[0]),
    Math.min(a.max[1], b.max[1]) - Math.max(a.min[1], b.min[1]),
    Math.min(a.max[2], b.max[2]) - Math.max(a.min[2], b.min[2]),
  );

const placedOf = (ground: Ground, unit: Unit | null, solids: readonly Solid[], shares: Shares): readonly Placed[] => {
  const chain = unit ? chainOf(ground, unit.id) : [];
  const still = chain.every(({ id }) => (shares[id] ?? 0) === 0);
  const pose = still ? null : chainPose(chain, shares);
  return solids.map((solid) => {
    const shape = pose === null ? solid.shape : shapeAt(solid.shape, pose);
    const box = pose === null ? solid.box : shapeBox(shape);
    return { solid, shape, box, isBox: fillsBox(shape, box), unit: unit?.id ?? null };
  });
};

/** Everything as it stands, made once for each set of shares. */
export const createStands = (ground: Ground): ((shares: Shares) => readonly Placed[]) => {
  const units = new Map<string, readonly Placed[]>();
  const fixed = placedOf(ground, null, ground.fixed, {});
  const whole = new Map<string, readonly Placed[]>();
  return (shares) => {
    const key = ground.units.map(({ id }) => shares[id] ?? 0).join(',');
    const known = whole.get(key);
    if (known) return known;
    const all = [
      ...fixed,
      ...ground.units.flatMap((unit) => {
        const own = `${unit.id} ${chainOf(ground, unit.id)
          .map(({ id }) => shares[id] ?? 0)
          .join(',')}`;
        const stands = units.get(own) ?? placedOf(ground, unit, unit.solids, shares);
        units.set(own, stands);
        return stands;
      }),
    ];
    whole.set(key, all);
    return all;
  };
};

/** Heights that the item is lifted by before it comes out where it cannot come straight: over a lip, over other gear before it, to the top of its room. */
const liftsOf = (stowed: Stowed, front: Vec3, item: ConvexShape, near: readonly Placed[]): readonly number[] => {
  const [bottom, top] = reachAlong(item, UP);
  const [, face] = reachAlong(item, front);
  const before = near.filter(
    ({ unit, solid, shape }) =>
      (solid.origin === stowed.opening || (unit !== null && unit === stowed.rides)) &&
      solid !== stowed.solid &&
      reachAlong(shape, front)[1] > face &&
      reachAlong(shape, UP)[0] < top,
  );
  const over = (list: readonly Placed[]): number =>
    Math.max(0, ...list.map(({ shape }) => reachAlong(shape, UP)[1] - bottom));
  const spare = Math.max(0, stowed.room.size[2] - (top - bottom));
  const lifts = [over(before.filter(({ solid }) => solid.kind !== 'gear')), spare, over(before)];
  return [...new Set(lifts)].filter((mm) => mm > ROUNDING_MM);
};

const isAlongAxis = (along: Vec3): boolean => along.filter((share) => Math.abs(share) <= ROUNDING_RAD).length === 2;

/** As a certified travel has it: what falls this little short is let pass. */
const MEETS_MM = TRAVEL_TOLERANCE_MM / 2;

const isClearOf = (leg: Leg, shape: ConvexShape, swept: ConvexShape | null, other: ConvexShape): boolean =>
  swept ? gapWithin(swept, other, -MEETS_MM) === null : travelIsClear(slide(leg), [shape], [other], 0);

const slide = ({ along, mm }: Leg): Motion => ({ kind: 'slide', along, fromMm: 0, toMm: mm });

const moved = (shape: ConvexShape, { along, mm }: Leg): ConvexShape => ({
  ...shape,
  vertices: shape.vertices.map((vertex) => add(vertex, scale(along, mm))),
});

const sweptBox = (shape: ConvexShape, leg: Leg): Box => boxUnion(shapeBox(shape), shapeBox(moved(shape, leg)));

/** What an item meets on one path, in the way or not; a path that something fixed blocks is of no use. */
const meetsOn = (
  stowed: Stowed,
  item: ConvexShape,
  legs: readonly Leg[],
  stands: readonly Placed[],
  removed: ReadonlySet<string>,
): InItsWay => {
  const [units, gear] = [new Set<string>(), new Set<string>()];
  const squareItem = fillsBox(item, shapeBox(item));
  let shape = item;
  for (const leg of legs) {
    if (leg.mm <= ROUNDING_MM) continue;
    const way = sweptBox(shape, leg);
    // The slide of a box along an axis is a box, so one gap is exact for all of it.
    const swept = squareItem && isAlongAxis(leg.along) ? boxShape(way) : null;
    for (const { solid, shape: other, box, isBox, unit } of stands) {
      const isGear = solid.kind === 'gear';
      if (solid === stowed.solid || !boxesMeet(way, box)) continue;
      if (isGear && (removed.has(solid.origin) || gear.has(solid.origin))) continue;
      // What holds the item in its place is undone before it is taken, and what it stands into is judged at rest.
      if (solid.origin === stowed.opening && solid.kind === 'hardware') continue;
      if (!isGear && unit !== null && unit !== stowed.rides && units.has(unit)) continue;
      const clear = isBox && swept ? boxDepth(way, box) <= MEETS_MM : isClearOf(leg, shape, swept, other);
      if (clear) continue;
      if (gapWithin(item, other, -ROUNDING_MM) !== null) continue;
      if (isGear) gear.add(solid.origin);
      else if (unit !== null && unit !== stowed.rides) units.add(unit);
      else return { units: [], gear: [], fixed: solid.name };
    }
    shape = moved(shape, leg);
  }
  return { units: [...units], gear: [...gear], fixed: null };
};

const isFree = ({ units, gear, fixed }: InItsWay): boolean => units.length + gear.length === 0 && fixed === null;

/**
 * The way in which a person would take the item: straight out through the face of its room, or lifted first and then
 * out, until it is in the open. A bracket is left straight out by its stroke before anything is lifted.
 */
const pathWith = (take: TakeGround, stowed: Stowed, pose: Pose, item: ConvexShape, front: Vec3) => {
  const [low] = reachAlong(item, front);
  const face = dot(placed(after(pose, stowed.room.pose), ORIGIN), front);
  const past = take.stance(front) === 'outside' ? take.outside(front) : -Infinity;
  const outMm = Math.max(0, face - low, past - low);
  const stroke = stowed.room.keeps === 'bracket' ? (take.strokes.get(stowed.opening) ?? 0) : 0;
  return (mm: number): readonly Leg[] => [
    { along: front, mm: stroke },
    { along: UP, mm },
    { along: front, mm: Math.max(0, outMm - stroke) },
  ];
};

/** The closures of the vehicle while all of them are shut; none as soon as one of them is open. */
const shutClosures = ({ units }: Ground, shares: Shares): readonly string[] => {
  const closures = units.filter(({ closure, carriedBy }) => closure && carriedBy === null);
  return closures.some(({ id }) => (shares[id] ?? 0) > 0) ? [] : closures.map(({ id }) => id);
};

/**
 * What keeps an item from being taken out into the open while everything stands as given, one entry for each way out
 * that was tried: the first free one alone, where there is one.
 */
export const inItsWay = (
  take: TakeGround,
  stowed: Stowed,
  shares: Shares,
  stands: readonly Placed[],
  removed: ReadonlySet<string>,
): readonly InItsWay[] => {
  const pose = chainPose(chainOf(take.ground, stowed.rides), shares);
  const item = shapeAt(stowed.solid.shape, pose);
  const front = turned(pose, turned(stowed.room.pose, [0, -1, 0]));
  // Nobody stands in the aisle of a closed vehicle: any one of its closures lets a person in.
  const shut = take.stance(front) === 'aisle' ? shutClosures(take.ground, shares) : [];
  if (shut.length > 0) return [{ units: shut, gear: [], fixed: null }];
  const path = pathWith(take, stowed, pose, item, front);
  const straight = meetsOn(stowed, item, path(0), stands, removed);
  if (isFree(straight)) return [straight];
  const ways = [straight];
  for (const mm of liftsOf(stowed, front, item, stands)) {
    const way = meetsOn(stowed, item, path(mm), stands, removed);
    if (isFree(way)) return [way];
    ways.push(way);
  }
  return ways;
};

export const freeToTake = (ways: readonly InItsWay[]): boolean => ways.some(isFree);

/** From this share of a direction on a face looks that way. */
const LOOKS = 0.5;

/** Where who takes gear out of a face stands: outside the vehicle, in its aisle, or on the seats before it. */
export type Stance = 'outside' | 'aisle' | 'seats';

const SIDEWAYS = { left: [0, 1, 0], right: [0, -1, 0] } as const;

/**
 * A face that looks forward looks at the seats, and who takes gear there sits before it. One that looks to a side
 * without a door of the vehicle on that side looks at the aisle, and who takes gear there has climbed in.
 */
export const stanceOf = (doors: ReadonlySet<string>): ((towards: Vec3) => Stance) => {
  return (towards) => {
    if (towards[0] > LOOKS) return 'seats';
    const side = (['left', 'right'] as const).find((own) => dot(SIDEWAYS[own], towards) > LOOKS);
    return side === undefined || doors.has(side) ? 'outside' : 'aisle';
  };
};

/** How far the closed vehicle reaches along a direction: an item past it is in the open. */
export const outsideOf = (shapes: readonly ConvexShape[]): ((towards: Vec3) => number) => {
  const known = new Map<string, number>();
  return (towards) => {
    const key = towards.join(' ');
    const far = known.get(key) ?? Math.max(...shapes.map((shape) => reachAlong(shape, towards)[1]));
    known.set(key, far);
    return far;
  };
};
