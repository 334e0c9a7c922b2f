import { type Box, ROUNDING_MM } from '../base/index.ts';
import type { ConvexShape } from './shapes.ts';

/** True where the shape fills the axis-aligned box around it, to rounding: eight corners, no radius. */
export const fillsBox = ({ vertices, radius }: ConvexShape, { min, max }: Box): boolean => {
  if (radius !== 0 || vertices.length !== 8) return false;
  let corners = 0;
  for (const vertex of vertices) {
    let corner = 0;
    for (let axis = 0; axis < 3; axis++) {
      const k = axis as 0 | 1 | 2;
      if (max[k] - vertex[k] <= ROUNDING_MM) corner += 1 << axis;
      else if (vertex[k] - min[k] > ROUNDING_MM) return false;
    }
    corners |= 1 << corner;
  }
  return corners === 255;
};
