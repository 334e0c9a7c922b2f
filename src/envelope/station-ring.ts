import {
  bad,
  distance,
  good,
  type Problem,
  type Result,
  ROUNDING_MM,
  ROUNDING_MM2,
  segmentsMeet,
  selfCrossing,
  signedArea,
  type Vec2,
} from '../base/index.ts';
import type { Station } from '../design/index.ts';

/** One side of a station as [y, z] from the floor to the roof, without repeated points. */
export type SideChain = readonly Vec2[];

export interface StationSides {
  readonly right: SideChain;
  readonly left: SideChain;
}

/** Fewest points that make a side: floor, somewhere on the wall, roof. */
const FEWEST_POINTS = 3;

const apart = (a: Vec2, b: Vec2): boolean => distance([a[0], a[1], 0], [b[0], b[1], 0]) > ROUNDING_MM;

const withoutRepeats = (points: readonly Vec2[]): Vec2[] => {
  const kept: Vec2[] = [];
  for (const point of points) {
    const last = kept.at(-1);
    if (!last || apart(last, point)) kept.push(point);
  }
  return kept;
};

const chainOf = (points: Station['left'], sign: 1 | -1): SideChain =>
  withoutRepeats(points.map(([out, up]): Vec2 => [sign * out, up]));

/**
 * The closed ring of a station: up the vehicle's right side, across the roof, down the left side, back across the
 * floor; anticlockwise for someone who stands at the rear and looks forward. Corners where both sides meet on the
 * centre line are kept once.
 */
export const ringOf = ({ right, left }: StationSides): readonly Vec2[] => {
  const ring = withoutRepeats([...right, ...left.toReversed()]);
  const [first, last] = [ring[0], ring.at(-1)];
  return first && last && ring.length > 1 && !apart(first, last) ? ring.slice(0, -1) : ring;
};

/** Positive for a ring that runs anticlockwise seen from the rear: there y points to the left of the picture. */
export const areaSeenFromRear = (ring: readonly Vec2[]): number => -signedArea(ring);

/** True when the path turns straight back on itself at b. Exact (robust predicates). */
const foldsBack = (a: Vec2, b: Vec2, c: Vec2): boolean => segmentsMeet(a, b, c, c) || segmentsMeet(b, c, a, a);

const chainCrosses = (chain: SideChain): boolean => {
  for (let i = 0; i + 1 < chain.length; i++)
    for (let j = i + 1; j + 1 < chain.length; j++) {
      const [a, b, c, d] = [chain[i], chain[i + 1], chain[j], chain[j + 1]];
      if (a && b && c && d && (j === i + 1 ? foldsBack(a, b, d) : segmentsMeet(a, b, c, d))) return true;
    }
  return false;
};

const ringCrosses = (ring: readonly Vec2[]): boolean =>
  selfCrossing(ring) !== null ||
  ring.some((corner, i) => {
    const before = ring.at(i - 1) ?? corner;
    const next = ring[(i + 1) % ring.length] ?? corner;
    return foldsBack(before, corner, next);
  });

const sideProblems = (chain: SideChain, at: string): readonly Problem[] => {
  if (chain.length < FEWEST_POINTS)
    return [{ at, code: 'too-few-points', expected: `at least ${FEWEST_POINTS} points`, got: String(chain.length) }];
  const [floor, roof] = [chain[0], chain.at(-1)];
  if (floor && roof && roof[1] <= floor[1])
    return [{ at, code: 'roof-below-floor', expected: 'points from the floor up to the roof', got: `${roof[1]} mm` }];
  if (chainCrosses(chain)) return [{ at, code: 'self-crossing', expected: 'a line that does not cross itself' }];
  return [];
};

/**
 * The two sides of a station as coordinates, or what is wrong with them, each fault with its place in the document:
 * too few points, a side that runs from the roof down, a side that crosses itself, sides that cross each other or
 * change places, a section without area.
 */
export const readStation = (station: Station, at: string): Result<StationSides> => {
  const sides: StationSides = { right: chainOf(station.right, -1), left: chainOf(station.left, 1) };
  const problems = [...sideProblems(sides.left, `${at}.left`), ...sideProblems(sides.right, `${at}.right`)];
  if (problems.length > 0) return bad(problems);
  const ring = ringOf(sides);
  if (Math.abs(signedArea(ring)) <= ROUNDING_MM2)
    return bad([{ at, code: 'no-area', expected: 'a section with an area', got: '0 mm²' }]);
  if (ringCrosses(ring) || areaSeenFromRear(ring) < 0)
    return bad([{ at, code: 'sides-cross', expected: 'the left side to the left of the right side' }]);
  return good(sides);
};
