import { add, type Box, cross, scale, unit, type Vec3 } from '../base/index.ts';

/**
 * Where the eye stands, as a person would say it: what it looks at, from which side, from how high, how far away.
 * `azimuthRad` is the side of the eye seen from the target: 0 forward of it, π/2 to the vehicle's left, π behind it.
 */
export interface CameraState {
  readonly target: Vec3;
  readonly azimuthRad: number;
  readonly elevationRad: number;
  readonly distance: number;
}

/** What an eye may do without getting lost. */
export interface CameraLimits {
  /** The target stays in here. */
  readonly within: Box;
  readonly nearest: number;
  readonly farthest: number;
}

/** Straight up and straight down have no upright picture: the eye keeps short of them. */
const HIGHEST_RAD = 1.53;
/** A little below the level of what is looked at, to see the underside of a tray, never under the ground. */
const LOWEST_RAD = -0.35;

export const eyeOf = (camera: CameraState): Vec3 => add(camera.target, scale(towardsEye(camera), camera.distance));

/** Unit vector from the target to the eye. */
export const towardsEye = ({ azimuthRad, elevationRad }: CameraState): Vec3 => [
  Math.cos(elevationRad) * Math.cos(azimuthRad),
  Math.cos(elevationRad) * Math.sin(azimuthRad),
  Math.sin(elevationRad),
];

/** The picture's right and up as unit vectors of the vehicle. */
export const screenAxes = (camera: CameraState): { readonly right: Vec3; readonly up: Vec3 } => {
  const back = towardsEye(camera);
  const right = unit(cross([0, 0, 1], back));
  return { right, up: cross(back, right) };
};

const clamp = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));

const held = (camera: CameraState, limits: CameraLimits): CameraState => {
  const { min, max } = limits.within;
  return {
    target: [
      clamp(camera.target[0], min[0], max[0]),
      clamp(camera.target[1], min[1], max[1]),
      clamp(camera.target[2], min[2], max[2]),
    ],
    azimuthRad: camera.azimuthRad,
    elevationRad: clamp(camera.elevationRad, LOWEST_RAD, HIGHEST_RAD),
    distance: clamp(camera.distance, limits.nearest, limits.farthest),
  };
};

/** Walks the eye round the target: a drag to the right brings the left side forward. */
export const orbited = (camera: CameraState, turnRad: number, riseRad: number, limits: CameraLimits): CameraState =>
  held({ ...camera, azimuthRad: camera.azimuthRad - turnRad, elevationRad: camera.elevationRad + riseRad }, limits);

/** Slides eye and target together, in millimetres of the target's plane: right and up as seen. */
export const panned = (camera: CameraState, right: number, up: number, limits: CameraLimits): CameraState => {
  const axes = screenAxes(camera);
  return held({ ...camera, target: add(camera.target, add(scale(axes.right, right), scale(axes.up, up))) }, limits);
};

/** Brings the eye nearer (factor below 1) or farther, towards `point` so that it keeps its place on the screen. */
export const zoomed = (camera: CameraState, factor: number, point: Vec3 | null, limits: CameraLimits): CameraState => {
  const distance = clamp(camera.distance * factor, limits.nearest, limits.farthest);
  const real = distance / camera.distance;
  const towards = point ?? camera.target;
  const target = add(towards, scale(add(camera.target, scale(towards, -1)), real));
  return held({ ...camera, target, distance }, limits);
};

const fullTurn = 2 * Math.PI;

/** The same angle, written so that it lies within half a turn of `near`. */
const nearestTurn = (angle: number, near: number): number => angle + fullTurn * Math.round((near - angle) / fullTurn);

/** A place on the way of a flight; `share` runs from 0 to 1 and is eased already. Turns take the short way round. */
export const cameraBetween = (from: CameraState, to: CameraState, share: number): CameraState => {
  const mix = (a: number, b: number): number => a + (b - a) * share;
  return {
    target: [mix(from.target[0], to.target[0]), mix(from.target[1], to.target[1]), mix(from.target[2], to.target[2])],
    azimuthRad: mix(from.azimuthRad, nearestTurn(to.azimuthRad, from.azimuthRad)),
    elevationRad: mix(from.elevationRad, to.elevationRad),
    distance: mix(from.distance, to.distance),
  };
};

/** Slow at both ends. */
export const eased = (t: number): number => (t <= 0 ? 0 : t >= 1 ? 1 : t * t * (3 - 2 * t));
