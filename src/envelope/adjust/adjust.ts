import { ROUNDING_SHARE, SETTLED_SHARE, type Vec3 } from '../../base/index.ts';
import { type Factor, factored, forwardBy, solvedBy } from './cholesky.ts';
import { type Network, type NetworkReading, observe } from './network.ts';
import { startPoints } from './start.ts';

export interface AdjustedReading {
  readonly id: string;
  readonly read: number;
  readonly adjusted: number;
  /** Read minus adjusted. */
  readonly residual: number;
  /** The share of an error in this reading that shows in its own residual: 0 unchecked, 1 wholly checked. */
  readonly redundancy: number;
  /** Residual over its own standard deviation; 0 where nothing checks the reading. */
  readonly w: number;
}

export interface Adjustment {
  readonly points: ReadonlyMap<string, Vec3>;
  readonly readings: readonly AdjustedReading[];
  /** Readings to spare: readings less the unknowns that they determine. */
  readonly redundancy: number;
  readonly weightedSquareSum: number;
  /** Coordinates that no reading holds, as mark and axis. */
  readonly loose: readonly { readonly mark: string; readonly axis: 0 | 1 | 2 }[];
  readonly rounds: number;
  readonly converged: boolean;
  /** One standard deviation of a combination of coordinates given by its derivative at each mark. */
  readonly sigmaOf: (combination: ReadonlyMap<string, Vec3>) => number;
  /** How strongly two readings' residuals go together, −1 to 1; ±1 means that the data cannot tell them apart. */
  readonly likeness: (first: number, second: number) => number;
}

interface Unknowns {
  readonly count: number;
  /** Index of each mark's three coordinates among the unknowns, −1 where fixed. */
  readonly index: ReadonlyMap<string, readonly [number, number, number]>;
  readonly owners: readonly { readonly mark: string; readonly axis: 0 | 1 | 2 }[];
}

const unknownsOf = (network: Network): Unknowns => {
  const owners: { readonly mark: string; readonly axis: 0 | 1 | 2 }[] = [];
  const index = new Map<string, readonly [number, number, number]>();
  for (const mark of network.marks) {
    const slots = ([0, 1, 2] as const).map((axis) =>
      mark.fixed[axis] ? -1 : owners.push({ mark: mark.id, axis }) - 1,
    );
    index.set(mark.id, [slots[0] ?? -1, slots[1] ?? -1, slots[2] ?? -1]);
  }
  return { count: owners.length, index, owners };
};

type Row = readonly (readonly [slot: number, by: number])[];

const at = (points: ReadonlyMap<string, Vec3>, id: string): Vec3 => {
  const point = points.get(id);
  if (!point) throw new RangeError(`adjust: no mark has the id ${id}`);
  return point;
};

const rowOf = (
  reading: NetworkReading,
  points: ReadonlyMap<string, Vec3>,
  unknowns: Unknowns,
): { readonly value: number; readonly row: Row } => {
  const from = at(points, reading.from);
  const to = reading.kind === 'offset' ? from : at(points, reading.to);
  const { value, byFrom, byTo } = observe(reading.kind, from, to);
  const row: [number, number][] = [];
  const put = (mark: string, by: Vec3): void =>
    unknowns.index.get(mark)?.forEach((slot, axis) => {
      const part = by[axis] ?? 0;
      if (slot >= 0 && part !== 0) row.push([slot, part]);
    });
  put(reading.from, byFrom);
  if (reading.kind !== 'offset') put(reading.to, byTo);
  return { value, row };
};

const normalMatrix = (rows: readonly Row[], readings: readonly NetworkReading[], count: number): Float64Array => {
  const matrix = new Float64Array(count * count);
  rows.forEach((row, i) => {
    const weight = (readings[i]?.sigma ?? 1) ** -2;
    for (const [a, byA] of row)
      for (const [b, byB] of row) matrix[a * count + b] = (matrix[a * count + b] ?? 0) + weight * byA * byB;
  });
  return matrix;
};

/** Rounds of Gauss–Newton; a sound network settles in four to eight, the rest is room for a poor start. */
const MOST_ROUNDS = 60;

interface Solved {
  readonly points: ReadonlyMap<string, Vec3>;
  readonly rows: readonly Row[];
  readonly values: readonly number[];
  readonly factor: Factor;
  readonly rounds: number;
  readonly converged: boolean;
}

const moved = (
  points: ReadonlyMap<string, Vec3>,
  step: Float64Array,
  unknowns: Unknowns,
  share: number,
): ReadonlyMap<string, Vec3> =>
  new Map(
    [...points].map(([id, point]) => {
      const slots = unknowns.index.get(id) ?? [-1, -1, -1];
      const next = point.map((c, axis) => c + share * ((slots[axis] ?? -1) >= 0 ? (step[slots[axis] ?? 0] ?? 0) : 0));
      return [id, [next[0] ?? 0, next[1] ?? 0, next[2] ?? 0] as Vec3];
    }),
  );

