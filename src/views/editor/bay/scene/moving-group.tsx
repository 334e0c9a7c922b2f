import { useFrame } from '@react-three/fiber';
import { type ReactNode, useRef } from 'react';
import type { Group } from 'three';
import { HOME } from '../../../../base/index.ts';
import type { Stage } from '../stage.ts';
import { poseMatrix } from './geometry.ts';

/** After the stage has moved on, before anything is drawn. */
const SECOND = -1;

interface MovingGroupProps {
  readonly stage: Stage;
  readonly mover: string | null;
  readonly children: ReactNode;
}

/** What stands in it goes where its mover stands, in every frame. */
export const MovingGroup = ({ stage, mover, children }: MovingGroupProps) => {
  const group = useRef<Group>(null);
  useFrame(() => {
    if (mover === null || !group.current) return;
    poseMatrix(stage.poses().get(mover) ?? HOME, group.current.matrix);
    group.current.matrixWorldNeedsUpdate = true;
  }, SECOND);
  return (
    <group ref={group} matrixAutoUpdate={false}>
      {children}
    </group>
  );
};
