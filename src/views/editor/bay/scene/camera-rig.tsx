import { useFrame, useThree } from '@react-three/fiber';
import { useEffect, useRef } from 'react';
import type { PerspectiveCamera } from 'three';
import { eyeOf } from '../../../camera-state.ts';
import { FAR_MM, NEAR_MM, type View } from '../camera/view.ts';
import type { Stage } from '../stage.ts';
import { createPace } from './pace.ts';

/** First in the frame: everything else reads where the eye and the movers stand. */
const FIRST = -2;
/** So long after the last movement the picture counts as resting and is drawn at its sharpest again. */
const REST_MS = 160;
/** On a slow machine that is at least so many frames, or every pause of the hand would be drawn sharp. */
const REST_FRAMES = 3;
/** Sharper than two pixels a point nobody sees; it would only cost. */
const SHARPEST = 2;

export const fullSharpness = (): number => Math.min(SHARPEST, globalThis.devicePixelRatio);

const aim = (camera: PerspectiveCamera, view: View): void => {
  const [x, y, z] = eyeOf(view.camera);
  camera.up.set(0, 0, 1);
  camera.position.set(x, y, z);
  camera.lookAt(...view.camera.target);
  camera.fov = (view.fieldRad * 180) / Math.PI;
  camera.aspect = view.width / view.height;
  camera.near = NEAR_MM;
  camera.far = FAR_MM;
  camera.updateProjectionMatrix();
  camera.updateMatrixWorld();
};

/**
 * Moves the stage on with every frame and puts the camera where its eye stands. While something moves, frames follow
 * each other and a slow machine draws them less sharp; at rest the picture is drawn once at its sharpest.
 */
export const CameraRig = ({ stage }: { readonly stage: Stage }) => {
  const { invalidate, setDpr } = useThree();
  const pace = useRef(createPace());
  const before = useRef({ at: 0, moving: false, sharpness: 1 });
  useEffect(() => {
    stage.setDraw(() => invalidate());
    invalidate();
    return () => stage.setDraw(() => undefined);
  }, [stage, invalidate]);
  useFrame(({ camera, gl }) => {
    const now = performance.now();
    const version = stage.posesVersion();
    const busy = stage.advance(now);
    if (stage.posesVersion() !== version) gl.shadowMap.needsUpdate = true;
    aim(camera as PerspectiveCamera, stage.view());
    stage.tellDrawn();
    const last = before.current;
    // Asked for since the last frame, however long that one took, or only just.
    const asked = stage.lastAsked();
    const moving = busy || asked >= last.at || now - asked < Math.max(REST_MS, REST_FRAMES * pace.current.frameMs());
    const sharpness = !moving ? 1 : last.moving ? pace.current.moving(now - last.at) : last.sharpness;
    if (sharpness !== last.sharpness) setDpr(fullSharpness() * sharpness);
    before.current = { at: now, moving, sharpness };
    if (moving) invalidate();
  }, FIRST);
  return null;
};
