import { BufferGeometry, Float32BufferAttribute, Matrix4, ShapeUtils, Vector2 } from 'three';
import type { Pose } from '../../../../base/index.ts';
import type { MeshNumbers, Numbers, Triangulate } from '../../../../shop/index.ts';

export const meshGeometry = (mesh: MeshNumbers): BufferGeometry => {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new Float32BufferAttribute(mesh.positions, 3));
  geometry.setAttribute('normal', new Float32BufferAttribute(mesh.normals, 3));
  geometry.setAttribute('uv', new Float32BufferAttribute(mesh.uvs, 2));
  geometry.setAttribute('color', new Float32BufferAttribute(mesh.colours, 3));
  return geometry;
};

export const lineGeometry = (lines: Numbers): BufferGeometry => {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new Float32BufferAttribute(lines, 3));
  return geometry;
};

/** Loose triangles with their flat normals. */
export const facesGeometry = (positions: readonly number[]): BufferGeometry => {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new Float32BufferAttribute(positions, 3));
  geometry.computeVertexNormals();
  return geometry;
};

/** Ear clipping, as the library brings it. */
export const triangulate: Triangulate = (outer, holes) => {
  const points = (ring: readonly (readonly [number, number])[]): Vector2[] => ring.map(([x, y]) => new Vector2(x, y));
  // The library wants holes the other way round than the outer edge.
  const faces = ShapeUtils.triangulateShape(
    points(outer),
    holes.map((hole) => points(hole.toReversed())),
  );
  const start: number[] = [];
  let next = outer.length;
  for (const hole of holes) {
    start.push(next);
    next += hole.length;
  }
  // Back from the reversed holes to the order of the rings as given.
  const given = (index: number): number => {
    const hole = start.findLastIndex((from) => index >= from);
    if (hole < 0) return index;
    const from = start[hole] ?? 0;
    const count = holes[hole]?.length ?? 0;
    return from + (count - 1 - (index - from));
  };
  return faces.map(([a = 0, b = 0, c = 0]) => [given(a), given(b), given(c)] as const);
};

/** Writes a pose into a matrix of the library. */
export const poseMatrix = ({ turn: [x, y, z], at }: Pose, into: Matrix4 = new Matrix4()): Matrix4 =>
  into.set(x[0], y[0], z[0], at[0], x[1], y[1], z[1], at[1], x[2], y[2], z[2], at[2], 0, 0, 0, 1);
