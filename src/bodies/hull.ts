import { orient3d } from 'robust-predicates';
import { cross, distance, dot, length, ROUNDING_MM, scale, subtract, type Vec3 } from '../base/index.ts';
import type { ConvexShape } from './shapes.ts';

type Facet = readonly [number, number, number];

const at = (points: readonly Vec3[], index: number): Vec3 => {
  const point = points[index];
  if (!point) throw new RangeError(`hull of ${points.length} points has no point ${index}`);
  return point;
};

/** Points that differ by rounding only are one point. */
const welded = (points: readonly Vec3[]): readonly Vec3[] => {
  const kept: Vec3[] = [];
  for (const point of points) if (!kept.some((other) => distance(other, point) <= ROUNDING_MM)) kept.push(point);
  return kept;
};

const furthest = (points: readonly Vec3[], measure: (point: Vec3) => number): readonly [number, number] => {
  let best = -Infinity;
  let index = 0;
  points.forEach((point, i) => {
    const value = measure(point);
    if (value > best) [best, index] = [value, i];
  });
  return [index, best];
};

/** Positive when `point` lies on the outer side of the facet. Exact in sign; the predicate itself counts the other way. */
const beyond = (points: readonly Vec3[], facet: Facet, point: Vec3): number => {
  const [a, b, c] = [at(points, facet[0]), at(points, facet[1]), at(points, facet[2])];
  return -orient3d(a[0], a[1], a[2], b[0], b[1], b[2], c[0], c[1], c[2], point[0], point[1], point[2]);
};

/** The fattest tetrahedron found by going furthest four times, or null where the points have no volume. */
const firstFacets = (points: readonly Vec3[]): Facet[] | null => {
  const start = at(points, 0);
  const [i, reach] = furthest(points, (p) => distance(p, start));
  if (!(reach > ROUNDING_MM)) return null;
  const along = scale(subtract(at(points, i), start), 1 / reach);
  const [j, width] = furthest(points, (p) => length(cross(along, subtract(p, start))));
  if (!(width > ROUNDING_MM)) return null;
  const normal = cross(along, scale(subtract(at(points, j), start), 1 / width));
  const [k, height] = furthest(points, (p) => Math.abs(dot(normal, subtract(p, start))));
  if (!(height > ROUNDING_MM)) return null;
  const base: Facet = [0, i, j];
  const up = beyond(points, base, at(points, k)) > 0;
  const [a, b, c] = up ? [0, j, i] : [0, i, j];
  return [
    [a, b, c],
    [b, a, k],
    [c, b, k],
    [a, c, k],
  ];
};

/**
 * Facets of the hull, one point at a time: every facet the point sees, edge-on included, is replaced by the fan from
 * the point to the rim of what it sees. Counting edge-on as seen keeps every new facet from being without area, and
 * the exact predicate keeps the rim one ring.
 */
const facetsOf = (points: readonly Vec3[], first: readonly Facet[]): readonly Facet[] => {
  let facets: readonly Facet[] = first;
  points.forEach((point, index) => {
    const heights = facets.map((facet) => beyond(points, facet, point));
    if (!heights.some((height) => height > 0)) return;
    const rim = new Map<string, readonly [number, number]>();
    const hidden: Facet[] = [];
    facets.forEach((facet, i) => {
      if ((heights[i] ?? 0) < 0) {
        hidden.push(facet);
        return;
      }
      const [a, b, c] = facet;
      for (const [from, to] of [
        [a, b],
        [b, c],
        [c, a],
      ] as const)
        if (!rim.delete(`${to}>${from}`)) rim.set(`${from}>${to}`, [from, to]);
    });
    facets = [...hidden, ...[...rim.values()].map(([from, to]): Facet => [from, to, index])];
  });
  return facets;
};

interface Sheet {
  readonly facet: Facet;
  readonly normal: Vec3;
  readonly area: number;
}

const sheetOf = (points: readonly Vec3[], facet: Facet): Sheet => {
  const hub = at(points, facet[0]);
  const normal = cross(subtract(at(points, facet[1]), hub), subtract(at(points, facet[2]), hub));
  const area = length(normal);
  return { facet, area, normal: area > 0 ? scale(normal, 1 / area) : normal };
};

/** The ring around a group of facets, or null where they do not make one simple ring. */
const ringAround = (group: readonly Facet[]): readonly number[] | null => {
  const next = new Map<number, number>();
  const inner = new Set(group.flatMap(([a, b, c]) => [`${a}>${b}`, `${b}>${c}`, `${c}>${a}`]));
  for (const [a, b, c] of group)
    for (const [from, to] of [
      [a, b],
      [b, c],
      [c, a],
    ] as const) {
      if (inner.has(`${to}>${from}`)) continue;
      if (next.has(from)) return null;
      next.set(from, to);
    }
  const [start] = next.keys();
  if (start === undefined) return null;
  const ring = [start];
  for (let i = next.get(start); i !== undefined && i !== start; i = next.get(i)) {
    ring.push(i);
    if (ring.length > next.size) return null;
  }
  return ring.length === next.size ? ring : null;
};

/** Facets of one plane within rounding joined into one face, the largest first, so that a sliver follows its neighbour. */
const mergedFaces = (points: readonly Vec3[], facets: readonly Facet[]): readonly (readonly number[])[] => {
  const sheets = facets.map((facet) => sheetOf(points, facet)).sort((p, q) => q.area - p.area);
  const open = new Set(sheets);
  const faces: (readonly number[])[] = [];
  for (const seed of sheets) {
    if (!open.has(seed)) continue;
    const hub = at(points, seed.facet[0]);
    const level = (i: number): boolean => Math.abs(dot(seed.normal, subtract(at(points, i), hub))) <= ROUNDING_MM;
    const group = [...open].filter((sheet) => sheet === seed || sheet.facet.every(level));
    const ring = ringAround(group.map((sheet) => sheet.facet));
    for (const sheet of ring ? group : [seed]) open.delete(sheet);
    faces.push(ring ?? seed.facet);
  }
  return faces;
};

/**
 * The hull of the points, grown by `radius`, with plane faces anticlockwise from outside and only the vertices it
 * needs. Points without volume (within rounding) give a shape with no faces and every distinct point. Throws
 * RangeError on an empty list.
 */
export const convexHull = (points: readonly Vec3[], radius = 0): ConvexShape => {
  if (points.length === 0) throw new RangeError('convexHull: no points');
  const distinct = welded(points);
  const first = firstFacets(distinct);
  if (!first) return { vertices: distinct, faces: [], radius };
  const faces = mergedFaces(distinct, facetsOf(distinct, first));
  const used = [...new Set(faces.flat())].sort((p, q) => p - q);
  const place = new Map(used.map((index, i) => [index, i]));
  return {
    vertices: used.map((index) => at(distinct, index)),
    faces: faces.map((face) => face.map((index) => place.get(index) ?? 0)),
    radius,
  };
};
