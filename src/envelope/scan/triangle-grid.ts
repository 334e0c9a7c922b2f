import type { ScanMesh } from './scan-mesh.ts';

/** Triangles sorted into cells of equal size: built in two passes, asked for the nearest triangle ring by ring. */
export interface TriangleGrid {
  readonly mesh: ScanMesh;
  readonly low: readonly [number, number, number];
  readonly cell: number;
  readonly counts: readonly [number, number, number];
  /** Where the triangles of each cell begin in `members`. */
  readonly starts: Uint32Array;
  readonly members: Uint32Array;
}

/** Cells a triangle: with about two, a cell on the surface holds a handful of triangles. */
const CELLS_A_TRIANGLE = 2;
const [FEWEST_CELLS, MOST_CELLS] = [64, 1 << 21];
/** Long triangles lie in many cells; when there are more entries than this a triangle, the cells are made wider. */
const MOST_ENTRIES_A_TRIANGLE = 24;

interface Extent {
  readonly low: readonly [number, number, number];
  readonly size: readonly [number, number, number];
}

const extentOf = (positions: Float64Array): Extent => {
  const low: [number, number, number] = [Infinity, Infinity, Infinity];
  const high: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  for (let i = 0; i < positions.length; i++) {
    const axis = (i % 3) as 0 | 1 | 2;
    const at = positions[i] ?? 0;
    if (at < low[axis]) low[axis] = at;
    if (at > high[axis]) high[axis] = at;
  }
  return { low, size: [high[0] - low[0], high[1] - low[1], high[2] - low[2]] };
};

type Spans = Int32Array;

/** Lowest and highest cell of a triangle on each axis, into `spans`. */
const spanOf = (grid: Pick<TriangleGrid, 'mesh' | 'low' | 'cell' | 'counts'>, t: number, spans: Spans): void => {
  const { positions, triangles } = grid.mesh;
  for (let axis = 0; axis < 3; axis++) {
    let least = Infinity;
    let most = -Infinity;
    for (let k = 0; k < 3; k++) {
      const at = positions[3 * (triangles[3 * t + k] ?? 0) + axis] ?? 0;
      if (at < least) least = at;
      if (at > most) most = at;
    }
    const last = (grid.counts[axis] ?? 1) - 1;
    const from = Math.floor((least - (grid.low[axis] ?? 0)) / grid.cell);
    const to = Math.floor((most - (grid.low[axis] ?? 0)) / grid.cell);
    spans[2 * axis] = Math.max(0, Math.min(last, from));
    spans[2 * axis + 1] = Math.max(0, Math.min(last, to));
  }
};

const eachCell = (
  grid: Pick<TriangleGrid, 'mesh' | 'low' | 'cell' | 'counts'>,
  spans: Spans,
  look: (cell: number) => void,
): void => {
  const [nx, ny] = grid.counts;
  for (let k = spans[4] ?? 0; k <= (spans[5] ?? 0); k++)
    for (let j = spans[2] ?? 0; j <= (spans[3] ?? 0); j++)
      for (let i = spans[0] ?? 0; i <= (spans[1] ?? 0); i++) look((k * ny + j) * nx + i);
};

const filled = (mesh: ScanMesh, { low, size }: Extent, cell: number): TriangleGrid | null => {
  const count = (axis: 0 | 1 | 2): number => Math.max(1, Math.ceil(size[axis] / cell));
  const frame = { mesh, low, cell, counts: [count(0), count(1), count(2)] as const };
  const starts = new Uint32Array(frame.counts[0] * frame.counts[1] * frame.counts[2] + 1);
  const spans = new Int32Array(6);
  const triangles = mesh.triangles.length / 3;
  let entries = 0;
  for (let t = 0; t < triangles; t++) {
    spanOf(frame, t, spans);
    eachCell(frame, spans, (at) => {
      starts[at + 1] = (starts[at + 1] ?? 0) + 1;
      entries++;
    });
    if (entries > MOST_ENTRIES_A_TRIANGLE * triangles + MOST_CELLS) return null;
  }
  for (let i = 1; i < starts.length; i++) starts[i] = (starts[i] ?? 0) + (starts[i - 1] ?? 0);
  const members = new Uint32Array(entries);
  const next = starts.slice();
  for (let t = 0; t < triangles; t++) {
    spanOf(frame, t, spans);
    eachCell(frame, spans, (at) => {
      const place = next[at] ?? 0;
      members[place] = t;
      next[at] = place + 1;
    });
  }
  return { ...frame, starts, members };
};

/** Throws on a mesh without triangles. */
export const makeTriangleGrid = (mesh: ScanMesh): TriangleGrid => {
  const triangles = mesh.triangles.length / 3;
  if (triangles === 0) throw new RangeError('makeTriangleGrid: a mesh without triangles');
  const extent = extentOf(mesh.positions);
  const longest = Math.max(...extent.size);
  const wanted = Math.max(FEWEST_CELLS, Math.min(MOST_CELLS, CELLS_A_TRIANGLE * triangles));
  // A flat scan has no height: every axis counts as at least a hundredth of the longest.
  const volume = extent.size.reduce((product, size) => product * Math.max(size, longest / 100), 1);
  for (let cell = Math.cbrt(volume / wanted); ; cell *= 2) {
    const grid = filled(mesh, extent, cell);
    if (grid) return grid;
  }
};

