import { add, cross, dot, scale, subtract, type Vec3 } from '../../base/index.ts';
import type { ScanMesh } from './scan-mesh.ts';

/** Which triangles a line of sight stops at: those that look towards the eye, away from it, or any. */
export type Facing = 'towards' | 'away' | 'any';

/**
 * The first place at which a line of sight meets the scan, or null. `along` is a unit vector away from the eye; the
 * edge of a triangle counts. In the unit of the mesh (Möller and Trumbore 1997).
 */
export const pickScan = ({ positions, triangles }: ScanMesh, from: Vec3, along: Vec3, facing: Facing): Vec3 | null => {
  const point = (i: number): Vec3 => {
    const at = 3 * (triangles[i] ?? 0);
    return [positions[at] ?? 0, positions[at + 1] ?? 0, positions[at + 2] ?? 0];
  };
  let nearest = Infinity;
  for (let t = 0; t < triangles.length; t += 3) {
    const a = point(t);
    const [ab, ac] = [subtract(point(t + 1), a), subtract(point(t + 2), a)];
    const p = cross(along, ac);
    const det = dot(ab, p);
    // The determinant is minus the normal along the line of sight: positive looks towards the eye.
    if (det === 0 || (facing === 'towards' && det < 0) || (facing === 'away' && det > 0)) continue;
    const to = subtract(from, a);
    const u = dot(to, p) / det;
    if (u < 0 || u > 1) continue;
    const q = cross(to, ab);
    const v = dot(along, q) / det;
    if (v < 0 || u + v > 1) continue;
    const reach = dot(ac, q) / det;
    if (reach >= 0 && reach < nearest) nearest = reach;
  }
  return nearest === Infinity ? null : add(from, scale(along, nearest));
};
