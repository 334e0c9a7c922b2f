import { extend, useThree } from '@react-three/fiber';
import { useEffect, useMemo } from 'react';
import {
  DirectionalLight,
  Group,
  HemisphereLight,
  LineBasicMaterial,
  LineSegments,
  Mesh,
  MeshBasicMaterial,
  MeshLambertMaterial,
  OrthographicCamera,
  Plane,
  Vector3,
} from 'three';
import type { Box } from '../../../../base/index.ts';
import type { Catalog } from '../../../../catalog/index.ts';
import type { CargoSpace } from '../../../../envelope/index.ts';
import type { HalfSpace } from '../pick/pick.ts';
import type { SceneColours } from '../scene-colours.ts';
import type { Stage } from '../stage.ts';
import { CabinetView } from './cabinet-view.tsx';
import { CameraRig } from './camera-rig.tsx';
import { ContactShade } from './contact-shade.tsx';
import { FeelerLine } from './feeler-line.tsx';
import { Lights } from './lights.tsx';
import { createMaterials, disposeMaterials, showInsides } from './materials.ts';
import { SelectionMarks } from './selection-marks.tsx';
import { VehicleView } from './vehicle-view.tsx';

// Only what the scene is written with: the whole library would be three times as large.
extend({
  DirectionalLight,
  Group,
  HemisphereLight,
  LineBasicMaterial,
  LineSegments,
  Mesh,
  MeshBasicMaterial,
  MeshLambertMaterial,
  OrthographicCamera,
});

export interface BaySceneProps {
  readonly stage: Stage;
  readonly catalog: Catalog;
  readonly space: CargoSpace | null;
  readonly room: Box;
  readonly colours: SceneColours;
  readonly kept: HalfSpace | null;
}

/** Cuts everything off beyond the kept half-space. */
const Knife = ({ kept }: { readonly kept: HalfSpace | null }) => {
  const { gl, invalidate } = useThree();
  useEffect(() => {
    gl.clippingPlanes = kept
      ? [new Plane(new Vector3(-kept.normal[0], -kept.normal[1], -kept.normal[2]), kept.reach)]
      : [];
    gl.shadowMap.needsUpdate = true;
    invalidate();
  }, [gl, invalidate, kept]);
  return null;
};

/** Everything that is drawn in the bay. */
export const BayScene = ({ stage, catalog, space, room, colours, kept }: BaySceneProps) => {
  const materials = useMemo(createMaterials, []);
  useEffect(() => () => disposeMaterials(materials), [materials]);
  const cut = kept !== null;
  useEffect(() => showInsides(materials, cut), [materials, cut]);
  const floor = space?.bounds.min[2] ?? 0;
  return (
    <>
      <CameraRig stage={stage} />
      <Knife kept={kept} />
      <Lights room={room} colours={colours} />
      {space ? <VehicleView space={space} stage={stage} colours={colours} /> : null}
      <ContactShade floor={floor} colours={colours} />
      <CabinetView stage={stage} catalog={catalog} materials={materials} colours={colours} />
      <SelectionMarks stage={stage} space={space} colours={colours} />
      <FeelerLine colours={colours} />
    </>
  );
};
