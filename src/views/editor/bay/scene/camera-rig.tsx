import { useFrame, useThree } from '@react-three/fiber';
import { useEffect } from 'react';
import type { PerspectiveCamera } from 'three';
import { eyeOf } from '../camera/camera-state.ts';
import { FAR_MM, NEAR_MM } from '../camera/view.ts';
import type { Stage } from '../stage.ts';

/** First in the frame: everything else reads where the eye and the movers stand. */
const FIRST = -2;

/** Moves the stage on with every frame and puts the camera where its eye stands. */
export const CameraRig = ({ stage }: { readonly stage: Stage }) => {
  const invalidate = useThree((state) => state.invalidate);
  useEffect(() => {
    stage.invalidate = invalidate;
    invalidate();
    return () => {
      stage.invalidate = () => undefined;
    };
  }, [stage, invalidate]);
  useFrame(({ camera, gl }) => {
    const before = stage.posesVersion();
    const busy = stage.advance(performance.now());
    if (stage.posesVersion() !== before) gl.shadowMap.needsUpdate = true;
    const view = stage.view();
    const lens = camera as PerspectiveCamera;
    const [x, y, z] = eyeOf(view.camera);
    lens.up.set(0, 0, 1);
    lens.position.set(x, y, z);
    lens.lookAt(...view.camera.target);
    lens.fov = (view.fieldRad * 180) / Math.PI;
    lens.aspect = view.width / view.height;
    lens.near = NEAR_MM;
    lens.far = FAR_MM;
    lens.updateProjectionMatrix();
    lens.updateMatrixWorld();
    stage.tellDrawn();
    if (busy) invalidate();
  }, FIRST);
  return null;
};
