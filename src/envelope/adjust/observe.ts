import type { NetworkReading } from './network.ts';

/** Stands for a mark that a reading of its kind does not have. */
export const NO_MARK = -1;

/** What a reading would be, and how it changes as its marks move: x, y, z of `from`, then of `to`, then of `at`. */
export interface Observation {
  value: number;
  readonly by: Float64Array;
}

export const newObservation = (): Observation => ({ value: 0, by: new Float64Array(9) });

/** Fills `out` for marks given by their place in `points` (three numbers a mark). Runs some ten thousand times a survey. */
export type Observer = (points: Float64Array, from: number, to: number, at: number, out: Observation) => void;

const axisDifference =
  (axis: 0 | 1 | 2): Observer =>
  (points, from, to, _at, out) => {
    out.by.fill(0);
    out.value = (points[3 * to + axis] ?? 0) - (points[3 * from + axis] ?? 0);
    out.by[axis] = -1;
    out.by[3 + axis] = 1;
  };

const straight: Observer = (points, from, to, _at, out) => {
  const { by } = out;
  by.fill(0);
  const x = (points[3 * to] ?? 0) - (points[3 * from] ?? 0);
  const y = (points[3 * to + 1] ?? 0) - (points[3 * from + 1] ?? 0);
  const z = (points[3 * to + 2] ?? 0) - (points[3 * from + 2] ?? 0);
  const size = Math.sqrt(x * x + y * y + z * z);
  out.value = size;
  if (size === 0) return;
  by[0] = -x / size;
  by[1] = -y / size;
  by[2] = -z / size;
  by[3] = x / size;
  by[4] = y / size;
  by[5] = z / size;
};

/** Slope s = atan(dz / r) over the run r in plan: ∂s/∂dz = r / d², ∂s/∂r = −dz / d². */
const slope: Observer = (points, from, to, _at, out) => {
  const { by } = out;
  by.fill(0);
  const x = (points[3 * to] ?? 0) - (points[3 * from] ?? 0);
  const y = (points[3 * to + 1] ?? 0) - (points[3 * from + 1] ?? 0);
  const z = (points[3 * to + 2] ?? 0) - (points[3 * from + 2] ?? 0);
  const run = Math.hypot(x, y);
  out.value = Math.atan2(z, run);
  if (run === 0) return;
  const square = run * run + z * z;
  const byRun = -z / square;
  by[3] = (byRun * x) / run;
  by[4] = (byRun * y) / run;
  by[5] = run / square;
  by[0] = -by[3];
  by[1] = -by[4];
  by[2] = -by[5];
};

const offset: Observer = (points, from, _to, _at, out) => {
  out.by.fill(0);
  out.value = points[3 * from + 1] ?? 0;
  out.by[1] = 1;
};

/** θ between a = P − V and b = Q − V: ∂θ/∂P = (cos θ · â − b̂) / (|a| sin θ), likewise for Q, and V balances both. */
const angle: Observer = (points, from, to, at, out) => {
  const { by } = out;
  by.fill(0);
  let aa = 0;
  let bb = 0;
  let ab = 0;
  for (let axis = 0; axis < 3; axis++) {
    const v = points[3 * at + axis] ?? 0;
    const a = (points[3 * from + axis] ?? 0) - v;
    const b = (points[3 * to + axis] ?? 0) - v;
    aa += a * a;
    bb += b * b;
    ab += a * b;
  }
  const size = Math.sqrt(aa * bb);
  if (size === 0) {
    out.value = 0;
    return;
  }
  const cosine = Math.max(-1, Math.min(1, ab / size));
  const sine = Math.sqrt(1 - cosine * cosine);
  out.value = Math.atan2(sine, cosine);
  if (sine === 0) return;
  for (let axis = 0; axis < 3; axis++) {
    const v = points[3 * at + axis] ?? 0;
    const a = ((points[3 * from + axis] ?? 0) - v) / Math.sqrt(aa);
    const b = ((points[3 * to + axis] ?? 0) - v) / Math.sqrt(bb);
    const byFrom = (cosine * a - b) / (Math.sqrt(aa) * sine);
    const byTo = (cosine * b - a) / (Math.sqrt(bb) * sine);
    by[axis] = byFrom;
    by[3 + axis] = byTo;
    by[6 + axis] = -byFrom - byTo;
  }
};

export const OBSERVERS: Readonly<Record<NetworkReading['kind'], Observer>> = {
  distance: straight,
  along: axisDifference(0),
  across: axisDifference(1),
  height: axisDifference(2),
  offset,
  level: slope,
  angle,
};
