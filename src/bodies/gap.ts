import { add, ROUNDING_MM, scale, subtract, type Vec3 } from '../base/index.ts';
import { nearestFeatures } from './features.ts';
import { findNearest, nearestDirection, nearestDistance, nearestPair } from './nearest.ts';
import { type Overlap, overlapDepth } from './overlap.ts';
import type { ConvexShape } from './shapes.ts';

/**
 * How two bodies stand to each other. `distance` > 0: apart, and `from` (on the first) and `to` (on the second) are
 * nearest points. 0: touching within rounding, which is not a hit. < 0: overlapping by that depth; moving the second
 * by `direction` × depth parts them, and no shorter move does. Always to = from + direction × distance.
 */
export interface Gap {
  readonly distance: number;
  readonly from: Vec3;
  readonly to: Vec3;
  /** Unit vector from the first towards the second. */
  readonly direction: Vec3;
}

/** The trial shift that puts overlapping bodies apart to find a pair of facing points; any clear distance serves. */
const TRIAL_APART_MM = 1;

const settled = (distance: number): number => (Math.abs(distance) <= ROUNDING_MM ? 0 : distance);

/** Points of the cores moved out to the surfaces of the grown shapes. */
const grown = (a: ConvexShape, b: ConvexShape, core: number, from: Vec3, direction: Vec3): Gap => {
  const distance = settled(core - a.radius - b.radius);
  const start = add(from, scale(direction, a.radius));
  return { distance, from: start, to: add(start, scale(direction, distance)), direction };
};

/**
 * Rounding kept the walk from proving its answer: look at every pair of features instead. Where a plane across
 * `direction` parts the bodies by as much, that direction is right; two points so close together tell none.
 */
const byFeatures = (a: ConvexShape, b: ConvexShape, { depth, direction }: Overlap): Gap | null => {
  const { square, from, to } = nearestFeatures(a, b);
  const core = Math.sqrt(square);
  if (core <= ROUNDING_MM) return null;
  const flat = core + depth <= ROUNDING_MM;
  return grown(a, b, core, from, flat ? direction : scale(subtract(to, from), 1 / core));
};

/** How far and which way, without the points. */
export type Separation = Pick<Gap, 'distance' | 'direction'>;

/** Bodies that touch or overlap; the answer of byFeatures where it turns out that they stand apart after all. */
const meeting = (a: ConvexShape, b: ConvexShape): Separation | Gap => {
  const overlap = overlapDepth(a, b);
  const found = overlap.depth < -ROUNDING_MM ? byFeatures(a, b, overlap) : null;
  return found ?? { distance: settled(-overlap.depth - a.radius - b.radius), direction: overlap.direction };
};

/** The facing points of bodies that touch or overlap: found with the second moved clear, then moved back. */
const facing = (a: ConvexShape, b: ConvexShape, { distance, direction }: Separation): Gap => {
  const core = distance + a.radius + b.radius;
  const move = scale(direction, TRIAL_APART_MM - core);
  const moved: ConvexShape = { ...b, vertices: b.vertices.map((vertex) => add(vertex, move)) };
  const ending = findNearest(a.vertices, moved.vertices, Infinity);
  const [from] = ending === 'apart' ? nearestPair() : [nearestFeatures(a, moved).from];
  return grown(a, b, core, from, direction);
};

/** Null beyond the limit; with points wherever they come for nothing. */
const separationOrNull = (a: ConvexShape, b: ConvexShape, limit: number): Separation | Gap | null => {
  const ending = findNearest(a.vertices, b.vertices, limit + a.radius + b.radius);
  if (ending === 'far') return null;
  if (ending !== 'apart') return meeting(a, b);
  return grown(a, b, nearestDistance(), nearestPair()[0], nearestDirection());
};

const gapOrNull = (a: ConvexShape, b: ConvexShape, limit: number): Gap | null => {
  const found = separationOrNull(a, b, limit);
  return found === null || 'from' in found ? found : facing(a, b, found);
};

/** As gapBetween, without the points: a third of the time where bodies overlap. */
export const separationOf = (a: ConvexShape, b: ConvexShape): Separation =>
  separationOrNull(a, b, Infinity) ?? meeting(a, b);

/** The gap between two shapes standing in one frame, exact to ROUNDING_MM. Throws RangeError on an empty shape. */
export const gapBetween = (a: ConvexShape, b: ConvexShape): Gap =>
  gapOrNull(a, b, Infinity) ?? facing(a, b, meeting(a, b));

/** Squared gap of the boxes around two shapes, radii left out. Hot loop: no allocation. */
const boxGapSquare = (as: readonly Vec3[], bs: readonly Vec3[]): number => {
  let square = 0;
  for (let axis = 0; axis < 3; axis++) {
    const k = axis as 0 | 1 | 2;
    let lowA = Infinity;
    let highA = -Infinity;
    let lowB = Infinity;
    let highB = -Infinity;
    for (let i = 0; i < as.length; i++) {
      const height = as[i]?.[k] ?? 0;
      if (height < lowA) lowA = height;
      if (height > highA) highA = height;
    }
    for (let i = 0; i < bs.length; i++) {
      const height = bs[i]?.[k] ?? 0;
      if (height < lowB) lowB = height;
      if (height > highB) highB = height;
    }
    const between = Math.max(lowA - highB, lowB - highA, 0);
    square += between * between;
  }
  return square;
};

const boxesBeyond = (a: ConvexShape, b: ConvexShape, limit: number): boolean => {
  const reach = limit + a.radius + b.radius;
  return reach >= 0 && boxGapSquare(a.vertices, b.vertices) > reach * reach;
};

/** The gap where it is at most `limit`, otherwise null: told by the boxes around the shapes where they suffice. */
export const gapWithin = (a: ConvexShape, b: ConvexShape, limit: number): Gap | null => {
  if (boxesBeyond(a, b, limit)) return null;
  const found = gapOrNull(a, b, limit);
  return found !== null && found.distance <= limit ? found : null;
};

/** The distance of gapBetween where it is at most `limit`, otherwise Infinity. */
export const distanceWithin = (a: ConvexShape, b: ConvexShape, limit: number): number => {
  if (boxesBeyond(a, b, limit)) return Infinity;
  const distance = separationOrNull(a, b, limit)?.distance ?? Infinity;
  return distance <= limit ? distance : Infinity;
};
