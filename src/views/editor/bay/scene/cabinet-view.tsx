import { useThree } from '@react-three/fiber';
import { memo, useEffect, useMemo } from 'react';
import type { BufferGeometry } from 'three';
import type { Catalog } from '../../../../catalog/index.ts';
import { createSolidBuilder, FINISHES, type Finish, isBare, type RigidSolids } from '../../../../shop/index.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import { bayFitOut } from '../bay-fit-out.ts';
import { createPartition, type RigidParts } from '../rigid-parts.ts';
import type { SceneColours } from '../scene-colours.ts';
import type { Stage } from '../stage.ts';
import { lineGeometry, meshGeometry, triangulate } from './geometry.ts';
import type { Materials } from './materials.ts';
import { MovingGroup } from './moving-group.tsx';

interface Loaded {
  readonly mover: string | null;
  readonly meshes: readonly (readonly [Finish, BufferGeometry])[];
  readonly lines: BufferGeometry;
}

const loaded = (solids: RigidSolids): Loaded => ({
  mover: solids.mover,
  meshes: FINISHES.filter((finish) => !isBare(solids.meshes[finish])).map(
    (finish) => [finish, meshGeometry(solids.meshes[finish])] as const,
  ),
  lines: lineGeometry(solids.lines),
});

const unload = (groups: readonly Loaded[]): void => {
  for (const { meshes, lines } of groups) {
    for (const [, geometry] of meshes) geometry.dispose();
    lines.dispose();
  }
};

interface RigidViewProps {
  readonly stage: Stage;
  readonly parts: RigidParts;
  readonly catalog: Catalog;
  readonly materials: Materials;
  readonly colours: SceneColours;
}

/** What moves as one, panels, gear, devices and hardware, where its mover stands. */
const RigidView = memo(({ stage, parts, catalog, materials, colours }: RigidViewProps) => {
  const gl = useThree((state) => state.gl);
  const build = useMemo(createSolidBuilder, []);
  const groups = useMemo(() => build({ ...parts, catalog, triangulate }).map(loaded), [build, parts, catalog]);
  useEffect(() => {
    gl.shadowMap.needsUpdate = true;
    return () => unload(groups);
  }, [groups, gl]);
  return groups.map(({ mover, meshes, lines }) => (
    <MovingGroup key={mover ?? 'still'} stage={stage} mover={mover} carried={parts.carried}>
      {meshes.map(([finish, geometry]) => (
        <mesh key={finish} geometry={geometry} material={materials[finish]} castShadow receiveShadow />
      ))}
      <lineSegments geometry={lines}>
        <lineBasicMaterial color={colours.ink} transparent opacity={colours.inkShare} />
      </lineSegments>
    </MovingGroup>
  ));
});

type CabinetViewProps = Omit<RigidViewProps, 'parts'>;

/** The whole cabinet; only what an edit touches is made anew. */
export const CabinetView = (props: CabinetViewProps) => {
  const { whole, gear, carried } = useEditorParts((editor) => ({
    whole: bayFitOut(editor.fitOut),
    gear: editor.history.design.gear,
    carried: editor.carrying !== null,
  }));
  // A carcass is carried empty.
  const fitOut = useMemo(
    () => (carried ? { ...whole, bodies: whole.bodies.filter(({ kind }) => kind !== 'gear') } : whole),
    [whole, carried],
  );
  const partition = useMemo(createPartition, []);
  const rigid = useMemo(() => partition(fitOut, gear), [partition, fitOut, gear]);
  return rigid.map((parts) => <RigidView key={`${parts.carried} ${parts.mover}`} {...props} parts={parts} />);
};
