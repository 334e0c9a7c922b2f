/** Points and directions as read-only tuples of doubles. Vehicle axes: x forward, y left, z up (ISO 8855). */
export type Vec2 = readonly [number, number];
export type Vec3 = readonly [number, number, number];

export const ORIGIN: Vec3 = [0, 0, 0];

export const add = (a: Vec3, b: Vec3): Vec3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const subtract = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const scale = (a: Vec3, k: number): Vec3 => [a[0] * k, a[1] * k, a[2] * k];
export const negate = (a: Vec3): Vec3 => [-a[0], -a[1], -a[2]];
export const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
export const length = (a: Vec3): number => Math.sqrt(dot(a, a));
export const distance = (a: Vec3, b: Vec3): number => length(subtract(a, b));
export const middle = (a: Vec3, b: Vec3): Vec3 => scale(add(a, b), 0.5);

/** The point a + t (b − a). */
export const between = (a: Vec3, b: Vec3, t: number): Vec3 => [
  a[0] + (b[0] - a[0]) * t,
  a[1] + (b[1] - a[1]) * t,
  a[2] + (b[2] - a[2]) * t,
];

/** The unit vector along a. Throws on a zero vector: a direction without length is a mistake of the caller. */
export const unit = (a: Vec3): Vec3 => {
  const size = length(a);
  if (!(size > 0)) throw new RangeError(`unit: vector (${a.join(', ')}) has no direction`);
  return scale(a, 1 / size);
};
