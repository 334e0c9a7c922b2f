import { type Box, boxAround, boxCorners, type Pose, placed, type Vec3 } from '../base/index.ts';

/**
 * A convex solid in a frame of its own: the hull of `vertices`, grown by `radius` on every side (0 for plain boxes
 * and wedges, the true radius for capsules and balls, whose hull is a segment or a point).
 */
export interface ConvexShape {
  readonly vertices: readonly Vec3[];
  /** Each face as vertex indices, anticlockwise seen from outside; empty where the hull has no volume. */
  readonly faces: readonly (readonly number[])[];
  readonly radius: number;
}

/** Faces of a box whose corners are in the order of `boxCorners`. */
const BOX_FACES: readonly (readonly number[])[] = [
  [0, 3, 2, 1],
  [4, 5, 6, 7],
  [0, 1, 5, 4],
  [1, 2, 6, 5],
  [2, 3, 7, 6],
  [3, 0, 4, 7],
];

export const boxShape = (box: Box): ConvexShape => ({ vertices: boxCorners(box), faces: BOX_FACES, radius: 0 });

/** A round-ended bar between two points. */
export const capsuleShape = (from: Vec3, to: Vec3, radius: number): ConvexShape => {
  if (!(radius >= 0)) throw new RangeError(`capsuleShape: radius ${radius} mm is not a size`);
  return { vertices: [from, to], faces: [], radius };
};

export const shapeAt = (shape: ConvexShape, pose: Pose): ConvexShape => ({
  vertices: shape.vertices.map((vertex) => placed(pose, vertex)),
  faces: shape.faces,
  radius: shape.radius,
});

/** The axis-aligned box around the shape, its radius included. */
export const shapeBox = (shape: ConvexShape): Box => {
  const { min, max } = boxAround(shape.vertices);
  const r = shape.radius;
  return { min: [min[0] - r, min[1] - r, min[2] - r], max: [max[0] + r, max[1] + r, max[2] + r] };
};
