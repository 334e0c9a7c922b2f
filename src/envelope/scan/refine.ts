import {
  add,
  after,
  cross,
  distance,
  dot,
  inverse,
  length,
  type Pose,
  placed,
  ROUNDING_MM,
  ROUNDING_RAD,
  scale,
  subtract,
  turnAbout,
  turned,
  type Vec3,
} from '../../base/index.ts';
import { factored, solvedBy } from '../adjust/cholesky.ts';
import type { MarkPair } from './align-marks.ts';
import { nearestOnMesh, newMeshNear, type TriangleGrid } from './triangle-grid.ts';

export interface RefineOptions {
  /** One standard deviation of a taped point and of a mark picked in the scan (mm). */
  readonly tapeSigma: number;
  readonly markSigma: number;
  /** Samples further than this from the scan are holes in it and say nothing (mm). */
  readonly reach: number;
}

export interface Refined {
  readonly pose: Pose;
  /** Root mean square distance of the samples that were fitted. */
  readonly rmsMm: number;
  /** Share of all samples that were fitted. */
  readonly fitted: number;
  readonly rounds: number;
  readonly settled: boolean;
}

const MOST_ROUNDS = 40;
/** A sample with the plane of the scan next to it: fitted along the normal only, so that it may slide along trim. */
interface Match {
  readonly sample: Vec3;
  readonly near: Vec3;
  readonly normal: Vec3;
  readonly off: number;
}

/** Samples off by more than three spreads of the rest are obstacles, gaps or misreadings and are not fitted. */
const FITTED_SPREADS = 3;
/** The median of |normal| is this part of its standard deviation. */
const MEDIAN_SHARE = 0.6745;

const fittedOf = (matches: readonly Match[], tapeSigma: number): readonly Match[] => {
  const offs = matches.map(({ off }) => off).toSorted((a, b) => a - b);
  const spread = (offs[offs.length >> 1] ?? 0) / MEDIAN_SHARE;
  const most = FITTED_SPREADS * Math.max(tapeSigma, spread);
  return matches.filter(({ off }) => off <= most);
};

const normalAt = ({ mesh }: TriangleGrid, triangle: number): Vec3 => {
  const corner = (k: number): Vec3 => {
    const at = 3 * (mesh.triangles[3 * triangle + k] ?? 0);
    return [mesh.positions[at] ?? 0, mesh.positions[at + 1] ?? 0, mesh.positions[at + 2] ?? 0];
  };
  const [a, b, c] = [corner(0), corner(1), corner(2)];
  const normal = cross(subtract(b, a), subtract(c, a));
  const size = length(normal);
  return size > 0 ? scale(normal, 1 / size) : [0, 0, 0];
};

const matchesOf = (samples: readonly Vec3[], grid: TriangleGrid, pose: Pose, reach: number): readonly Match[] => {
  const back = inverse(pose);
  const near = newMeshNear();
  const matches: Match[] = [];
  for (const sample of samples) {
    nearestOnMesh(grid, Float64Array.from(placed(back, sample)), reach, near);
    if (near.triangle < 0) continue;
    const normal = turned(pose, normalAt(grid, near.triangle));
    const to = placed(pose, [near.to[0] ?? 0, near.to[1] ?? 0, near.to[2] ?? 0]);
    matches.push({ sample, near: to, normal, off: near.distance });
  }
  return matches;
};

interface Normal6 {
  readonly matrix: Float64Array;
  readonly right: Float64Array;
}

/** Adds an equation row · (ω, τ) = value; ω turns about `hub`, in units of `arm`, so that all six unknowns are lengths. */
const addRow = ({ matrix, right }: Normal6, row: readonly number[], value: number, weight: number): void => {
  for (let i = 0; i < 6; i++) {
    right[i] = (right[i] ?? 0) + weight * (row[i] ?? 0) * value;
    for (let j = 0; j < 6; j++) matrix[6 * i + j] = (matrix[6 * i + j] ?? 0) + weight * (row[i] ?? 0) * (row[j] ?? 0);
  }
};

const rowFor = (at: Vec3, direction: Vec3, hub: Vec3, arm: number): readonly number[] => {
  const spin = scale(cross(subtract(at, hub), direction), 1 / arm);
  return [...spin, ...direction];
};

const AXES: readonly Vec3[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

const stepOf = (
  matches: readonly Match[],
  marks: readonly MarkPair[],
  pose: Pose,
  options: RefineOptions,
): { readonly pose: Pose; readonly size: number } => {
  const normal: Normal6 = { matrix: new Float64Array(36), right: new Float64Array(6) };
  const hub = scale(
    matches.reduce((sum, { near }) => add(sum, near), [0, 0, 0] as Vec3),
    1 / Math.max(1, matches.length),
  );
  const arm = matches.reduce((most, { near }) => Math.max(most, distance(near, hub)), 1);
  for (const { sample, near, normal: direction } of matches)
    addRow(normal, rowFor(near, direction, hub, arm), dot(direction, subtract(sample, near)), options.tapeSigma ** -2);
  for (const { scan, vehicle } of marks) {
    const at = placed(pose, scan);
    for (const axis of AXES)
      addRow(normal, rowFor(at, axis, hub, arm), dot(axis, subtract(vehicle, at)), options.markSigma ** -2);
  }
  const x = solvedBy(factored(normal.matrix, 6), normal.right);
  const spin: Vec3 = [(x[0] ?? 0) / arm, (x[1] ?? 0) / arm, (x[2] ?? 0) / arm];
  const move: Vec3 = [x[3] ?? 0, x[4] ?? 0, x[5] ?? 0];
  const angle = length(spin);
  const turn = angle > ROUNDING_RAD ? after(turnAbout(hub, spin, angle), pose) : pose;
  return { pose: { turn: turn.turn, at: add(turn.at, move) }, size: angle * arm + length(move) };
};

/** Settled when a round moves no part of the scan by more than a thousandth of what anyone could see. */
const SETTLED_MM = ROUNDING_MM * 1000;

/**
 * Brings a scan that stands roughly right onto the taped sections: each sample is drawn to the plane of the scan next
 * to it, the marks hold what the sections leave open (a straight wall may slide), the worst samples are left out.
 * Repeats until nothing moves. Same input, same result: samples keep their order, ties fall to the earlier one.
 */
export const refineScan = (
  samples: readonly Vec3[],
  grid: TriangleGrid,
  marks: readonly MarkPair[],
  start: Pose,
  options: RefineOptions,
): Refined => {
  let pose = start;
  for (let round = 1; ; round++) {
    const all = matchesOf(samples, grid, pose, options.reach);
    const kept = fittedOf(all, options.tapeSigma);
    const next = stepOf(kept, marks, pose, options);
    const settled = next.size <= SETTLED_MM;
    if (settled || round === MOST_ROUNDS || kept.length === 0) {
      const square = kept.reduce((sum, { off }) => sum + off * off, 0);
      const rmsMm = kept.length === 0 ? Infinity : Math.sqrt(square / kept.length);
      return { pose, rmsMm, fitted: samples.length === 0 ? 0 : kept.length / samples.length, rounds: round, settled };
    }
    pose = next.pose;
  }
};
