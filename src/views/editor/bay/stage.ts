import { HOME, type Pose } from '../../../base/index.ts';
import type { Mover } from '../../../fitout/index.ts';
import type { CameraState } from '../../camera-state.ts';
import { moverPoses } from '../../motion-pose.ts';
import type { Carrying } from '../state/store.ts';
import { createEye, type Eye } from './camera/eye.ts';
import type { View } from './camera/view.ts';
import { createGlide, type Glide } from './motion/glide.ts';

/** Height of the picture's field: close to what a person takes in without turning the head. */
export const FIELD_RAD = 0.82;

/**
 * What moves on the bay between two drawings of React: the eye, the movers on their way, the size of the picture.
 * The scene reads it in every frame, the pointer writes it, the labels listen for frames.
 */
export interface Stage {
  readonly eye: Eye;
  readonly glide: Glide;
  readonly view: () => View;
  readonly setSize: (width: number, height: number) => void;
  readonly setMovers: (movers: readonly Mover[]) => void;
  readonly movers: () => readonly Mover[];
  /** Where every mover stands in the present frame. */
  readonly poses: () => ReadonlyMap<string, Pose>;
  /** Where something carried stands, by the id of a carcass or mount; null while it is not in the vehicle. */
  readonly carried: (id: string | null) => Pose | null;
  readonly setCarrying: (carrying: Carrying | null) => void;
  /** Rises whenever a mover stands elsewhere than before. */
  readonly posesVersion: () => number;
  /** Moves everything on to the time of a frame; true while something is under way. */
  readonly advance: (nowMs: number) => boolean;
  /** Asks for a frame, since something moved. */
  readonly invalidate: () => void;
  /** How the scene draws a frame; set by the scene once it is there. */
  readonly setDraw: (draw: () => void) => void;
  /** When a frame was last asked for, on the clock of the frames. */
  readonly lastAsked: () => number;
  readonly onDrawn: (listener: () => void) => () => void;
  readonly tellDrawn: () => void;
}

export const createStage = (camera: CameraState): Stage => {
  const eye = createEye(camera);
  const glide = createGlide({});
  const listeners = new Set<() => void>();
  let size = { width: 1, height: 1 };
  let movers: readonly Mover[] = [];
  let poses: ReadonlyMap<string, Pose> = new Map();
  let drawnShares = '';
  let carrying: Carrying | null = null;
  let version = 0;
  let asked = 0;
  let draw: () => void = () => undefined;
  const settle = (): void => {
    const shown = glide.shown();
    const key = JSON.stringify(shown);
    if (key === drawnShares) return;
    drawnShares = key;
    poses = moverPoses(movers, shown);
    version++;
  };
  const stage: Stage = {
    eye,
    glide,
    view: () => ({ camera: eye.state(), fieldRad: FIELD_RAD, ...size }),
    setSize: (width, height) => {
      size = { width: Math.max(1, width), height: Math.max(1, height) };
    },
    setMovers: (next) => {
      movers = next;
      drawnShares = '';
      settle();
    },
    movers: () => movers,
    poses: () => {
      settle();
      return poses;
    },
    carried: (id) => {
      if (id === null || !carrying) return HOME;
      return carrying.absent.includes(id) ? null : (carrying.poses[id] ?? HOME);
    },
    setCarrying: (next) => {
      carrying = next;
      // Shadows follow in the next frame, as they do for movers.
      drawnShares = '';
    },
    posesVersion: () => version,
    advance: (nowMs) => {
      const flying = eye.advance(nowMs);
      const gliding = glide.advance(nowMs);
      settle();
      return flying || gliding;
    },
    invalidate: () => {
      asked = performance.now();
      draw();
    },
    setDraw: (next) => {
      draw = next;
    },
    lastAsked: () => asked,
    onDrawn: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    tellDrawn: () => {
      for (const listener of listeners) listener();
    },
  };
  return stage;
};
