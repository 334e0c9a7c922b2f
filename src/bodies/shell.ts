import { boxAround, boxMiddle, type Vec3 } from '../base/index.ts';

/**
 * A closed skin of triangles: three coordinates a point, three point indices a triangle, anticlockwise seen from
 * outside. Points are shared by index, so that every edge is met by two triangles.
 */
export interface Shell {
  readonly positions: Float64Array | readonly number[];
  readonly triangles: Uint32Array | readonly number[];
}

export type Triangle = readonly [Vec3, Vec3, Vec3];

/** The point of that index. Throws RangeError on an index the shell does not have. */
export const shellPoint = (shell: Shell, index: number): Vec3 => {
  const x = shell.positions[3 * index];
  const y = shell.positions[3 * index + 1];
  const z = shell.positions[3 * index + 2];
  if (x === undefined || y === undefined || z === undefined) throw new RangeError(`shell has no point ${index}`);
  return [x, y, z];
};

const cornerIndex = (shell: Shell, corner: number): number => {
  const index = shell.triangles[corner];
  if (index === undefined) throw new RangeError(`shell has no corner ${corner}`);
  return index;
};

/** Corners of every triangle, in order. */
export const shellTriangles = (shell: Shell): readonly Triangle[] => {
  const points: Vec3[] = [];
  for (let i = 0; 3 * i < shell.positions.length; i++) points.push(shellPoint(shell, i));
  const corner = (index: number): Vec3 => {
    const point = points[cornerIndex(shell, index)];
    if (!point) throw new RangeError(`shell has no point for corner ${index}`);
    return point;
  };
  const triangles: Triangle[] = [];
  for (let i = 0; i < shell.triangles.length; i += 3) triangles.push([corner(i), corner(i + 1), corner(i + 2)]);
  return triangles;
};

/** Sums over the tetrahedra from `hub` to each triangle: six times the volume, and its first moments. */
const moments = (shell: Shell, hub: Vec3): { six: number; x: number; y: number; z: number } => {
  const sum = { six: 0, x: 0, y: 0, z: 0 };
  for (const [a, b, c] of shellTriangles(shell)) {
    const [ax, ay, az] = [a[0] - hub[0], a[1] - hub[1], a[2] - hub[2]];
    const [bx, by, bz] = [b[0] - hub[0], b[1] - hub[1], b[2] - hub[2]];
    const [cx, cy, cz] = [c[0] - hub[0], c[1] - hub[1], c[2] - hub[2]];
    const six = ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
    sum.six += six;
    sum.x += six * (ax + bx + cx);
    sum.y += six * (ay + by + cy);
    sum.z += six * (az + bz + cz);
  }
  return sum;
};

/** The middle of the box around the shell: sums taken from there keep the most digits. */
const hubOf = (shell: Shell): Vec3 => {
  const corners = shellTriangles(shell).flat();
  return corners.length === 0 ? [0, 0, 0] : boxMiddle(boxAround(corners));
};

/** Enclosed volume in mm³ by the divergence theorem, exact but for rounding; negative if it is inside out. */
export const shellVolume = (shell: Shell): number => moments(shell, hubOf(shell)).six / 6;

/** Centre of the enclosed volume. Throws RangeError on a shell that encloses nothing. */
export const shellCentroid = (shell: Shell): Vec3 => {
  const hub = hubOf(shell);
  const { six, x, y, z } = moments(shell, hub);
  if (six === 0) throw new RangeError(`shellCentroid: shell of ${shell.triangles.length / 3} triangles has no volume`);
  return [hub[0] + x / (4 * six), hub[1] + y / (4 * six), hub[2] + z / (4 * six)];
};

/** True when every directed edge is met exactly once by its opposite: no hole, no fin, one orientation. */
export const shellIsClosed = (shell: Shell): boolean => {
  const edges = new Map<string, number>();
  for (let i = 0; i < shell.triangles.length; i += 3) {
    const [a, b, c] = [cornerIndex(shell, i), cornerIndex(shell, i + 1), cornerIndex(shell, i + 2)];
    for (const key of [`${a}>${b}`, `${b}>${c}`, `${c}>${a}`]) edges.set(key, (edges.get(key) ?? 0) + 1);
  }
  for (const [key, count] of edges) {
    const [from, to] = key.split('>');
    if (from === to || count !== 1 || edges.get(`${to}>${from}`) !== 1) return false;
  }
  return edges.size > 0;
};
