import { useFrame } from '@react-three/fiber';
import { type ReactNode, useRef } from 'react';
import type { Group } from 'three';
import { after, HOME } from '../../../../base/index.ts';
import type { Stage } from '../stage.ts';
import { poseMatrix } from './geometry.ts';

/** After the stage has moved on, before anything is drawn. */
export const SECOND = -1;

interface MovingGroupProps {
  readonly stage: Stage;
  readonly mover: string | null;
  /** The carcass or mount that it is part of: it goes where that is carried. */
  readonly carried?: string | null;
  readonly children: ReactNode;
}

/** What stands in it goes where its mover stands, and where its carcass is carried, in every frame. */
export const MovingGroup = ({ stage, mover, carried = null, children }: MovingGroupProps) => {
  const group = useRef<Group>(null);
  useFrame(() => {
    if (!group.current || (mover === null && carried === null)) return;
    const carriedTo = stage.carried(carried);
    group.current.visible = carriedTo !== null;
    const moved = (mover !== null && stage.poses().get(mover)) || HOME;
    poseMatrix(carriedTo === null || carriedTo === HOME ? moved : after(carriedTo, moved), group.current.matrix);
    group.current.matrixWorldNeedsUpdate = true;
  }, SECOND);
  return (
    <group ref={group} matrixAutoUpdate={false}>
      {children}
    </group>
  );
};
