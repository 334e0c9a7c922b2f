import { useCallback, useEffect, useRef, useState } from 'react';
import { type Box, boxAround } from '../../../base/index.ts';
import type { CameraLimits } from '../../camera-state.ts';
import type { Viewpoint } from '../state/store.ts';
import { useEditorParts, useEditorStore } from '../state/use-editor.ts';
import { cameraLimits, cameraOn, type Lens, type Scene, viewpointCamera } from './camera/viewpoints.ts';
import { FIELD_RAD, type Stage } from './stage.ts';
import { wantsStillness } from './use-stage.ts';

/** Height of the cargo floor while nobody has measured it. */
const USUAL_FLOOR_UP = 800;
/** Room shown round a feeler line, so that one sees what it lies between. */
const AROUND_FEELER = 170;

interface BayCamera {
  /** The named place where the eye stands, or null once it has walked off. */
  readonly standing: Viewpoint | null;
  readonly choose: (viewpoint: Viewpoint) => void;
  readonly walkedOff: () => void;
  readonly limits: () => CameraLimits;
  readonly resized: (size: { readonly width: number; readonly height: number }) => void;
}

/** Keeps the eye at its viewpoint until someone walks off, and flies it to viewpoints and findings. */
export const useCamera = (stage: Stage, room: Box): BayCamera => {
  const editor = useEditorStore();
  const { viewpoint, floorAboveGround, feeler, findings } = useEditorParts((state) => ({
    viewpoint: state.viewpoint,
    floorAboveGround: state.history.design.vehicle.floorAboveGroundMm,
    feeler: state.feeler,
    findings: state.judgement?.inspection.findings,
  }));
  const [standing, setStanding] = useState<Viewpoint | null>(viewpoint);
  const now = useRef<Viewpoint | null>(viewpoint);
  const floorUp = floorAboveGround ?? USUAL_FLOOR_UP;
  const scene: Scene = { room, floorUp };
  const lens = (): Lens => {
    const { width, height } = stage.view();
    return { fieldRad: FIELD_RAD, aspect: width / height };
  };
  const stand = (at: Viewpoint, gently: boolean): void => {
    now.current = at;
    setStanding(at);
    stage.eye.flyTo(viewpointCamera(at, scene, lens()), gently && !wantsStillness());
    stage.invalidate();
  };
  // Another room under the eye: it stays at its viewpoint, which lies elsewhere now.
  // biome-ignore lint/correctness/useExhaustiveDependencies: only the room and the floor move the viewpoints
  useEffect(() => {
    if (now.current !== null) stand(now.current, false);
  }, [room, floorUp]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: chosen elsewhere in the window
  useEffect(() => {
    if (now.current !== viewpoint) stand(viewpoint, true);
  }, [viewpoint]);

  const at = feeler === null ? null : (findings?.[feeler]?.at ?? null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: flies once for each finding that is chosen
  useEffect(() => {
    if (!at) return;
    const { min, max } = boxAround(at);
    const box: Box = {
      min: [min[0] - AROUND_FEELER, min[1] - AROUND_FEELER, min[2] - AROUND_FEELER],
      max: [max[0] + AROUND_FEELER, max[1] + AROUND_FEELER, max[2] + AROUND_FEELER],
    };
    walkedOff();
    stage.eye.flyTo(cameraOn(stage.eye.goal(), box, lens(), cameraLimits(scene)), !wantsStillness());
    stage.invalidate();
  }, [feeler]);

  const walkedOff = useCallback(() => {
    now.current = null;
    setStanding(null);
  }, []);
  return {
    standing,
    choose: (chosen) => {
      stand(chosen, true);
      editor.getState().setViewpoint(chosen);
    },
    walkedOff,
    limits: () => cameraLimits(scene),
    resized: ({ width, height }) => {
      stage.setSize(width, height);
      if (now.current !== null) stand(now.current, false);
    },
  };
};
