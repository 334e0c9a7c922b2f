import {
  BoxGeometry,
  BufferAttribute,
  BufferGeometry,
  DoubleSide,
  EdgesGeometry,
  Group,
  LineBasicMaterial,
  LineSegments,
  Matrix4,
  Mesh,
  MeshBasicMaterial,
  MeshLambertMaterial,
} from 'three';
import type { Pose } from '../../../base/index.ts';
import type { PackedSolids, ReviewScene, TouchBox } from '../../../shop/index.ts';
import { colours, coordinates, directions } from './decode.ts';

export interface PictureColours {
  readonly ink: string;
  readonly faint: string;
  readonly petrol: string;
}

/** Writes a pose into a matrix of the library. */
export const poseMatrix = ({ turn: [x, y, z], at }: Pose): Matrix4 =>
  new Matrix4().set(x[0], y[0], z[0], at[0], x[1], y[1], z[1], at[1], x[2], y[2], z[2], at[2], 0, 0, 0, 1);

const lineGeometry = (text: string): BufferGeometry =>
  new BufferGeometry().setAttribute('position', new BufferAttribute(coordinates(text), 3));

const meshGeometry = ({ positions, normals, colours: paint }: PackedSolids): BufferGeometry =>
  new BufferGeometry()
    .setAttribute('position', new BufferAttribute(coordinates(positions), 3))
    .setAttribute('normal', new BufferAttribute(directions(normals), 3))
    .setAttribute('color', new BufferAttribute(colours(paint), 3));

/** Parts that move as one, ready to be placed. */
export interface Moving {
  readonly mover: string | null;
  readonly group: Group;
}

const moving = (mover: string | null, ...parts: readonly (Mesh | LineSegments)[]): Moving => {
  const group = new Group();
  group.matrixAutoUpdate = false;
  group.add(...parts);
  return { mover, group };
};

/** The cabinet and its vehicle as groups, one for each mover and one for what stands still. */
export const movingParts = (scene: ReviewScene, paint: PictureColours): readonly Moving[] => {
  const solid = new MeshLambertMaterial({ vertexColors: true, side: DoubleSide });
  const onFaces = solid.clone();
  onFaces.polygonOffset = true;
  onFaces.polygonOffsetFactor = -1;
  onFaces.polygonOffsetUnits = -4;
  const ink = new LineBasicMaterial({ color: paint.ink, transparent: true, opacity: 0.35 });
  const faint = new LineBasicMaterial({ color: paint.faint });
  const glass = new MeshBasicMaterial({
    color: paint.faint,
    transparent: true,
    opacity: 0.1,
    depthWrite: false,
    side: DoubleSide,
  });
  return [
    ...scene.solids.map((solids) =>
      moving(
        solids.mover,
        new Mesh(meshGeometry(solids), solids.onFaces ? onFaces : solid),
        new LineSegments(lineGeometry(solids.lines), ink),
      ),
    ),
    ...scene.vehicle.map((solids) =>
      moving(solids.mover, new Mesh(meshGeometry(solids), glass), new LineSegments(lineGeometry(solids.lines), faint)),
    ),
    moving(null, new LineSegments(lineGeometry(scene.vehicleLines), faint)),
  ];
};

/** A frame round what is chosen, seen through everything. */
export const frameOf = ({ from, size }: TouchBox, petrol: string): Group => {
  const box = new BoxGeometry(...size);
  box.translate(from[0] + size[0] / 2, from[1] + size[1] / 2, from[2] + size[2] / 2);
  const group = new Group();
  group.matrixAutoUpdate = false;
  const seenThrough = { transparent: true, depthTest: false } as const;
  const fill = new Mesh(box, new MeshBasicMaterial({ color: petrol, opacity: 0.25, ...seenThrough }));
  const edges = new LineSegments(new EdgesGeometry(box), new LineBasicMaterial({ color: petrol, ...seenThrough }));
  fill.renderOrder = 8;
  edges.renderOrder = 9;
  group.add(fill, edges);
  return group;
};
