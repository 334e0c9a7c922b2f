import { type Box, HOME, type Vec2, type Vec3 } from '../../../../base/index.ts';
import { shapeAt, shapeBox } from '../../../../bodies/index.ts';
import type { CargoSpace } from '../../../../envelope/index.ts';
import type { FitOut, Mover } from '../../../../fitout/index.ts';
import { type CameraLimits, eyeOf } from '../../../camera-state.ts';
import type { EditorStore } from '../../state/store.ts';
import { projected, rayThroughPixel } from '../camera/view.ts';
import { toggledShare } from '../motion/all-movers.ts';
import { type PullRange, pullRange } from '../motion/pull-range.ts';
import { pulledShare } from '../motion/pulled-share.ts';
import { type HalfSpace, type Pick, pickNearest } from '../pick/pick.ts';
import type { Thing } from '../pick/things.ts';
import type { Stage } from '../stage.ts';
import type { Grip } from './press.ts';
import { pullPath } from './pull-path.ts';

/** What the pointer works on, as it stands now. */
export interface BayGround {
  readonly things: readonly Thing[];
  /** Closures are let through to what lies behind, and only hit where nothing does. */
  readonly closures: readonly Thing[];
  /** The mover that a panel is the front of. */
  readonly fronts: ReadonlyMap<string, string>;
  readonly kept: HalfSpace | null;
  readonly limits: CameraLimits;
  readonly fitOut: FitOut;
  readonly space: CargoSpace | null;
}

/** What the pointer can do in the bay, whichever way it is pressed. */
export interface BayTools {
  readonly stage: Stage;
  readonly editor: EditorStore;
  readonly ground: () => BayGround;
  readonly pick: (at: Vec2) => Pick<Thing> | null;
  readonly gripAt: (at: Vec2) => Grip | null;
  /** Moves a gripped mover to where the pointer asks, as far as nothing stands in its way. */
  readonly pull: (grip: Grip, from: Vec2, to: Vec2) => void;
  /** Opens a stowed mover as far as it goes, or stows one that stands out. */
  readonly toggle: (mover: string) => void;
  readonly boxOf: (thing: Thing) => Box;
  /** The point of the scene under a pixel, or the one at the target's distance where there is nothing. */
  readonly pointUnder: (at: Vec2) => Vec3;
}

/** `tellStop` hears the name of what a mover stops on, or null once it goes free. */
export const createBayTools = (
  stage: Stage,
  editor: EditorStore,
  ground: () => BayGround,
  tellStop: (name: string | null) => void,
): BayTools => {
  const ray = (at: Vec2) => rayThroughPixel(stage.view(), at);
  const pick = (at: Vec2): Pick<Thing> | null => {
    const { things, closures, kept } = ground();
    return pickNearest(ray(at), things, stage.poses(), kept) ?? pickNearest(ray(at), closures, stage.poses(), kept);
  };
  const share = (mover: string): number => stage.glide.shown()[mover] ?? 0;
  const moverOf = (id: string) => stage.movers().find((mover) => mover.id === id);
  const ranges = new WeakMap<Grip, PullRange>();
  const rangeFrom = (mover: Mover, from: number): PullRange => {
    const { fitOut, space } = ground();
    return pullRange(mover, from, { fitOut, space, movers: stage.movers(), poses: stage.poses() });
  };
  const rangeOf = (grip: Grip, mover: Mover): PullRange => {
    const known = ranges.get(grip) ?? rangeFrom(mover, grip.share);
    ranges.set(grip, known);
    return known;
  };
  const goTo = (mover: string, asked: number, { low, high, lowStop, highStop }: PullRange): void => {
    tellStop(asked > high ? highStop : asked < low ? lowStop : null);
    editor.getState().setShare(mover, Math.min(high, Math.max(low, asked)));
  };
  return {
    stage,
    editor,
    ground,
    pick,
    gripAt: (at) => {
      const hit = pick(at);
      const mover =
        hit && (ground().fronts.get(hit.what.id) ?? (ground().closures.includes(hit.what) ? hit.what.mover : null));
      return hit && mover ? { mover, point: hit.stowedPoint, share: share(mover) } : null;
    },
    pull: (grip, from, to) => {
      const mover = moverOf(grip.mover);
      if (!mover) return;
      const view = stage.view();
      const asked = pulledShare(
        {
          pathAt: pullPath(mover, stage.poses(), grip.point),
          project: (point) => projected(view, point),
          startShare: grip.share,
          startPointer: from,
        },
        to,
        share(grip.mover),
      );
      goTo(grip.mover, asked, rangeOf(grip, mover));
    },
    toggle: (id) => {
      const mover = moverOf(id);
      if (mover) goTo(id, toggledShare(share(id)), rangeFrom(mover, share(id)));
    },
    boxOf: (thing) => {
      const pose = (thing.mover !== null && stage.poses().get(thing.mover)) || HOME;
      return shapeBox(shapeAt(thing.shape, pose));
    },
    pointUnder: (at) => {
      const hit = pick(at);
      if (hit) return hit.point;
      const { camera } = stage.view();
      const { direction } = ray(at);
      const eye = eyeOf(camera);
      return [
        eye[0] + direction[0] * camera.distance,
        eye[1] + direction[1] * camera.distance,
        eye[2] + direction[2] * camera.distance,
      ];
    },
  };
};
