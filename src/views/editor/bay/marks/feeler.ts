import { add, cross, length, scale, subtract, unit, type Vec3 } from '../../../../base/index.ts';
import type { LineData } from '../../../../shop/index.ts';

/** Half the length of the tick across each end, and the least length at which a feeler line is drawn as a line. */
const TICK_MM = 14;
const POINT_MM = 0.5;

/** A feeler line between the two nearest points, with a tick across each end; a cross where the two are one. */
export const feelerLines = ([from, to]: readonly [Vec3, Vec3]): LineData => {
  const way = subtract(to, from);
  const long = length(way);
  const along: Vec3 = long > POINT_MM ? unit(way) : [1, 0, 0];
  const helper: Vec3 = Math.abs(along[2]) < 0.9 ? [0, 0, 1] : [0, 1, 0];
  const side = unit(cross(along, helper));
  const other = cross(along, side);
  const tick = (at: Vec3, way2: Vec3): LineData => [
    ...add(at, scale(way2, -TICK_MM)),
    ...add(at, scale(way2, TICK_MM)),
  ];
  return [...from, ...to, ...[from, to].flatMap((at) => [...tick(at, side), ...tick(at, other)])];
};
