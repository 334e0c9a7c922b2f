import { cross, length, type Pose, placed, scale, subtract, turned, type Vec2, type Vec3 } from '../../base/index.ts';

/** Linear red, green and blue, 0 to 1. */
export type Colour = Vec3;

/** Triangles as the graphics card takes them: three numbers a corner, two for the grain. */
export interface MeshData {
  readonly positions: number[];
  readonly normals: number[];
  readonly uvs: number[];
  readonly colours: number[];
}

/** Numbers to be read, in a list of either kind. */
export type Numbers = ArrayLike<number> & Iterable<number>;

/** The numbers of a mesh to be read. */
export type MeshNumbers = Readonly<Record<keyof MeshData, Numbers>>;

/** Line pieces: two ends of three numbers each. */
export type LineData = number[];

export const emptyMesh = (): MeshData => ({ positions: [], normals: [], uvs: [], colours: [] });

/** One corner of a triangle. `uv` is in millimetres along and across the grain. */
export interface Corner {
  readonly at: Vec3;
  readonly uv: Vec2;
  readonly shade: number;
}

/** Adds one corner. Hot loop: thousands of corners an edit, so the numbers go in one by one. */
export const pushCorner = (mesh: MeshData, at: Vec3, normal: Vec3, uv: Vec2, colour: Colour, shade: number): void => {
  mesh.positions.push(at[0], at[1], at[2]);
  mesh.normals.push(normal[0], normal[1], normal[2]);
  mesh.uvs.push(uv[0], uv[1]);
  mesh.colours.push(colour[0] * shade, colour[1] * shade, colour[2] * shade);
};

/** Puts a flat piece with one normal into the mesh; the corners run anticlockwise seen from outside. */
export const pushTriangles = (
  mesh: MeshData,
  corners: readonly Corner[],
  triangles: readonly (readonly [number, number, number])[],
  normal: Vec3,
  colour: Colour,
): void => {
  for (const triangle of triangles)
    for (const index of triangle) {
      const corner = corners[index];
      if (!corner) throw new RangeError(`pushTriangles: no corner ${index}`);
      pushCorner(mesh, corner.at, normal, corner.uv, colour, corner.shade);
    }
};

/** A quadrilateral none of whose corners turns in, in two triangles. */
export const FAN_OF_FOUR: readonly (readonly [number, number, number])[] = [
  [0, 1, 2],
  [0, 2, 3],
];

export const pushQuad = (
  mesh: MeshData,
  corners: readonly [Corner, Corner, Corner, Corner],
  normal: Vec3,
  colour: Colour,
): void => pushTriangles(mesh, corners, FAN_OF_FOUR, normal, colour);

export const pushLine = (lines: LineData, a: Vec3, b: Vec3): void => {
  lines.push(a[0], a[1], a[2], b[0], b[1], b[2]);
};

/** Outward normal of corners that run anticlockwise; null where they have no area. */
export const flatNormal = (corners: readonly Vec3[]): Vec3 | null => {
  const [hub] = corners;
  if (!hub) return null;
  let sum: Vec3 = [0, 0, 0];
  for (let i = 1; i + 1 < corners.length; i++) {
    const part = cross(subtract(corners[i] ?? hub, hub), subtract(corners[i + 1] ?? hub, hub));
    sum = [sum[0] + part[0], sum[1] + part[1], sum[2] + part[2]];
  }
  const size = length(sum);
  return size > 0 ? scale(sum, 1 / size) : null;
};

/** Carries points and directions of a local frame into the scene. */
export const carrier = (pose: Pose): { readonly point: (p: Vec3) => Vec3; readonly way: (d: Vec3) => Vec3 } => ({
  point: (p) => placed(pose, p),
  way: (d) => turned(pose, d),
});
