import {
  AmbientLight,
  BufferAttribute,
  BufferGeometry,
  DirectionalLight,
  DoubleSide,
  LineBasicMaterial,
  LineSegments,
  Mesh,
  MeshBasicMaterial,
  MeshLambertMaterial,
  type Object3D,
  PerspectiveCamera,
  Scene,
  WebGLRenderer,
} from 'three';
import type { Box } from '../../../../../base/index.ts';
import type { Catalog } from '../../../../../catalog/index.ts';
import type { CargoSpace } from '../../../../../envelope/index.ts';
import type { FitOut } from '../../../../../fitout/index.ts';
import {
  buildSolids,
  emptyMesh,
  FINISHES,
  fullLight,
  isBare,
  type LineData,
  type MeshData,
  type MeshNumbers,
  type Numbers,
  pushConvex,
  stationRings,
  triangulate,
} from '../../../../../shop/index.ts';
import { type CameraState, eyeOf } from '../../../../camera-state.ts';
import { viewpointCamera } from '../../../bay/camera/viewpoints.ts';
import { type SceneColours, sceneColours } from '../../../bay/scene-colours.ts';
import type { Viewpoint } from '../../../state/store.ts';
import type { Side } from './use-sides.ts';

const FIELD_RAD = 0.82;
const PICTURE = { width: 720, height: 560 } as const;
const ASPECT = PICTURE.width / PICTURE.height;

export interface BayPictureInput {
  readonly catalog: Catalog;
  readonly room: Box;
  readonly floorUp: number;
  readonly viewpoint: Viewpoint;
  readonly theme: 'light' | 'dark';
}

export interface BaySide extends Pick<Side, 'design' | 'fitout'> {
  /** The cargo space of this side, where it is known. */
  readonly space: CargoSpace | null;
  /** What is marked as different. */
  readonly touched: FitOut['bodies'];
}

const numbers = (values: Numbers, size = 3): BufferAttribute => new BufferAttribute(Float32Array.from(values), size);

const meshGeometry = ({ positions, normals, colours }: MeshNumbers): BufferGeometry =>
  new BufferGeometry()
    .setAttribute('position', numbers(positions))
    .setAttribute('normal', numbers(normals))
    .setAttribute('color', numbers(colours));

const linesOf = (lines: Numbers, material: LineBasicMaterial): LineSegments =>
  new LineSegments(new BufferGeometry().setAttribute('position', numbers(lines)), material);

const cabinet = ({ fitout, design }: BaySide, catalog: Catalog, colours: SceneColours): readonly Object3D[] => {
  const solid = new MeshLambertMaterial({ vertexColors: true, side: DoubleSide });
  // Hardware lies on the face of panels and is drawn over them.
  const onFaces = new MeshLambertMaterial({ vertexColors: true, side: DoubleSide });
  onFaces.polygonOffset = true;
  onFaces.polygonOffsetFactor = -1;
  onFaces.polygonOffsetUnits = -4;
  const ink = new LineBasicMaterial({ color: colours.ink, transparent: true, opacity: colours.inkShare });
  // What hangs on a hatch would hide the cabinet behind it: the picture is of the open vehicle.
  const standing = { ...fitout, bodies: fitout.bodies.filter(({ carcass }) => carcass !== null) };
  return buildSolids({ fitOut: standing, gear: design.gear, catalog, triangulate }).flatMap(({ meshes, lines }) => [
    ...FINISHES.filter((finish) => !isBare(meshes[finish])).map(
      (finish) => new Mesh(meshGeometry(meshes[finish]), finish === 'fittings' ? onFaces : solid),
    ),
    linesOf(lines, ink),
  ]);
};

/** Seen through everything: a thing behind a door may be what changed. */
const marks = ({ touched }: BaySide, { petrol }: SceneColours): readonly Object3D[] => {
  const [mesh, lines]: [MeshData, LineData] = [emptyMesh(), []];
  for (const { shape } of touched) pushConvex(shape, { mesh, lines, colour: [1, 1, 1], shadeAt: fullLight });
  if (isBare(mesh)) return [];
  const through = { color: petrol, transparent: true, depthTest: false, depthWrite: false } as const;
  const fill = new Mesh(meshGeometry(mesh), new MeshBasicMaterial({ ...through, opacity: 0.16 }));
  const edges = linesOf(lines, new LineBasicMaterial(through));
  fill.renderOrder = 8;
  edges.renderOrder = 9;
  return [fill, edges];
};

const sceneOf = (side: BaySide, camera: CameraState, { catalog, theme }: BayPictureInput): Scene => {
  const colours = sceneColours(theme);
  const scene = new Scene();
  const sun = new DirectionalLight(colours.skyLight, 1.5);
  const [x, y, z] = eyeOf(camera);
  sun.position.set(x - 300, y + 500, z + 900);
  sun.target.position.set(...camera.target);
  const vehicle = side.space ? stationRings(side.space.sections) : [];
  scene.add(
    new AmbientLight('#ffffff', 1.9),
    sun,
    sun.target,
    linesOf(vehicle, new LineBasicMaterial({ color: colours.vehicleLine })),
    ...cabinet(side, catalog, colours),
    ...marks(side, colours),
  );
  return scene;
};

const release = (scene: Scene): void =>
  scene.traverse((thing) => {
    if (!(thing instanceof Mesh || thing instanceof LineSegments)) return;
    thing.geometry.dispose();
    for (const material of [thing.material].flat()) material.dispose();
  });

/**
 * A picture of each side from one place, what differs marked in petrol, as addresses of images. Throws where the
 * browser cannot draw in three dimensions.
 */
export const bayPictures = (sides: readonly BaySide[], input: BayPictureInput): readonly string[] => {
  const renderer = new WebGLRenderer({ antialias: true, alpha: true, preserveDrawingBuffer: true });
  try {
    renderer.setPixelRatio(1);
    renderer.setSize(PICTURE.width, PICTURE.height, false);
    const lens = new PerspectiveCamera((FIELD_RAD * 180) / Math.PI, ASPECT, 60, 30_000);
    const camera = viewpointCamera(
      input.viewpoint,
      { room: input.room, floorUp: input.floorUp },
      { fieldRad: FIELD_RAD, aspect: ASPECT },
    );
    lens.up.set(0, 0, 1);
    lens.position.set(...eyeOf(camera));
    lens.lookAt(...camera.target);
    return sides.map((side) => {
      const scene = sceneOf(side, camera, input);
      renderer.render(scene, lens);
      release(scene);
      return renderer.domElement.toDataURL('image/png');
    });
  } finally {
    renderer.dispose();
    renderer.forceContextLoss();
  }
};
