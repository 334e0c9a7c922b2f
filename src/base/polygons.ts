import { orient2d } from 'robust-predicates';
import type { Vec2 } from './vectors.ts';

/** A closed ring of corners; the last joins the first and is not repeated. */
export type Polygon = readonly Vec2[];

const edgesOf = (polygon: Polygon): readonly (readonly [Vec2, Vec2])[] =>
  polygon.map((corner, i) => [corner, polygon[(i + 1) % polygon.length] ?? corner] as const);

/** Signed area: positive when the corners run anticlockwise. */
export const signedArea = (polygon: Polygon): number =>
  edgesOf(polygon).reduce((sum, [a, b]) => sum + (a[0] * b[1] - b[0] * a[1]), 0) / 2;

/** Centre of the area. Throws on a polygon without area. */
export const areaCentroid = (polygon: Polygon): Vec2 => {
  let area2 = 0;
  let x = 0;
  let y = 0;
  for (const [a, b] of edgesOf(polygon)) {
    const w = a[0] * b[1] - b[0] * a[1];
    area2 += w;
    x += (a[0] + b[0]) * w;
    y += (a[1] + b[1]) * w;
  }
  if (area2 === 0) throw new RangeError(`areaCentroid: polygon of ${polygon.length} corners has no area`);
  return [x / (3 * area2), y / (3 * area2)];
};

const side = (a: Vec2, b: Vec2, p: Vec2): number => Math.sign(orient2d(a[0], a[1], b[0], b[1], p[0], p[1]));

const withinSpan = (a: Vec2, b: Vec2, p: Vec2): boolean =>
  Math.min(a[0], b[0]) <= p[0] &&
  p[0] <= Math.max(a[0], b[0]) &&
  Math.min(a[1], b[1]) <= p[1] &&
  p[1] <= Math.max(a[1], b[1]);

/** True when the closed segments share a point; touching counts. Exact (robust predicates). */
export const segmentsMeet = (a: Vec2, b: Vec2, c: Vec2, d: Vec2): boolean => {
  const [c1, d1, a1, b1] = [side(a, b, c), side(a, b, d), side(c, d, a), side(c, d, b)];
  if (c1 * d1 < 0 && a1 * b1 < 0) return true;
  return (
    (c1 === 0 && withinSpan(a, b, c)) ||
    (d1 === 0 && withinSpan(a, b, d)) ||
    (a1 === 0 && withinSpan(c, d, a)) ||
    (b1 === 0 && withinSpan(c, d, b))
  );
};

/** From a point to the nearest point of the closed segment from `a` to `b`, which may be a point. */
export const distanceToSegment = ([x, y]: Vec2, [ax, ay]: Vec2, [bx, by]: Vec2): number => {
  const [u, v] = [bx - ax, by - ay];
  const square = u * u + v * v;
  const share = square === 0 ? 0 : Math.max(0, Math.min(1, ((x - ax) * u + (y - ay) * v) / square));
  return Math.hypot(x - ax - share * u, y - ay - share * v);
};

/** The first pair of edges that cross or touch without being neighbours, as the indices of their first corners. */
export const selfCrossing = (polygon: Polygon): readonly [number, number] | null => {
  const edges = edgesOf(polygon);
  for (let i = 0; i < edges.length; i++)
    for (let j = i + 1; j < edges.length; j++) {
      const first = edges[i];
      const second = edges[j];
      if (!first || !second) continue;
      const neighbours = j === i + 1 || (i === 0 && j === edges.length - 1);
      if (!neighbours && segmentsMeet(first[0], first[1], second[0], second[1])) return [i, j];
    }
  return null;
};

/** True when the point lies inside or on the edge. Exact (robust predicates), any corner order. */
export const polygonHolds = (polygon: Polygon, point: Vec2): boolean => {
  let inside = false;
  for (const [a, b] of edgesOf(polygon)) {
    const turn = side(a, b, point);
    if (turn === 0 && withinSpan(a, b, point)) return true;
    if (a[1] > point[1] !== b[1] > point[1] && turn > 0 === b[1] > a[1]) inside = !inside;
  }
  return inside;
};
