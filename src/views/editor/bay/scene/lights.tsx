import { useMemo } from 'react';
import { Object3D } from 'three';
import { type Box, boxMiddle, boxSize } from '../../../../base/index.ts';
import type { SceneColours } from '../scene-colours.ts';

/** Where the sun stands over the shoulder of someone at the hatch: behind, to the right, above, in parts of the room. */
const SUN_FROM = [-1.35, -0.55, 1.5] as const;

interface LightsProps {
  readonly room: Box;
  readonly colours: SceneColours;
}

/** Light from the sky all round, and one sun that throws shade. */
export const Lights = ({ room, colours }: LightsProps) => {
  const middle = boxMiddle(room);
  const reach = Math.max(...boxSize(room)) * 0.95;
  const target = useMemo(() => new Object3D(), []);
  const [x, y, z] = middle;
  return (
    <>
      <hemisphereLight args={[colours.skyLight, colours.groundLight, colours.ambient]} position={[0, 0, 1]} />
      <primitive object={target} position={[x, y, z]} />
      <directionalLight
        castShadow
        color={colours.skyLight}
        intensity={colours.sun}
        position={[x + SUN_FROM[0] * reach, y + SUN_FROM[1] * reach, z + SUN_FROM[2] * reach]}
        target={target}
        shadow-mapSize={[1024, 1024]}
        shadow-bias={-0.0006}
        shadow-normalBias={4}
        shadow-radius={3}
      >
        <orthographicCamera attach="shadow-camera" args={[-reach, reach, reach, -reach, 1, reach * 5]} />
      </directionalLight>
    </>
  );
};
