import { add, cross, dot, negate, ORIGIN, scale, subtract, unit, type Vec3 } from './vectors.ts';

/**
 * A rigid placement: world = turn · local + at. The columns of `turn` are the local axes seen from the world, so
 * `turn[0]` is where the local x axis points.
 */
export interface Pose {
  readonly turn: readonly [Vec3, Vec3, Vec3];
  readonly at: Vec3;
}

export const HOME: Pose = {
  turn: [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  at: ORIGIN,
};

/** A direction carried from the local frame to the world. */
export const turned = (pose: Pose, direction: Vec3): Vec3 => {
  const [x, y, z] = pose.turn;
  return [
    x[0] * direction[0] + y[0] * direction[1] + z[0] * direction[2],
    x[1] * direction[0] + y[1] * direction[1] + z[1] * direction[2],
    x[2] * direction[0] + y[2] * direction[1] + z[2] * direction[2],
  ];
};

/** A point carried from the local frame to the world. */
export const placed = (pose: Pose, point: Vec3): Vec3 => add(turned(pose, point), pose.at);

/** `outer` after `inner`: placed(after(outer, inner), p) = placed(outer, placed(inner, p)). */
export const after = (outer: Pose, inner: Pose): Pose => ({
  turn: [turned(outer, inner.turn[0]), turned(outer, inner.turn[1]), turned(outer, inner.turn[2])],
  at: placed(outer, inner.at),
});

export const inverse = (pose: Pose): Pose => {
  const [x, y, z] = pose.turn;
  const turn: Pose['turn'] = [
    [x[0], y[0], z[0]],
    [x[1], y[1], z[1]],
    [x[2], y[2], z[2]],
  ];
  return { turn, at: negate(turned({ turn, at: ORIGIN }, pose.at)) };
};

export const shift = (by: Vec3): Pose => ({ turn: HOME.turn, at: by });

/** The turn by `angleRad` about the line through `point` along `axis`, right-handed (Rodrigues' formula). */
export const turnAbout = (point: Vec3, axis: Vec3, angleRad: number): Pose => {
  const k = unit(axis);
  const c = Math.cos(angleRad);
  const s = Math.sin(angleRad);
  const spin = (v: Vec3): Vec3 => add(add(scale(v, c), scale(cross(k, v), s)), scale(k, dot(k, v) * (1 - c)));
  const turn: Pose['turn'] = [spin([1, 0, 0]), spin([0, 1, 0]), spin([0, 0, 1])];
  return { turn, at: subtract(point, turned({ turn, at: ORIGIN }, point)) };
};
