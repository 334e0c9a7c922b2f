import type { Pose, Vec3 } from '../base/index.ts';
import type { Carcass } from '../design/index.ts';

/**
 * Which way across, deep and up of a carcass point in vehicle axes (x forward, y left, z up), by the way its open
 * face looks. Deep is opposite to the look of the face, and across = deep × up keeps the frame right-handed.
 */
const TURNS: { readonly [Facing in Carcass['facing']]: Pose['turn'] } = {
  rear: [
    [0, -1, 0],
    [1, 0, 0],
    [0, 0, 1],
  ],
  front: [
    [0, 1, 0],
    [-1, 0, 0],
    [0, 0, 1],
  ],
  left: [
    [-1, 0, 0],
    [0, -1, 0],
    [0, 0, 1],
  ],
  right: [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
};

/** Outside size in carcass coordinates: across × deep × up. */
export const outsideSize = (carcass: Carcass): Vec3 => [carcass.size.width, carcass.size.depth, carcass.size.height];

/** Outside size along the vehicle's axes. */
export const vehicleSize = (carcass: Carcass): Vec3 => {
  const [across, deep, up] = outsideSize(carcass);
  return carcass.facing === 'rear' || carcass.facing === 'front' ? [deep, across, up] : [across, deep, up];
};

/** From carcass coordinates to the vehicle, for a carcass whose box has its low corner at `low` on each vehicle axis. */
export const carcassPose = (carcass: Carcass, low: Vec3): Pose => {
  const turn = TURNS[carcass.facing];
  const size = outsideSize(carcass);
  const lowOf = (axis: 0 | 1 | 2): number =>
    turn.reduce((sum, column, i) => sum + Math.min(0, column[axis]) * (size[i] ?? 0), 0);
  return { turn, at: [low[0] - lowOf(0), low[1] - lowOf(1), low[2] - lowOf(2)] };
};
