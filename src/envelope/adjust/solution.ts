import { SETTLED_SHARE } from '../../base/index.ts';
import { type Factor, factored, forwardBy, looseMoves, solvedBy } from './cholesky.ts';
import { type Compiled, compile, rowOf } from './compiled.ts';
import type { Network } from './network.ts';
import { newObservation } from './observe.ts';
import { startPoints } from './start.ts';

/** A solved network in the arrays of its loops. Whitened means divided by the reading's sigma. */
export interface Solution {
  readonly compiled: Compiled;
  readonly points: Float64Array;
  readonly values: Float64Array;
  /** Whitened residuals, read minus adjusted. */
  readonly residuals: Float64Array;
  readonly factor: Factor;
  readonly looseMoves: readonly Float64Array[];
  /** L⁻¹ aᵢ / σᵢ a reading: products of two of them are the shares that readings give to each other. */
  readonly leverage: readonly Float64Array[];
  readonly redundancy: Float64Array;
  readonly rounds: number;
  readonly converged: boolean;
}

/** Rounds of Gauss–Newton; a sound network settles in three to eight, the rest is room for a poor start. */
const MOST_ROUNDS = 60;
const MOST_HALVINGS = 12;

const misfit = ({ readings }: Compiled, points: Float64Array, seen = newObservation()): number => {
  let sum = 0;
  for (const reading of readings) {
    reading.observe(points, reading.from, reading.to, reading.at, seen);
    const off = (reading.value - seen.value) / reading.sigma;
    sum += off * off;
  }
  return sum;
};

interface Normal {
  readonly matrix: Float64Array;
  readonly right: Float64Array;
  readonly values: Float64Array;
  /** Rows of the design matrix, whitened: nine places a reading, and how many of them are used. */
  readonly rowSlots: Int32Array;
  readonly rowBy: Float64Array;
  readonly rowSize: Int32Array;
}

const normalOf = (compiled: Compiled, points: Float64Array): Normal => {
  const { readings, unknowns } = compiled;
  const count = readings.length;
  const made: Normal = {
    matrix: new Float64Array(unknowns * unknowns),
    right: new Float64Array(unknowns),
    values: new Float64Array(count),
    rowSlots: new Int32Array(9 * count),
    rowBy: new Float64Array(9 * count),
    rowSize: new Int32Array(count),
  };
  const seen = newObservation();
  for (let i = 0; i < count; i++) {
    const reading = readings[i];
    if (!reading) continue;
    reading.observe(points, reading.from, reading.to, reading.at, seen);
    made.values[i] = seen.value;
    const rowSlots = made.rowSlots.subarray(9 * i, 9 * i + 9);
    const rowBy = made.rowBy.subarray(9 * i, 9 * i + 9);
    const size = rowOf(compiled, reading, seen, rowSlots, rowBy);
    made.rowSize[i] = size;
    const off = (reading.value - seen.value) / reading.sigma;
    for (let a = 0; a < size; a++) rowBy[a] = (rowBy[a] ?? 0) / reading.sigma;
    for (let a = 0; a < size; a++) {
      const slot = rowSlots[a] ?? 0;
      const by = rowBy[a] ?? 0;
      made.right[slot] = (made.right[slot] ?? 0) + by * off;
      for (let b = 0; b < size; b++) {
        const place = slot * unknowns + (rowSlots[b] ?? 0);
        made.matrix[place] = (made.matrix[place] ?? 0) + by * (rowBy[b] ?? 0);
      }
    }
  }
  return made;
};

const moved = ({ slots }: Compiled, points: Float64Array, step: Float64Array, share: number): Float64Array =>
  points.map((at, i) => ((slots[i] ?? -1) < 0 ? at : at + share * (step[slots[i] ?? 0] ?? 0)));

/** A step that makes the fit worse is shortened until it does not. */
const stepped = (compiled: Compiled, points: Float64Array, step: Float64Array): Float64Array => {
  const before = misfit(compiled, points) * (1 + Number.EPSILON * 64);
  let share = 1;
  let next = moved(compiled, points, step, share);
  for (let halving = 0; halving < MOST_HALVINGS && misfit(compiled, next) > before; halving++) {
    share /= 2;
    next = moved(compiled, points, step, share);
  }
  return next;
};

const finish = (
  compiled: Compiled,
  points: Float64Array,
  normal: Normal,
  factor: Factor,
): Omit<Solution, 'rounds' | 'converged'> => {
  const { readings, unknowns } = compiled;
  const leverage = readings.map((_, i) => {
    const full = new Float64Array(unknowns);
    for (let a = 0; a < (normal.rowSize[i] ?? 0); a++) {
      const slot = normal.rowSlots[9 * i + a] ?? 0;
      full[slot] = (full[slot] ?? 0) + (normal.rowBy[9 * i + a] ?? 0);
    }
    return forwardBy(factor, full);
  });
  return {
    compiled,
    points,
    values: normal.values,
    residuals: normal.values.map((value, i) => ((readings[i]?.value ?? 0) - value) / (readings[i]?.sigma ?? 1)),
    factor,
    looseMoves: looseMoves(factor, normal.matrix),
    leverage,
    redundancy: Float64Array.from(leverage, (part) => Math.max(0, 1 - dotOf(part, part))),
  };
};

/** Gauss–Newton with step halving from a robust start. */
export const solveNetwork = (network: Network): Solution => {
  const compiled = compile(network);
  const smallest = network.readings.reduce((least, reading) => Math.min(least, reading.sigma), Infinity);
  let points = startPoints(compiled);
  for (let round = 1; ; round++) {
    const normal = normalOf(compiled, points);
    const factor = factored(normal.matrix, compiled.unknowns);
    const step = solvedBy(factor, normal.right);
    const largest = step.reduce((most, part) => Math.max(most, Math.abs(part)), 0);
    const converged = largest <= smallest * SETTLED_SHARE;
    if (converged || round === MOST_ROUNDS)
      return { ...finish(compiled, points, normal, factor), rounds: round, converged };
    points = stepped(compiled, points, step);
  }
};

export const dotOf = (a: Float64Array, b: Float64Array): number => {
  let sum = 0;
  for (let k = 0; k < a.length; k++) sum += (a[k] ?? 0) * (b[k] ?? 0);
  return sum;
};
