import { orient2d, orient3d } from 'robust-predicates';
import type { Vec3 } from '../base/index.ts';
import type { PreparedShell } from './prepared.ts';
import type { Triangle } from './shell.ts';
import { walkAhead } from './tree.ts';

/** True when `a` comes before `b`: both triangles at an edge must ask about it in the same order. */
const before = (a: Vec3, b: Vec3): boolean => (a[0] !== b[0] ? a[0] < b[0] : a[1] !== b[1] ? a[1] < b[1] : a[2] < b[2]);

/**
 * Whether the edge, seen along x, crosses the half line from p towards +y. An end level with p counts as below it
 * and an edge straight through p as passing it by, the same for both triangles at the edge, so that nothing is
 * counted twice or lost.
 */
const crosses = (a: Vec3, b: Vec3, p: Vec3): boolean => {
  if (a[2] > p[2] === b[2] > p[2]) return false;
  const [from, to] = before(a, b) ? [a, b] : [b, a];
  const turn = orient2d(from[1], from[2], to[1], to[2], p[1], p[2]);
  return from[2] < to[2] ? turn < 0 : turn > 0;
};

/** Whether the ray from p along +x passes through the triangle. Exact for points off the triangle. */
const rayMeets = ([a, b, c]: Triangle, p: Vec3): boolean => {
  const within = (crosses(a, b, p) !== crosses(b, c, p)) !== crosses(c, a, p);
  if (!within) return false;
  const facing = orient2d(a[1], a[2], b[1], b[2], c[1], c[2]);
  const side = orient3d(a[0], a[1], a[2], b[0], b[1], b[2], c[0], c[1], c[2], p[0], p[1], p[2]);
  return facing < 0 ? side > 0 : side < 0;
};

/**
 * True when the point lies inside the closed shell, by counting the skins a ray meets, with exact predicates. A point
 * on the skin may come out either way: ask for its distance first where that matters.
 */
export const shellHolds = (prepared: PreparedShell, point: Vec3): boolean => {
  let inside = false;
  walkAhead(prepared.root, point, (index) => {
    const triangle = prepared.triangles[index];
    if (triangle && rayMeets(triangle, point)) inside = !inside;
  });
  return inside;
};