/** The nearest place of the mesh: set by `nearestOnMesh`. */
export interface MeshNear {
  triangle: number;
  distance: number;
  readonly to: Float64Array;
}

export const newMeshNear = (): MeshNear => ({ triangle: -1, distance: Infinity, to: new Float64Array(3) });

/** Nearest point of one triangle (Ericson's regions), kept in `near` when it beats what is there. Marked hot. */
const tryTriangle = ({ positions, triangles }: ScanMesh, t: number, p: Float64Array, near: MeshNear): void => {
  const [px, py, pz] = [p[0] ?? 0, p[1] ?? 0, p[2] ?? 0];
  const a = 3 * (triangles[3 * t] ?? 0);
  const b = 3 * (triangles[3 * t + 1] ?? 0);
  const c = 3 * (triangles[3 * t + 2] ?? 0);
  const [ax, ay, az] = [positions[a] ?? 0, positions[a + 1] ?? 0, positions[a + 2] ?? 0];
  const [abx, aby, abz] = [(positions[b] ?? 0) - ax, (positions[b + 1] ?? 0) - ay, (positions[b + 2] ?? 0) - az];
  const [acx, acy, acz] = [(positions[c] ?? 0) - ax, (positions[c + 1] ?? 0) - ay, (positions[c + 2] ?? 0) - az];
  const [apx, apy, apz] = [px - ax, py - ay, pz - az];
  const d1 = abx * apx + aby * apy + abz * apz;
  const d2 = acx * apx + acy * apy + acz * apz;
  const abab = abx * abx + aby * aby + abz * abz;
  const acac = acx * acx + acy * acy + acz * acz;
  const abac = abx * acx + aby * acy + abz * acz;
  const [d3, d4] = [d1 - abab, d2 - abac];
  const [d5, d6] = [d1 - abac, d2 - acac];
  const [va, vb, vc] = [d3 * d6 - d5 * d4, d5 * d2 - d1 * d6, d1 * d4 - d3 * d2];
  let v = 0;
  let w = 0;
  if (d1 <= 0 && d2 <= 0) v = 0;
  else if (d3 >= 0 && d4 <= d3) v = 1;
  else if (d6 >= 0 && d5 <= d6) w = 1;
  else if (vc <= 0 && d1 >= 0 && d3 <= 0) v = d1 / (d1 - d3);
  else if (vb <= 0 && d2 >= 0 && d6 <= 0) w = d2 / (d2 - d6);
  else if (va <= 0 && d4 - d3 >= 0 && d5 - d6 >= 0) {
    w = (d4 - d3) / (d4 - d3 + (d5 - d6));
    v = 1 - w;
  } else {
    v = vb / (va + vb + vc);
    w = vc / (va + vb + vc);
  }
  const [x, y, z] = [ax + v * abx + w * acx, ay + v * aby + w * acy, az + v * abz + w * acz];
  const distance = Math.sqrt((px - x) ** 2 + (py - y) ** 2 + (pz - z) ** 2);
  if (distance >= near.distance) return;
  near.distance = distance;
  near.triangle = t;
  near.to[0] = x;
  near.to[1] = y;
  near.to[2] = z;
};

/** Cells at this many steps from the middle one, on the shell of a cube. */
const lookAtShell = (
  grid: TriangleGrid,
  [ci, cj, ck]: readonly number[],
  ring: number,
  look: (cell: number) => void,
): void => {
  const [nx, ny, nz] = grid.counts;
  for (let k = Math.max(0, (ck ?? 0) - ring); k <= Math.min(nz - 1, (ck ?? 0) + ring); k++)
    for (let j = Math.max(0, (cj ?? 0) - ring); j <= Math.min(ny - 1, (cj ?? 0) + ring); j++) {
      const face = Math.abs(k - (ck ?? 0)) === ring || Math.abs(j - (cj ?? 0)) === ring;
      const step = face ? 1 : 2 * ring;
      for (let i = (ci ?? 0) - ring; i <= (ci ?? 0) + ring; i += Math.max(1, step))
        if (i >= 0 && i < nx) look((k * ny + j) * nx + i);
    }
};

/** Finds the place of the mesh nearest to `p` within `reach`, into `near`; triangle −1 where there is none. */
export const nearestOnMesh = (grid: TriangleGrid, p: Float64Array, reach: number, near: MeshNear): void => {
  near.triangle = -1;
  near.distance = reach;
  const at = [0, 1, 2].map((axis) => {
    const place = Math.floor(((p[axis] ?? 0) - (grid.low[axis] ?? 0)) / grid.cell);
    return Math.max(0, Math.min((grid.counts[axis] ?? 1) - 1, place));
  });
  const rings = Math.max(...grid.counts);
  for (let ring = 0; ring <= rings; ring++) {
    // Whatever lies in this shell is at least ring − 1 whole cells away.
    if ((ring - 1) * grid.cell > near.distance) return;
    lookAtShell(grid, at, ring, (cell) => {
      for (let i = grid.starts[cell] ?? 0; i < (grid.starts[cell + 1] ?? 0); i++)
        tryTriangle(grid.mesh, grid.members[i] ?? 0, p, near);
    });
  }
};
