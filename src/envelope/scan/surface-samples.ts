import type { ScanMesh } from './scan-mesh.ts';

/** Places spread over a scan by area, with the side that each looks to: enough to draw it by, however fine it is. */
export interface SurfaceSamples {
  /** Three coordinates a place, in the unit of the mesh. */
  readonly at: Float32Array;
  /** Unit normals, three a place; zero for a triangle without area. */
  readonly normal: Float32Array;
}

/** Steps of a sequence that fills a square evenly (the plastic number's powers, Roberts 2018). */
const STEP_U = 0.7548776662466927;
const STEP_V = 0.5698402909980532;

/** Hot loop: twice the area of a triangle into `normal`, left unscaled; its length. */
const crossInto = (p: Float64Array, a: number, b: number, c: number, normal: Float64Array): number => {
  const [ux, uy, uz] = [
    (p[b] ?? 0) - (p[a] ?? 0),
    (p[b + 1] ?? 0) - (p[a + 1] ?? 0),
    (p[b + 2] ?? 0) - (p[a + 2] ?? 0),
  ];
  const [vx, vy, vz] = [
    (p[c] ?? 0) - (p[a] ?? 0),
    (p[c + 1] ?? 0) - (p[a + 1] ?? 0),
    (p[c + 2] ?? 0) - (p[a + 2] ?? 0),
  ];
  normal[0] = uy * vz - uz * vy;
  normal[1] = uz * vx - ux * vz;
  normal[2] = ux * vy - uy * vx;
  return Math.hypot(normal[0], normal[1], normal[2]);
};

/** About `count` places over the whole surface, each triangle its share by area. Same mesh, same places. */
export const surfaceSamples = ({ positions, triangles }: ScanMesh, count: number): SurfaceSamples => {
  const normal = new Float64Array(3);
  const corner = (i: number): number => 3 * (triangles[i] ?? 0);
  let total = 0;
  for (let t = 0; t < triangles.length; t += 3)
    total += crossInto(positions, corner(t), corner(t + 1), corner(t + 2), normal);
  const at = new Float32Array(3 * count);
  const normals = new Float32Array(3 * count);
  let [made, owed] = [0, 0];
  for (let t = 0; t < triangles.length && total > 0; t += 3) {
    const [a, b, c] = [corner(t), corner(t + 1), corner(t + 2)];
    const area = crossInto(positions, a, b, c, normal);
    owed += (area / total) * count;
    for (; owed >= 0.5 && made < count; owed -= 1, made++) {
      const [u, v] = [(0.5 + made * STEP_U) % 1, (0.5 + made * STEP_V) % 1];
      // The far half of the square folds back onto the triangle.
      const [s, r] = u + v > 1 ? [1 - u, 1 - v] : [u, v];
      for (let k = 0; k < 3; k++) {
        const from = positions[a + k] ?? 0;
        at[3 * made + k] = from + s * ((positions[b + k] ?? 0) - from) + r * ((positions[c + k] ?? 0) - from);
        normals[3 * made + k] = area === 0 ? 0 : (normal[k] ?? 0) / area;
      }
    }
  }
  return { at: at.subarray(0, 3 * made), normal: normals.subarray(0, 3 * made) };
};
