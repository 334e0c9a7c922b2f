import { ROUNDING_MM, type Vec3 } from '../base/index.ts';
import { newSimplex, type Simplex, setCorner, solveSimplex } from './simplex.ts';

/** How far the upper and the lower bound of a distance may stand apart when the search ends: well within rounding. */
const BOUNDS_APART_MM = ROUNDING_MM / 8;

/** Small hulls end in four to eight rounds; a search that has not ended by then is running on rounding noise. */
const MOST_ROUNDS = 64;

/**
 * How a search ended: `apart` with the distance proven from both sides, `far` beyond the limit asked for, `meeting`
 * within rounding of contact or overlapping, `unsure` when rounding kept the bounds apart.
 */
export type Ending = 'apart' | 'far' | 'meeting' | 'unsure';

/** The one simplex of this module: a search never calls another, and making it anew would cost as much as a search. */
const simplex: Simplex = newSimplex();

/** Index of the vertex furthest against (x, y, z). Hot loop. */
const lowest = (vertices: readonly Vec3[], x: number, y: number, z: number): number => {
  let least = Infinity;
  let index = 0;
  for (let i = 0; i < vertices.length; i++) {
    const vertex = vertices[i];
    if (vertex === undefined) continue;
    const height = vertex[0] * x + vertex[1] * y + vertex[2] * z;
    if (height < least) {
      least = height;
      index = i;
    }
  }
  return index;
};

const isCorner = (a: Vec3, b: Vec3): boolean => {
  for (let i = 0; i < simplex.count; i++) {
    const corner = simplex.corners[i as 0 | 1 | 2 | 3];
    if (corner.a === a && corner.b === b) return true;
  }
  return false;
};

/**
 * Distance between the hulls of two point sets by Gilbert, Johnson and Keerthi's walk over their difference, in
 * doubles. The blend held in the simplex is always a point of the difference, so its length is an upper bound; the
 * support plane across it is a lower bound; the walk ends when the two agree. `far` when the lower bound passes
 * `limit`. Hot loop: no allocation.
 */
export const findNearest = (as: readonly Vec3[], bs: readonly Vec3[], limit: number): Ending => {
  const [firstA] = as;
  const [firstB] = bs;
  if (firstA === undefined || firstB === undefined) throw new RangeError('findNearest: a shape without vertices');
  simplex.holdsOrigin = false;
  simplex.count = 1;
  setCorner(simplex.corners[0], firstA, firstB);
  solveSimplex(simplex);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const { x, y, z } = simplex;
    const size = Math.sqrt(x * x + y * y + z * z);
    if (size <= ROUNDING_MM) return 'meeting';
    const a = as[lowest(as, x, y, z)];
    const b = bs[lowest(bs, -x, -y, -z)];
    if (a === undefined || b === undefined) return 'unsure';
    const floor = ((a[0] - b[0]) * x + (a[1] - b[1]) * y + (a[2] - b[2]) * z) / size;
    if (size - floor <= BOUNDS_APART_MM) return size > limit ? 'far' : 'apart';
    if (floor > limit) return 'far';
    if (simplex.count === 4 || isCorner(a, b)) return 'unsure';
    setCorner(simplex.corners[simplex.count as 0 | 1 | 2 | 3], a, b);
    simplex.count += 1;
    solveSimplex(simplex);
    if (simplex.holdsOrigin) return 'meeting';
  }
  return 'unsure';
};

const blend = (side: 'a' | 'b'): Vec3 => {
  let x = 0;
  let y = 0;
  let z = 0;
  for (let i = 0; i < simplex.count; i++) {
    const corner = simplex.corners[i as 0 | 1 | 2 | 3];
    const vertex = corner[side];
    x += vertex[0] * corner.share;
    y += vertex[1] * corner.share;
    z += vertex[2] * corner.share;
  }
  return [x, y, z];
};

/** Nearest points of the search that has just ended `apart`: a point of `as`, then one of `bs`. */
export const nearestPair = (): readonly [Vec3, Vec3] => [blend('a'), blend('b')];

/** Distance of the search that has just ended `apart`. */
export const nearestDistance = (): number =>
  Math.sqrt(simplex.x * simplex.x + simplex.y * simplex.y + simplex.z * simplex.z);

/**
 * Unit vector from `as` to `bs` of the search that has just ended `apart`. Taken from the difference itself: the two
 * nearest points, far from the origin and close together, would give it only to their rounding.
 */
export const nearestDirection = (): Vec3 => {
  const size = nearestDistance();
  return [-simplex.x / size, -simplex.y / size, -simplex.z / size];
};
