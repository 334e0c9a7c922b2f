import { useEffect, useMemo, useRef } from 'react';
import type { Box } from '../../../base/index.ts';
import type { CargoSpace } from '../../../envelope/index.ts';
import type { FitOut } from '../../../fitout/index.ts';
import { useEditorStore } from '../state/use-editor.ts';
import { viewpointCamera } from './camera/viewpoints.ts';
import { allMovers, shownShares } from './motion/all-movers.ts';
import { createStage, FIELD_RAD, type Stage } from './stage.ts';

/** True where the person has asked for things not to move on their own. */
export const wantsStillness = (): boolean =>
  globalThis.matchMedia?.('(prefers-reduced-motion: reduce)').matches ?? false;

interface StageHold {
  readonly stage: Stage;
  /** The mover in the hand follows at once; others glide. */
  readonly hold: (mover: string | null) => void;
}

/** One stage for the life of the bay, fed with the movers of the design and the shares that people set. */
export const useStage = (fitOut: FitOut, space: CargoSpace | null, room: Box): StageHold => {
  const editor = useEditorStore();
  const held = useRef<string | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the first room is only where the eye begins
  const stage = useMemo(
    () => createStage(viewpointCamera('hatch', { room, floorUp: 0 }, { fieldRad: FIELD_RAD, aspect: 1 })),
    [],
  );
  useMemo(() => stage.setMovers(allMovers(fitOut, space)), [stage, fitOut, space]);
  useEffect(() => {
    const aim = (gently: boolean): void => {
      stage.glide.aim(shownShares(editor.getState().shares, space), held.current, gently);
      stage.invalidate();
    };
    aim(false);
    return editor.subscribe((state, before) => {
      if (state.shares !== before.shares) aim(!wantsStillness());
      if (state.carrying !== before.carrying) {
        stage.setCarrying(state.carrying);
        stage.invalidate();
      }
    });
  }, [stage, editor, space]);
  return {
    stage,
    hold: (mover) => {
      held.current = mover;
    },
  };
};
