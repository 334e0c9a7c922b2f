import { useThree } from '@react-three/fiber';
import { memo, useEffect, useMemo } from 'react';
import type { BufferGeometry } from 'three';
import type { Catalog } from '../../../../catalog/index.ts';
import { useEditorParts } from '../../state/use-editor.ts';
import { bayFitOut } from '../bay-fit-out.ts';
import type { SceneColours } from '../scene-colours.ts';
import { buildSolids, isBare, type RigidSolids } from '../solids/build-solids.ts';
import { type CarcassParts, createPartition } from '../solids/carcass-parts.ts';
import { FINISHES, type Finish } from '../solids/paints.ts';
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

interface CarcassViewProps {
  readonly stage: Stage;
  readonly parts: CarcassParts;
  readonly catalog: Catalog;
  readonly materials: Materials;
  readonly colours: SceneColours;
}

/** One carcass: its panels, gear, devices and hardware, each group where its mover stands. */
const CarcassView = memo(({ stage, parts, catalog, materials, colours }: CarcassViewProps) => {
  const gl = useThree((state) => state.gl);
  const groups = useMemo(() => buildSolids({ ...parts, catalog, triangulate }).map(loaded), [parts, catalog]);
  useEffect(() => {
    gl.shadowMap.needsUpdate = true;
    return () => unload(groups);
  }, [groups, gl]);
  return groups.map(({ mover, meshes, lines }) => (
    <MovingGroup key={mover ?? 'still'} stage={stage} mover={mover}>
      {meshes.map(([finish, geometry]) => (
        <mesh key={finish} geometry={geometry} material={materials[finish]} castShadow receiveShadow />
      ))}
      <lineSegments geometry={lines}>
        <lineBasicMaterial color={colours.ink} transparent opacity={colours.inkShare} />
      </lineSegments>
    </MovingGroup>
  ));
});

type CabinetViewProps = Omit<CarcassViewProps, 'parts'>;

/** The whole cabinet; only the carcasses that an edit touches are made anew. */
export const CabinetView = (props: CabinetViewProps) => {
  const { fitOut, gear } = useEditorParts((editor) => ({
    fitOut: bayFitOut(editor.fitOut),
    gear: editor.history.design.gear,
  }));
  const partition = useMemo(createPartition, []);
  const carcasses = useMemo(() => partition(fitOut, gear), [partition, fitOut, gear]);
  return carcasses.map((parts) => <CarcassView key={parts.carcass ?? 'none'} {...props} parts={parts} />);
};
