import { add, between, cross, dot, length, ROUNDING_MM, scale, subtract, unit, type Vec3 } from '../base/index.ts';
import type { ConvexShape } from './shapes.ts';
import type { Triangle } from './shell.ts';
import { topologyOf, vertexOf } from './topology.ts';

/** A half space: points with normal · p ≤ offset. */
interface Bound {
  readonly normal: Vec3;
  readonly offset: number;
}

const boundsOf = (shape: ConvexShape): readonly Bound[] => {
  if (shape.faces.length === 0) return [];
  const bounds: Bound[] = [];
  for (const [i, j, k] of topologyOf(shape).triangles) {
    const hub = vertexOf(shape, i);
    const normal = cross(subtract(vertexOf(shape, j), hub), subtract(vertexOf(shape, k), hub));
    if (!(length(normal) > ROUNDING_MM)) continue;
    const along = unit(normal);
    bounds.push({ normal: along, offset: dot(along, hub) });
  }
  return bounds;
};

const cut = (ring: readonly Vec3[], { normal, offset }: Bound): readonly Vec3[] =>
  ring.flatMap((point, i) => {
    const next = ring[(i + 1) % ring.length] ?? point;
    const here = dot(normal, point) - offset;
    const there = dot(normal, next) - offset;
    const kept = here <= 0 ? [point] : [];
    return here < 0 === there < 0 || here === 0 || there === 0
      ? kept
      : [...kept, between(point, next, here / (here - there))];
  });

/** Where the line from `point` along `way` leaves the shape. */
const leaving = (point: Vec3, way: Vec3, bounds: readonly Bound[]): Vec3 => {
  let far = Infinity;
  for (const { normal, offset } of bounds) {
    const speed = dot(normal, way);
    if (speed > ROUNDING_MM) far = Math.min(far, (offset - dot(normal, point)) / speed);
  }
  return Number.isFinite(far) && far > 0 ? add(point, scale(way, far)) : point;
};

const meanOf = (ring: readonly Vec3[]): Vec3 => scale(ring.reduce(add), 1 / ring.length);

/** Points of the body behind a triangle of skin that enters it: straight out from what the body holds of the skin. */
const behindSkin = (triangle: Triangle, bounds: readonly Bound[]): readonly Vec3[] => {
  const [a, b, c] = triangle;
  const normal = cross(subtract(b, a), subtract(c, a));
  if (bounds.length === 0 || !(length(normal) > ROUNDING_MM)) return [];
  const ring = bounds.reduce<readonly Vec3[]>(cut, triangle);
  if (ring.length < 3) return [];
  const outward = unit(normal);
  return [...ring, meanOf(ring)].map((point) => leaving(point, outward, bounds));
};

/** Share of the segment at which it passes the plane of the triangle, or null where it does not. */
const passing = (from: Vec3, to: Vec3, [a, b, c]: Triangle): number | null => {
  const normal = cross(subtract(b, a), subtract(c, a));
  const here = dot(normal, subtract(from, a));
  const there = dot(normal, subtract(to, a));
  return here > 0 === there > 0 || here === there ? null : here / (here - there);
};

/** Middles and quarters of the pieces into which the skin cuts an edge. */
const alongEdge = (from: Vec3, to: Vec3, met: readonly Triangle[]): readonly Vec3[] => {
  const cuts = met.map((triangle) => passing(from, to, triangle)).filter((share) => share !== null);
  const stops = [0, ...[...new Set(cuts)].sort((p, q) => p - q), 1];
  return stops.flatMap((stop, i) => {
    const next = stops[i + 1];
    return next === undefined ? [] : [0.25, 0.5, 0.75].map((part) => between(from, to, stop + (next - stop) * part));
  });
};

/**
 * Points of a body at which it may stand deepest outside a skin it meets in the triangles `met`: its vertices, the
 * pieces of its edges between passages of the skin, and the points of its surface straight behind every bit of skin
 * that it holds inside.
 */
export const outsideProbes = (shape: ConvexShape, met: readonly Triangle[]): readonly Vec3[] => {
  const bounds = boundsOf(shape);
  return [
    ...shape.vertices,
    ...topologyOf(shape).edges.flatMap(([i, j]) => alongEdge(vertexOf(shape, i), vertexOf(shape, j), met)),
    ...met.flatMap((triangle) => behindSkin(triangle, bounds)),
  ];
};
