import { add, length, type Vec3 } from '../base/index.ts';
import { convexHull } from './hull.ts';
import type { ConvexShape } from './shapes.ts';

/**
 * Everything a convex shape passes through while it slides straight along `along`: the hull of both ends, exact
 * because a straight sweep of a convex body is convex. Without length it is the shape itself.
 */
export const sweptShape = (shape: ConvexShape, along: Vec3): ConvexShape =>
  length(along) === 0
    ? shape
    : convexHull([...shape.vertices, ...shape.vertices.map((vertex) => add(vertex, along))], shape.radius);
