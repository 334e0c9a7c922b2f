import {
  cross,
  distanceToSegment,
  dot,
  length,
  ROUNDING_MM,
  scale,
  subtract,
  type Vec2,
  type Vec3,
} from '../base/index.ts';
import { type Shell, shellTriangles, type Triangle } from '../bodies/index.ts';
import type { SectionPoint, SurveyStation } from './read-survey.ts';

/** One standard deviation of a point along a direction: nᵀ C n. */
export const sigmaAlong = ({ covariance: [xx, xy, xz, yy, yz, zz] }: SectionPoint, [x, y, z]: Vec3): number =>
  Math.sqrt(Math.max(0, xx * x * x + yy * y * y + zz * z * z + 2 * (xy * x * y + xz * x * z + yz * y * z)));

const ringOf = ({ left, right }: SurveyStation): readonly SectionPoint[] => [...right, ...left.toReversed()];

/** The surveyed points that a corner of the skin rests on: itself, or the two ends of the line that it lies on. */
const restsOn = (ring: readonly SectionPoint[], corner: Vec2): readonly SectionPoint[] => {
  const own = ring.find(({ at }) => Math.hypot(at[0] - corner[0], at[1] - corner[1]) <= ROUNDING_MM);
  if (own) return [own];
  let best: readonly SectionPoint[] = [];
  let least = Infinity;
  ring.forEach((point, i) => {
    const next = ring[(i + 1) % ring.length] ?? point;
    const off = distanceToSegment(corner, point.at, next.at);
    if (off < least) [least, best] = [off, [point, next]];
  });
  return best;
};

const normalOf = ([a, b, c]: Triangle): Vec3 => {
  const normal = cross(subtract(b, a), subtract(c, a));
  const size = length(normal);
  return size > 0 ? scale(normal, 1 / size) : [0, 0, 1];
};

/**
 * One standard deviation of every triangle of the skin, square to itself: of the three corners the worst, since a face
 * is nowhere better known than where it was measured, with the spread of one vehicle against the next laid over it.
 */
export const faceSigmas = (
  skin: Shell,
  stations: readonly SurveyStation[],
  vehicleSigma: number,
): readonly number[] => {
  const byDepth = new Map(stations.map((station) => [station.xMm, ringOf(station)]));
  const known = new Map<string, readonly SectionPoint[]>();
  const under = (corner: Vec3): readonly SectionPoint[] => {
    const key = corner.join(' ');
    const found = known.get(key) ?? restsOn(byDepth.get(corner[0]) ?? [], [corner[1], corner[2]]);
    known.set(key, found);
    return found;
  };
  return shellTriangles(skin).map((triangle) => {
    const normal = normalOf(triangle);
    const worst = triangle.flatMap(under).reduce((most, point) => Math.max(most, sigmaAlong(point, normal)), 0);
    return Math.hypot(worst, vehicleSigma);
  });
};

/** True when the point lies on the triangle's side of the edge, or the triangle is too thin to tell. */
const toTriangle = (p: Vec3, triangle: Triangle): number => {
  const [a, b, c] = triangle;
  const n = normalOf(triangle);
  const inside = (
    [
      [a, b],
      [b, c],
      [c, a],
    ] as const
  ).every(([from, to]) => dot(cross(subtract(to, from), subtract(p, from)), n) >= 0);
  if (inside) return Math.abs(dot(subtract(p, a), n));
  return Math.min(segmentDistance(p, a, b), segmentDistance(p, b, c), segmentDistance(p, c, a));
};

const segmentDistance = (p: Vec3, a: Vec3, b: Vec3): number => {
  const along = subtract(b, a);
  const square = dot(along, along);
  const t = square === 0 ? 0 : Math.max(0, Math.min(1, dot(subtract(p, a), along) / square));
  return length(subtract(p, [a[0] + t * along[0], a[1] + t * along[1], a[2] + t * along[2]]));
};

/** One standard deviation of the skin where it is nearest to the point; of faces that meet there the worst. */
export const skinSigmaAt = (skin: Shell, sigmas: readonly number[], point: Vec3): number => {
  let least = Infinity;
  let worst = 0;
  shellTriangles(skin).forEach((triangle, i) => {
    const off = toTriangle(point, triangle);
    const own = sigmas[i] ?? 0;
    if (off < least - ROUNDING_MM) [least, worst] = [off, own];
    else if (off <= least + ROUNDING_MM) worst = Math.max(worst, own);
  });
  return worst;
};
