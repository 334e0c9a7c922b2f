import {
  add,
  type Box,
  boxCorners,
  boxMiddle,
  boxSize,
  dot,
  scale,
  subtract,
  type Vec3,
} from '../../../../base/index.ts';
import { type CameraLimits, type CameraState, screenAxes, towardsEye } from '../../../camera-state.ts';
import type { Viewpoint } from '../../state/store.ts';

/** The picture: its height over its distance, and its width over its height. */
export interface Lens {
  readonly fieldRad: number;
  readonly aspect: number;
}

/** What is looked at. */
export interface Scene {
  /** The cargo space, or what stands in for it while there is none. */
  readonly room: Box;
  /** Height of the floor above the ground. */
  readonly floorUp: number;
}

/** Eyes of a standing person above the ground, and of a seated one above the cargo floor. */
const STANDING_EYE_UP = 1650;
const SEATED_EYE_UP = 800;
/** How far the eyes of a rider on the rear seat are in front of the cargo space, turned round. */
const SEATED_EYE_AHEAD = 420;
/** Room round what is looked at, as a share of it. */
const BORDER = 1.05;

/** The least distance from which every corner of the box lies inside the picture. */
export const fittingDistance = (box: Box, camera: CameraState, lens: Lens): number => {
  const back = towardsEye(camera);
  const { right, up } = screenAxes(camera);
  const halfUp = Math.tan(lens.fieldRad / 2) / BORDER;
  const halfRight = halfUp * lens.aspect;
  return boxCorners(box).reduce((most, corner) => {
    const from = subtract(corner, camera.target);
    const wide = Math.max(Math.abs(dot(from, right)) / halfRight, Math.abs(dot(from, up)) / halfUp);
    return Math.max(most, wide + dot(from, back));
  }, 0);
};

const fitted = (box: Box, camera: CameraState, lens: Lens): CameraState => ({
  ...camera,
  distance: fittingDistance(box, camera, lens),
});

/** Room behind the sill that drawers come out into, and the open hatch hangs over. */
const BEHIND_SILL = 420;

const sided = (scene: Scene, azimuthRad: number, elevationRad: number, lens: Lens): CameraState => {
  const { min, max } = scene.room;
  const whole: Box = { min: [min[0] - BEHIND_SILL, min[1], min[2]], max };
  return fitted(whole, { target: boxMiddle(whole), azimuthRad, elevationRad, distance: 1 }, lens);
};

/** Passes of fitting the distance to a height of the eye that depends on it; the second already moves it by less than a pace. */
const PASSES = 4;

/** Behind the open hatch, at the eye height of someone who stands there. */
const atTheHatch = (scene: Scene, lens: Lens): CameraState => {
  const { min, max } = scene.room;
  const mouth: Box = { min, max: [min[0] + boxSize(scene.room)[0] / 4, max[1], max[2]] };
  const target: Vec3 = [min[0] + boxSize(scene.room)[0] / 4, boxMiddle(mouth)[1], min[2] + boxSize(mouth)[2] * 0.55];
  const up = STANDING_EYE_UP - scene.floorUp - target[2];
  let camera: CameraState = { target, azimuthRad: Math.PI, elevationRad: 0.2, distance: 1 };
  for (let pass = 0; pass < PASSES; pass++) {
    const { distance } = fitted(mouth, camera, lens);
    camera = { ...camera, distance, elevationRad: Math.asin(Math.max(-0.3, Math.min(0.9, up / distance))) };
  }
  return camera;
};

/** Looking back over the cabinet, at what can be seen of the road. */
const fromTheSeat = (scene: Scene): CameraState => {
  const [x, y] = boxMiddle(scene.room);
  const target: Vec3 = [x, y, scene.room.min[2] + boxSize(scene.room)[2] * 0.65];
  const ahead = scene.room.max[0] + SEATED_EYE_AHEAD - target[0];
  const up = scene.room.min[2] + SEATED_EYE_UP - target[2];
  return { target, azimuthRad: 0, elevationRad: Math.atan2(up, ahead), distance: Math.hypot(ahead, up) };
};

/** The slant of the views from a side: low enough to show height, high enough to show depth. */
const SIDE_RAD = 0.22;
const ABOVE_RAD = 1.5;

const VIEWS: Readonly<Record<Viewpoint, (scene: Scene, lens: Lens) => CameraState>> = {
  hatch: atTheHatch,
  above: (scene, lens) => sided(scene, Math.PI, ABOVE_RAD, lens),
  left: (scene, lens) => sided(scene, Math.PI / 2, SIDE_RAD, lens),
  right: (scene, lens) => sided(scene, -Math.PI / 2, SIDE_RAD, lens),
  seat: fromTheSeat,
};

/** Where the eye stands for a named viewpoint. */
export const viewpointCamera = (viewpoint: Viewpoint, scene: Scene, lens: Lens): CameraState =>
  VIEWS[viewpoint](scene, lens);

/** Farther than a whole vehicle from outside nobody needs to be; nearer than a hand nobody sees anything. */
const NEAREST = 180;
const FARTHEST_IN_ROOMS = 4;

export const cameraLimits = (scene: Scene): CameraLimits => {
  const size = boxSize(scene.room);
  const longest = Math.max(...size);
  const spare: Vec3 = [longest / 2, longest / 4, longest / 4];
  return {
    within: { min: subtract(scene.room.min, spare), max: add(scene.room.max, spare) },
    nearest: NEAREST,
    farthest: longest * FARTHEST_IN_ROOMS,
  };
};

/** Flies to a part without walking round it: the side stays, the distance fits the part with room around it. */
export const cameraOn = (camera: CameraState, part: Box, lens: Lens, limits: CameraLimits): CameraState => {
  const target = boxMiddle(part);
  const margin = scale(boxSize(part), 0.5);
  const roomy: Box = { min: subtract(part.min, margin), max: add(part.max, margin) };
  const distance = fittingDistance(roomy, { ...camera, target }, lens);
  return { ...camera, target, distance: Math.min(limits.farthest, Math.max(limits.nearest, distance)) };
};
