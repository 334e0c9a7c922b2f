import {
  add,
  bad,
  cross,
  distance,
  good,
  length,
  type Pose,
  placed,
  type Result,
  scale,
  subtract,
  turned,
  type Vec3,
} from '../../base/index.ts';
import { SCAN_UNITS, type ScanUnit, unitFor } from './check-scan.ts';

/** One mark seen in the scan (mm, scan axes) and where the survey has it (vehicle axes). */
export interface MarkPair {
  readonly scan: Vec3;
  readonly vehicle: Vec3;
}

const middleOf = (points: readonly Vec3[]): Vec3 => scale(points.reduce(add, [0, 0, 0]), 1 / points.length);

const SWEEPS = 60;

/** The eigenvector of the greatest eigenvalue of a symmetric 4 × 4 matrix (Jacobi rotations). */
const greatestEigenvector = (given: readonly (readonly number[])[]): readonly number[] => {
  const a = given.map((row) => [...row]);
  const v = [0, 1, 2, 3].map((i) => [0, 1, 2, 3].map((j) => (i === j ? 1 : 0)));
  const get = (m: number[][], i: number, j: number): number => m[i]?.[j] ?? 0;
  const set = (m: number[][], i: number, j: number, value: number): void => {
    const row = m[i];
    if (row) row[j] = value;
  };
  for (let sweep = 0; sweep < SWEEPS; sweep++)
    for (let p = 0; p < 3; p++)
      for (let q = p + 1; q < 4; q++) {
        const off = get(a, p, q);
        if (off === 0) continue;
        const theta = (get(a, q, q) - get(a, p, p)) / (2 * off);
        const t = (theta >= 0 ? 1 : -1) / (Math.abs(theta) + Math.sqrt(theta * theta + 1));
        const c = 1 / Math.sqrt(t * t + 1);
        const s = t * c;
        for (let k = 0; k < 4; k++) {
          const [kp, kq] = [get(a, k, p), get(a, k, q)];
          set(a, k, p, c * kp - s * kq);
          set(a, k, q, s * kp + c * kq);
        }
        for (let k = 0; k < 4; k++) {
          const [pk, qk] = [get(a, p, k), get(a, q, k)];
          set(a, p, k, c * pk - s * qk);
          set(a, q, k, s * pk + c * qk);
          const [vp, vq] = [get(v, k, p), get(v, k, q)];
          set(v, k, p, c * vp - s * vq);
          set(v, k, q, s * vp + c * vq);
        }
      }
  const best = [0, 1, 2, 3].reduce((most, i) => (get(a, i, i) > get(a, most, most) ? i : most));
  return [0, 1, 2, 3].map((i) => get(v, i, best));
};

/** The rigid placement that brings the scan's marks onto the vehicle's with the least square error (Horn 1987). */
export const poseOfMarks = (pairs: readonly MarkPair[]): Pose => {
  const [from, to] = [middleOf(pairs.map((pair) => pair.scan)), middleOf(pairs.map((pair) => pair.vehicle))];
  const s = [0, 1, 2].map(() => [0, 0, 0]);
  for (const pair of pairs) {
    const [p, q] = [subtract(pair.scan, from), subtract(pair.vehicle, to)];
    for (const i of [0, 1, 2] as const)
      for (const j of [0, 1, 2] as const) {
        const row = s[i];
        if (row) row[j] = (row[j] ?? 0) + p[i] * q[j];
      }
  }
  const at = (i: number, j: number): number => s[i]?.[j] ?? 0;
  const [xx, xy, xz] = [at(0, 0), at(0, 1), at(0, 2)];
  const [yx, yy, yz] = [at(1, 0), at(1, 1), at(1, 2)];
  const [zx, zy, zz] = [at(2, 0), at(2, 1), at(2, 2)];
  const [w = 1, x = 0, y = 0, z = 0] = greatestEigenvector([
    [xx + yy + zz, yz - zy, zx - xz, xy - yx],
    [yz - zy, xx - yy - zz, xy + yx, zx + xz],
    [zx - xz, xy + yx, yy - xx - zz, yz + zy],
    [xy - yx, zx + xz, yz + zy, zz - xx - yy],
  ]);
  const turn: Pose['turn'] = [
    [1 - 2 * (y * y + z * z), 2 * (x * y + w * z), 2 * (x * z - w * y)],
    [2 * (x * y - w * z), 1 - 2 * (x * x + z * z), 2 * (y * z + w * x)],
    [2 * (x * z + w * y), 2 * (y * z - w * x), 1 - 2 * (x * x + y * y)],
  ];
  return { turn, at: subtract(to, turned({ turn, at: [0, 0, 0] }, from)) };
};

export interface MarkFit {
  readonly pose: Pose;
  /** How far each mark of the scan lies from the vehicle's once placed. */
  readonly off: readonly number[];
}

/** Marks that stand in a line leave the scan free to turn about it: their triangle must be this wide to its length. */
const LEAST_SPREAD = 0.05;

const spreadOf = (points: readonly Vec3[]): number => {
  const [a, b] = points;
  if (!a || !b) return 0;
  let widest = 0;
  let longest = 0;
  for (const p of points)
    for (const q of points) {
      longest = Math.max(longest, distance(p, q));
      widest = Math.max(widest, length(cross(subtract(p, a), subtract(q, a))));
    }
  return longest === 0 ? 0 : widest / longest ** 2;
};

const spanOf = (points: readonly Vec3[]): number =>
  points.reduce((sum, p, i) => sum + points.slice(i + 1).reduce((more, q) => more + distance(p, q), 0), 0);

/** Lengths between marks that agree within this are in the same unit; the nearest two units stand 2.5 apart. */
const SAME_UNIT = 1.2;

/**
 * Places a scan by three or more marks. Refused, with what to mend: fewer than three, marks in a line, and marks whose
 * distances say that the scan is in another unit (`got` names the unit).
 */
export const alignByMarks = (pairs: readonly MarkPair[]): Result<MarkFit> => {
  if (pairs.length < 3)
    return bad([{ at: 'scan.marks', code: 'too-few-marks', expected: 'three marks', got: String(pairs.length) }]);
  const [scan, vehicle] = [pairs.map((pair) => pair.scan), pairs.map((pair) => pair.vehicle)];
  if (Math.min(spreadOf(scan), spreadOf(vehicle)) < LEAST_SPREAD)
    return bad([{ at: 'scan.marks', code: 'marks-in-line', expected: 'three marks that make a wide triangle' }]);
  const ratio = spanOf(vehicle) / spanOf(scan);
  if (ratio > SAME_UNIT || ratio < 1 / SAME_UNIT) {
    const unit: ScanUnit = unitFor(spanOf(scan), spanOf(vehicle));
    const fits = Math.abs(Math.log(ratio / SCAN_UNITS[unit])) < Math.log(SAME_UNIT);
    return bad([
      {
        at: 'scan.unit',
        code: fits ? 'wrong-unit' : 'marks-do-not-fit',
        expected: fits ? `the scan read in ${unit}` : 'the same three marks in scan and survey',
        got: ratio.toPrecision(3),
      },
    ]);
  }
  const pose = poseOfMarks(pairs);
  return good({ pose, off: pairs.map((pair) => distance(placed(pose, pair.scan), pair.vehicle)) });
};
