import { type Box, ROUNDING_MM, type Vec3 } from '../base/index.ts';

/**
 * Carcass coordinates: across to the viewer's right, deep from the face to the back, up. Right-handed: across × deep
 * = up. The origin is the low corner at the viewer's left of the open face.
 */
export type Axis = 0 | 1 | 2;
export const ACROSS = 0;
export const DEEP = 1;
export const UP = 2;
export const AXES: readonly Axis[] = [ACROSS, DEEP, UP];

const NAMES = ['across', 'deep', 'up'] as const;
export type AxisName = (typeof NAMES)[number];
export const axisName = (axis: Axis): AxisName => NAMES[axis];

/** The vector with one of its numbers replaced. */
export const withAxis = (v: Vec3, axis: Axis, value: number): Vec3 => [
  axis === ACROSS ? value : v[0],
  axis === DEEP ? value : v[1],
  axis === UP ? value : v[2],
];

/** The box with its span along one axis replaced. */
export const withSpan = (box: Box, axis: Axis, low: number, high: number): Box => ({
  min: withAxis(box.min, axis, low),
  max: withAxis(box.max, axis, high),
});

export const largerOf = (a: Vec3, b: Vec3): Vec3 => [Math.max(a[0], b[0]), Math.max(a[1], b[1]), Math.max(a[2], b[2])];

/** What two boxes have in common, or null when that has no volume beyond rounding; touching does not count. */
export const common = (a: Box, b: Box): Box | null => {
  const min: Vec3 = largerOf(a.min, b.min);
  const max: Vec3 = [Math.min(a.max[0], b.max[0]), Math.min(a.max[1], b.max[1]), Math.min(a.max[2], b.max[2])];
  return AXES.every((axis) => max[axis] - min[axis] > ROUNDING_MM) ? { min, max } : null;
};

/** True when the box has volume beyond rounding. */
export const hasVolume = (box: Box): boolean => AXES.every((axis) => box.max[axis] - box.min[axis] > ROUNDING_MM);

/** Along one axis, one way or the other. */
export interface Direction {
  readonly axis: Axis;
  readonly sign: 1 | -1;
}
export const RIGHT: Direction = { axis: ACROSS, sign: 1 };
export const LEFT: Direction = { axis: ACROSS, sign: -1 };
export const BACKWARD: Direction = { axis: DEEP, sign: 1 };
export const TO_FACE: Direction = { axis: DEEP, sign: -1 };
export const UPWARD: Direction = { axis: UP, sign: 1 };
export const DOWNWARD: Direction = { axis: UP, sign: -1 };

export const vectorOf = ({ axis, sign }: Direction): Vec3 => withAxis([0, 0, 0], axis, sign);

/** The direction that makes x, y, z right-handed, from z and x: y = z × x. */
export const third = (z: Direction, x: Direction): Direction => {
  const axis = AXES[3 - z.axis - x.axis];
  if (axis === undefined || z.axis === x.axis) throw new RangeError(`third: axes ${z.axis} and ${x.axis} span no face`);
  const forward = (z.axis + 1) % 3 === x.axis;
  return { axis, sign: z.sign * x.sign * (forward ? 1 : -1) > 0 ? 1 : -1 };
};
