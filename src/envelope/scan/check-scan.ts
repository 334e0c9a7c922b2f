import { MM_PER_INCH } from '../../base/index.ts';
import type { ScanMesh } from './scan-mesh.ts';

/** Lengths that the unit of a file may stand for. */
export const SCAN_UNITS = { mm: 1, cm: 10, in: MM_PER_INCH, ft: 12 * MM_PER_INCH, m: 1000 } as const;
export type ScanUnit = keyof typeof SCAN_UNITS;
const UNIT_NAMES = Object.keys(SCAN_UNITS) as readonly ScanUnit[];

/** What a scan is like, so that its faults can be told plainly. A scan of a room is open by nature; a note, not a stop. */
export interface ScanCheck {
  readonly points: number;
  readonly triangles: number;
  /** Edges that only one triangle meets. */
  readonly openEdges: number;
  /** Edges whose two triangles look to opposite sides. */
  readonly flippedEdges: number;
  /** Edges that three or more triangles meet. */
  readonly crowdedEdges: number;
  /** Triangles without area. */
  readonly flatTriangles: number;
  readonly closed: boolean;
  /** True when it is closed and encloses a negative volume: its outside is in. */
  readonly insideOut: boolean;
  /** Size of the box around it, in its own unit. */
  readonly size: readonly [number, number, number];
}

interface Edges {
  readonly open: number;
  readonly flipped: number;
  readonly crowded: number;
}

/** Edges by their two points in one open table; a byte each for the triangles that run along and against them. */
const countEdges = ({ positions, triangles }: ScanMesh): Edges => {
  const points = positions.length / 3;
  let size = 1;
  while (size < 2 * triangles.length) size *= 2;
  const keys = new Float64Array(size).fill(-1);
  const along = new Uint8Array(size);
  const against = new Uint8Array(size);
  for (let corner = 0; corner < triangles.length; corner++) {
    const a = triangles[corner] ?? 0;
    const b = triangles[corner % 3 === 2 ? corner - 2 : corner + 1] ?? 0;
    const [low, high] = a < b ? [a, b] : [b, a];
    const key = low * points + high;
    let slot = (Math.imul(low, 0x9e3779b1) ^ Math.imul(high, 0x85ebca6b)) & (size - 1);
    while (keys[slot] !== -1 && keys[slot] !== key) slot = (slot + 1) & (size - 1);
    keys[slot] = key;
    const counts = a < b ? along : against;
    counts[slot] = Math.min(255, (counts[slot] ?? 0) + 1);
  }
  let [open, flipped, crowded] = [0, 0, 0];
  for (let slot = 0; slot < size; slot++) {
    if (keys[slot] === -1) continue;
    const [one, other] = [along[slot] ?? 0, against[slot] ?? 0];
    if (one + other === 1) open++;
    else if (one + other > 2) crowded++;
    else if (one !== other) flipped++;
  }
  return { open, flipped, crowded };
};

/** Six times the enclosed volume, and how many triangles have no area at all. */
const volumeAndFlat = ({ positions, triangles }: ScanMesh): { readonly six: number; readonly flat: number } => {
  let six = 0;
  let flat = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [3 * (triangles[t] ?? 0), 3 * (triangles[t + 1] ?? 0), 3 * (triangles[t + 2] ?? 0)];
    const [ax, ay, az] = [positions[a] ?? 0, positions[a + 1] ?? 0, positions[a + 2] ?? 0];
    const [bx, by, bz] = [positions[b] ?? 0, positions[b + 1] ?? 0, positions[b + 2] ?? 0];
    const [cx, cy, cz] = [positions[c] ?? 0, positions[c + 1] ?? 0, positions[c + 2] ?? 0];
    six += ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
    const nx = (by - ay) * (cz - az) - (bz - az) * (cy - ay);
    const ny = (bz - az) * (cx - ax) - (bx - ax) * (cz - az);
    const nz = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
    if (nx === 0 && ny === 0 && nz === 0) flat++;
  }
  return { six, flat };
};

const sizeOf = ({ positions }: ScanMesh): readonly [number, number, number] => {
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  for (let i = 0; i < positions.length; i++) {
    const axis = i % 3;
    const at = positions[i] ?? 0;
    if (at < (low[axis] ?? 0)) low[axis] = at;
    if (at > (high[axis] ?? 0)) high[axis] = at;
  }
  const span = (axis: number): number => Math.max(0, (high[axis] ?? 0) - (low[axis] ?? 0));
  return [span(0), span(1), span(2)];
};

/** Looks a scan over: holes, triangles that look the wrong way, triangles without area, size. */
export const checkScan = (mesh: ScanMesh): ScanCheck => {
  const { open, flipped, crowded } = countEdges(mesh);
  const { six, flat } = volumeAndFlat(mesh);
  const closed = open === 0 && crowded === 0 && flipped === 0;
  return {
    points: mesh.positions.length / 3,
    triangles: mesh.triangles.length / 3,
    openEdges: open,
    flippedEdges: flipped,
    crowdedEdges: crowded,
    flatTriangles: flat,
    closed,
    insideOut: closed && six < 0,
    size: sizeOf(mesh),
  };
};

/** The unit whose length brings `own` closest to `expectedMm`, by ratio. */
export const unitFor = (own: number, expectedMm: number): ScanUnit =>
  UNIT_NAMES.reduce((best, unit) => {
    const off = (name: ScanUnit): number => Math.abs(Math.log((own * SCAN_UNITS[name]) / expectedMm));
    return off(unit) < off(best) ? unit : best;
  });

/**
 * What a unit of the file most likely stands for, from its longest side against that of the taped cargo space. Works
 * when the scan covers the cargo space and not the whole street: units stand at least 2.5 apart, so it may be half
 * again as long.
 */
export const guessScanUnit = (check: ScanCheck, longestTapedMm: number): ScanUnit =>
  unitFor(Math.max(...check.size), longestTapedMm);
