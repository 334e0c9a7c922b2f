import { distance, type Pose, placed, ROUNDING_MM, type Vec3 } from '../base/index.ts';
import { type ConvexShape, capsuleShape, shapeAt } from '../bodies/index.ts';
import type { VehicleBody } from './space.ts';

type Body = Pick<VehicleBody, 'shape' | 'stays'>;

/** The two ball points of a strut while its closure is shut: on the body, and on the closure; null for anything else. */
export const strutEnds = ({ shape, stays }: Body): { readonly stays: Vec3; readonly goes: Vec3 } | null => {
  if (!stays) return null;
  const goes = shape.vertices.find((vertex) => distance(vertex, stays) > ROUNDING_MM);
  return goes ? { stays, goes } : null;
};

/** A body that a closure carries where that stands at a pose. A strut turns about the end that stays on the body. */
export const vehicleBodyAt = (body: Body, pose: Pose): ConvexShape => {
  const ends = strutEnds(body);
  return ends ? capsuleShape(ends.stays, placed(pose, ends.goes), body.shape.radius) : shapeAt(body.shape, pose);
};
