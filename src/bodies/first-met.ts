import { add, cross, dot, ROUNDING_SHARE, scale, subtract, type Vec3 } from '../base/index.ts';
import type { Triangle } from './shell.ts';

/**
 * Where a ray meets a triangle, as a distance along its unit direction (mm); null where it passes by or
 * runs along it. An edge that two triangles share belongs to both.
 */
const metAt = ([a, b, c]: Triangle, from: Vec3, way: Vec3): number | null => {
  const [ab, ac] = [subtract(b, a), subtract(c, a)];
  const side = cross(way, ac);
  const det = dot(ab, side);
  if (det === 0) return null;
  const off = subtract(from, a);
  const u = dot(off, side) / det;
  const turn = cross(off, ab);
  const v = dot(way, turn) / det;
  if (u < -ROUNDING_SHARE || v < -ROUNDING_SHARE || u + v > 1 + ROUNDING_SHARE) return null;
  const along = dot(ac, turn) / det;
  return along >= 0 ? along : null;
};

/** The first of the triangles that a ray meets: how far along its unit direction (mm), and the point; null for none. */
export const firstMet = (
  triangles: readonly Triangle[],
  from: Vec3,
  way: Vec3,
): { readonly distance: number; readonly at: Vec3 } | null => {
  let distance = Number.POSITIVE_INFINITY;
  for (const triangle of triangles) {
    const met = metAt(triangle, from, way);
    if (met !== null && met < distance) distance = met;
  }
  return Number.isFinite(distance) ? { distance, at: add(from, scale(way, distance)) } : null;
};