const misfit = (network: Network, points: ReadonlyMap<string, Vec3>): number =>
  network.readings.reduce((sum, reading) => {
    const from = at(points, reading.from);
    const { value } = observe(reading.kind, from, reading.kind === 'offset' ? from : at(points, reading.to));
    return sum + ((reading.value - value) / reading.sigma) ** 2;
  }, 0);

/** Gauss–Newton with step halving: a step that makes the fit worse is shortened until it does not. */
const solve = (network: Network, start: ReadonlyMap<string, Vec3>, unknowns: Unknowns): Solved => {
  const { readings } = network;
  const smallestSigma = readings.reduce((least, reading) => Math.min(least, reading.sigma), Infinity);
  let points = start;
  for (let round = 1; ; round++) {
    const observed = readings.map((reading) => rowOf(reading, points, unknowns));
    const rows = observed.map(({ row }) => row);
    const values = observed.map(({ value }) => value);
    const factor = factored(normalMatrix(rows, readings, unknowns.count), unknowns.count);
    const right = new Float64Array(unknowns.count);
    readings.forEach((reading, i) => {
      const weighted = (reading.value - (values[i] ?? 0)) * reading.sigma ** -2;
      for (const [slot, by] of rows[i] ?? []) right[slot] = (right[slot] ?? 0) + weighted * by;
    });
    const step = solvedBy(factor, right);
    const largest = step.reduce((most, part) => Math.max(most, Math.abs(part)), 0);
    const converged = largest <= smallestSigma * SETTLED_SHARE;
    if (converged || round === MOST_ROUNDS) return { points, rows, values, factor, rounds: round, converged };
    const before = misfit(network, points);
    let share = 1;
    let next = moved(points, step, unknowns, share);
    for (let halving = 0; halving < 12 && misfit(network, next) > before * (1 + Number.EPSILON * 64); halving++) {
      share /= 2;
      next = moved(points, step, unknowns, share);
    }
    points = next;
  }
};

/**
 * Weighted least squares over all readings at once. Give marks with rough starts; a start is improved robustly first,
 * so that one misreading does not send the solution astray. Readings with a sigma that is not positive, or marks that
 * do not exist, throw: they are checked before (`networkProblems`).
 */
export const adjust = (network: Network): Adjustment => {
  const unknowns = unknownsOf(network);
  const { points, rows, values, factor, rounds, converged } = solve(network, startPoints(network), unknowns);
  const dense = (row: Row, scale = 1): Float64Array => {
    const full = new Float64Array(unknowns.count);
    for (const [slot, by] of row) full[slot] = (full[slot] ?? 0) + by * scale;
    return full;
  };
  // |L⁻¹ aᵢ / σᵢ|² is the share of reading i that it gives to itself; its complement is the redundancy number.
  const leverage = rows.map((row, i) => forwardBy(factor, dense(row, 1 / (network.readings[i]?.sigma ?? 1))));
  const dotOf = (a: Float64Array, b: Float64Array): number => a.reduce((sum, part, k) => sum + part * (b[k] ?? 0), 0);
  const redundancyOf = leverage.map((part) => Math.max(0, 1 - dotOf(part, part)));
  const readings = network.readings.map((reading, i): AdjustedReading => {
    const adjusted = values[i] ?? 0;
    const residual = reading.value - adjusted;
    const redundancy = redundancyOf[i] ?? 0;
    const checked = redundancy > ROUNDING_SHARE;
    return {
      id: reading.id,
      read: reading.value,
      adjusted,
      residual,
      redundancy,
      w: checked ? residual / (reading.sigma * Math.sqrt(redundancy)) : 0,
    };
  });
  return {
    points,
    readings,
    redundancy: network.readings.length - (unknowns.count - factor.loose.length),
    weightedSquareSum: readings.reduce(
      (sum, reading, i) => sum + (reading.residual / (network.readings[i]?.sigma ?? 1)) ** 2,
      0,
    ),
    loose: factor.loose.flatMap((slot) => unknowns.owners[slot] ?? []),
    rounds,
    converged,
    sigmaOf: (combination) => {
      const row: [number, number][] = [];
      for (const [mark, by] of combination)
        for (const [axis, slot] of (unknowns.index.get(mark) ?? []).entries())
          if (slot >= 0) row.push([slot, by[axis] ?? 0]);
      if (row.some(([slot, by]) => by !== 0 && factor.loose.includes(slot))) return Infinity;
      const y = forwardBy(factor, dense(row));
      return Math.sqrt(dotOf(y, y));
    },
    likeness: (first, second) => {
      const [a, b] = [leverage[first], leverage[second]];
      const together = Math.sqrt((redundancyOf[first] ?? 0) * (redundancyOf[second] ?? 0));
      if (!a || !b || together <= ROUNDING_SHARE) return 0;
      return ((first === second ? 1 : 0) - dotOf(a, b)) / together;
    },
  };
};
