import type { Vec2, Vec3 } from '../../../../base/index.ts';
import type { CameraState } from '../../../camera-state.ts';

/** What the pointer is doing in the bay. Each state holds what it began with, so that backing out is exact. */
export type Press =
  | { readonly kind: 'idle' }
  | {
      readonly kind: 'pressed';
      readonly at: Vec2;
      readonly pans: boolean;
      readonly thing: string | null;
      readonly grip: Grip | null;
    }
  | { readonly kind: 'walking'; readonly from: Vec2; readonly camera: CameraState }
  | { readonly kind: 'sliding'; readonly from: Vec2; readonly camera: CameraState }
  | { readonly kind: 'pulling'; readonly from: Vec2; readonly grip: Grip }
  | {
      readonly kind: 'pinching';
      readonly apart: number;
      readonly middle: Vec2;
      readonly camera: CameraState;
    };

/** A hold on a mover: the point that was gripped, stowed, and how far out it stood. */
export interface Grip {
  readonly mover: string;
  readonly point: Vec3;
  readonly share: number;
}

/** Nearer to where it went down, a pointer has not moved: a click is a click with an unsteady hand. */
const UNSTEADY_PX = 4;

export const hasMoved = (from: Vec2, to: Vec2): boolean => Math.hypot(to[0] - from[0], to[1] - from[1]) > UNSTEADY_PX;

/** What a press turns into once the pointer moves: a grip pulls, a plain press walks round, a sliding one slides. */
export const begun = (press: Extract<Press, { kind: 'pressed' }>, camera: CameraState): Press => {
  if (press.grip && !press.pans) return { kind: 'pulling', from: press.at, grip: press.grip };
  return press.pans ? { kind: 'sliding', from: press.at, camera } : { kind: 'walking', from: press.at, camera };
};
