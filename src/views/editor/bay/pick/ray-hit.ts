import { add, cross, dot, length, scale, subtract, unit, type Vec3 } from '../../../../base/index.ts';
import type { ConvexShape } from '../../../../bodies/index.ts';

/** A half-line; `direction` is a unit vector, so that the figures along it are millimetres. */
export interface Ray {
  readonly origin: Vec3;
  readonly direction: Vec3;
}

/** Where a ray enters and leaves a body, along the ray. Enters below zero when the origin lies inside. */
export interface Span {
  readonly enters: number;
  readonly leaves: number;
}

interface Plane {
  readonly normal: Vec3;
  readonly reach: number;
}

const planesByShape = new WeakMap<ConvexShape, readonly Plane[]>();

/** Area-weighted normal of a face (Newell), which stands up to corners in a line. */
const faceNormal = (corners: readonly Vec3[]): Vec3 => {
  const [hub] = corners;
  if (!hub) return [0, 0, 0];
  let sum: Vec3 = [0, 0, 0];
  for (let i = 1; i + 1 < corners.length; i++)
    sum = add(sum, cross(subtract(corners[i] ?? hub, hub), subtract(corners[i + 1] ?? hub, hub)));
  return sum;
};

const planesOf = (shape: ConvexShape): readonly Plane[] => {
  const known = planesByShape.get(shape);
  if (known) return known;
  const planes: Plane[] = [];
  for (const face of shape.faces) {
    const corners = face.map((index) => shape.vertices[index]).filter((point) => point !== undefined);
    const normal = faceNormal(corners);
    const [hub] = corners;
    if (!hub || !(length(normal) > 0)) continue;
    const n = unit(normal);
    planes.push({ normal: n, reach: dot(n, hub) + shape.radius });
  }
  planesByShape.set(shape, planes);
  return planes;
};

const throughPlanes = (ray: Ray, planes: readonly Plane[]): Span | null => {
  let enters = Number.NEGATIVE_INFINITY;
  let leaves = Number.POSITIVE_INFINITY;
  for (const { normal, reach } of planes) {
    const speed = dot(normal, ray.direction);
    const gap = reach - dot(normal, ray.origin);
    if (speed === 0) {
      if (gap < 0) return null;
      continue;
    }
    const t = gap / speed;
    if (speed > 0) leaves = Math.min(leaves, t);
    else enters = Math.max(enters, t);
    if (enters > leaves) return null;
  }
  return leaves < 0 ? null : { enters, leaves };
};

const throughBall = (ray: Ray, centre: Vec3, radius: number): Span | null => {
  const to = subtract(centre, ray.origin);
  const along = dot(to, ray.direction);
  const square = radius * radius - (dot(to, to) - along * along);
  if (square < 0) return null;
  const half = Math.sqrt(square);
  return along + half < 0 ? null : { enters: along - half, leaves: along + half };
};

/** The round wall between the two ends, without the caps. */
const throughWall = (ray: Ray, from: Vec3, to: Vec3, radius: number): Span | null => {
  const axis = subtract(to, from);
  const long = length(axis);
  if (!(long > 0)) return null;
  const k = scale(axis, 1 / long);
  const across = (v: Vec3): Vec3 => subtract(v, scale(k, dot(v, k)));
  const d = across(ray.direction);
  const o = across(subtract(ray.origin, from));
  const a = dot(d, d);
  if (a === 0) return null;
  const b = dot(d, o);
  const root = b * b - a * (dot(o, o) - radius * radius);
  if (root < 0) return null;
  const at = (t: number): boolean => {
    const up = dot(subtract(add(ray.origin, scale(ray.direction, t)), from), k);
    return up >= 0 && up <= long;
  };
  const [enters, leaves] = [(-b - Math.sqrt(root)) / a, (-b + Math.sqrt(root)) / a];
  const hits = [enters, leaves].filter(at);
  const [first] = hits;
  const last = hits.at(-1);
  return first === undefined || last === undefined || last < 0 ? null : { enters: first, leaves: last };
};

const joined = (a: Span | null, b: Span | null): Span | null =>
  a && b ? { enters: Math.min(a.enters, b.enters), leaves: Math.max(a.leaves, b.leaves) } : (a ?? b);

/** Where the ray passes through the shape, or null when it misses it or the shape lies behind. Touching counts. */
export const rayThrough = (ray: Ray, shape: ConvexShape): Span | null => {
  if (shape.faces.length > 0) return throughPlanes(ray, planesOf(shape));
  const [from, to = from] = shape.vertices;
  if (!from || !to) return null;
  const caps = joined(throughBall(ray, from, shape.radius), throughBall(ray, to, shape.radius));
  return joined(caps, throughWall(ray, from, to, shape.radius));
};
