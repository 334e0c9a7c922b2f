import { type Polygon, signedArea, type Vec2, type Vec3 } from '../base/index.ts';
import type { ConvexShape } from '../bodies/index.ts';

/**
 * The convex prism over a convex outline: `near` and `far` carry a corner of the outline to its two ends. The faces
 * look outward when the direction from near to far is the right-handed normal of the outline's plane axes.
 */
export const extruded = (outline: Polygon, near: (corner: Vec2) => Vec3, far: (corner: Vec2) => Vec3): ConvexShape => {
  const corners = signedArea(outline) < 0 ? outline.toReversed() : outline;
  const n = corners.length;
  const ring = corners.map((_, i) => i);
  return {
    vertices: [...corners.map(near), ...corners.map(far)],
    faces: [
      ring.toReversed(),
      ring.map((i) => i + n),
      ...ring.map((i) => [i, (i + 1) % n, ((i + 1) % n) + n, i + n] as const),
    ],
    radius: 0,
  };
};
