import { add, dot, scale, subtract, unit, type Vec2, type Vec3 } from '../../../../base/index.ts';
import { type CameraState, eyeOf, screenAxes, towardsEye } from '../../../camera-state.ts';
import type { Ray } from '../pick/ray-hit.ts';

/** A picture of the scene: where the eye stands, the height of its field, and the picture's size in pixels. */
export interface View {
  readonly camera: CameraState;
  readonly fieldRad: number;
  readonly width: number;
  readonly height: number;
}

/** Nearer than this to the eye nothing is drawn. Millimetres. */
export const NEAR_MM = 20;
export const FAR_MM = 40_000;

/** Where a point lies in the picture, from its upper left corner in pixels; null when it lies behind the eye. */
export const projected = (view: View, point: Vec3): Vec2 | null => {
  const from = subtract(point, eyeOf(view.camera));
  const depth = -dot(from, towardsEye(view.camera));
  if (depth < NEAR_MM) return null;
  const { right, up } = screenAxes(view.camera);
  const pixels = view.height / 2 / (Math.tan(view.fieldRad / 2) * depth);
  return [view.width / 2 + dot(from, right) * pixels, view.height / 2 - dot(from, up) * pixels];
};

/** The ray from the eye through a pixel. */
export const rayThroughPixel = (view: View, [x, y]: Vec2): Ray => {
  const { right, up } = screenAxes(view.camera);
  const reach = Math.tan(view.fieldRad / 2) / (view.height / 2);
  const across = scale(right, (x - view.width / 2) * reach);
  const upward = scale(up, (view.height / 2 - y) * reach);
  const direction = unit(add(scale(towardsEye(view.camera), -1), add(across, upward)));
  return { origin: eyeOf(view.camera), direction };
};

/** Millimetres that one pixel covers at the distance of the target. */
export const mmPerPixel = (view: View): number =>
  (2 * Math.tan(view.fieldRad / 2) * view.camera.distance) / view.height;
