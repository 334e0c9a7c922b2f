import { ROUNDING_SHARE, type Vec3 } from '../../base/index.ts';
import { forwardBy } from './cholesky.ts';
import type { Network } from './network.ts';
import { dotOf, type Solution, solveNetwork } from './solution.ts';

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

/** Variances and covariances of one mark in mm²: xx, xy, xz, yy, yz, zz. */
export type Covariance = readonly [number, number, number, number, number, number];

export interface LooseCoordinate {
  readonly mark: string;
  readonly axis: 0 | 1 | 2;
}

export interface Adjustment {
  readonly points: ReadonlyMap<string, Vec3>;
  readonly readings: readonly AdjustedReading[];
  /** Readings to spare: readings less the unknowns that they determine. */
  readonly redundancy: number;
  readonly weightedSquareSum: number;
  /** How many ways the net can still give without any reading changing. */
  readonly freedoms: number;
  /** Coordinates that can change without any reading changing, as mark and axis. */
  readonly loose: readonly LooseCoordinate[];
  readonly rounds: number;
  readonly converged: boolean;
  /** One standard deviation of a combination of coordinates given by its derivative at each mark; Infinity when loose. */
  readonly sigmaOf: (combination: ReadonlyMap<string, Vec3>) => number;
  /** Covariance of a mark, or null where one of its coordinates is loose. Fixed coordinates have none. */
  readonly covarianceOf: (mark: string) => Covariance | null;
  /** How strongly two readings' residuals go together, −1 to 1; ±1 means that the data cannot tell them apart. */
  readonly likeness: (first: number, second: number) => number;
}

/** A part of a loose move below this share of its largest part is rounding of the solve. */
const LOOSE_PART = Math.sqrt(ROUNDING_SHARE);

const givesIn = (move: Float64Array, direction: Float64Array): boolean => {
  const largest = move.reduce((most, part) => Math.max(most, Math.abs(part)), 0);
  const size = Math.sqrt(dotOf(direction, direction));
  return Math.abs(dotOf(move, direction)) > largest * size * LOOSE_PART;
};

const looseOf = ({ compiled, looseMoves }: Solution): readonly LooseCoordinate[] => {
  const unit = new Float64Array(compiled.unknowns);
  return compiled.network.marks.flatMap(({ id }, m) =>
    ([0, 1, 2] as const).flatMap((axis): readonly LooseCoordinate[] => {
      const slot = compiled.slots[3 * m + axis] ?? -1;
      if (slot < 0) return [];
      unit.fill(0);
      unit[slot] = 1;
      return looseMoves.some((move) => givesIn(move, unit)) ? [{ mark: id, axis }] : [];
    }),
  );
};

const readingsOf = ({ compiled, values, residuals, redundancy }: Solution): readonly AdjustedReading[] =>
  compiled.network.readings.map((reading, i): AdjustedReading => {
    const share = redundancy[i] ?? 0;
    return {
      id: reading.id,
      read: reading.value,
      adjusted: values[i] ?? 0,
      residual: reading.value - (values[i] ?? 0),
      redundancy: share,
      w: share > ROUNDING_SHARE ? (residuals[i] ?? 0) / Math.sqrt(share) : 0,
    };
  });

/** Cofactor of two readings' whitened residuals: its diagonal holds the redundancy numbers. */
export const residualCofactor = ({ leverage, redundancy }: Solution, first: number, second: number): number => {
  if (first === second) return redundancy[first] ?? 0;
  const [a, b] = [leverage[first], leverage[second]];
  return a && b ? -dotOf(a, b) : 0;
};

export const likenessOf = (solution: Solution, first: number, second: number): number => {
  const together = Math.sqrt((solution.redundancy[first] ?? 0) * (solution.redundancy[second] ?? 0));
  return together <= ROUNDING_SHARE ? 0 : residualCofactor(solution, first, second) / together;
};

const directionOf = ({ compiled }: Solution, combination: ReadonlyMap<string, Vec3>): Float64Array => {
  const full = new Float64Array(compiled.unknowns);
  for (const [mark, by] of combination) {
    const m = compiled.markIndex.get(mark);
    if (m === undefined) throw new RangeError(`sigmaOf: no mark has the id ${mark}`);
    for (const axis of [0, 1, 2] as const) {
      const slot = compiled.slots[3 * m + axis] ?? -1;
      if (slot >= 0) full[slot] = (full[slot] ?? 0) + by[axis];
    }
  }
  return full;
};

const covarianceOf = (solution: Solution, mark: string): Covariance | null => {
  const units = ([0, 1, 2] as const).map((axis) => {
    const by: Vec3 = [axis === 0 ? 1 : 0, axis === 1 ? 1 : 0, axis === 2 ? 1 : 0];
    return directionOf(solution, new Map([[mark, by]]));
  });
  if (units.some((unit) => solution.looseMoves.some((move) => givesIn(move, unit)))) return null;
  const [x, y, z] = units.map((unit) => forwardBy(solution.factor, unit));
  if (!x || !y || !z) return null;
  return [dotOf(x, x), dotOf(x, y), dotOf(x, z), dotOf(y, y), dotOf(y, z), dotOf(z, z)];
};

export const adjustmentOf = (solution: Solution): Adjustment => {
  const { compiled, points, residuals, factor, looseMoves, rounds, converged } = solution;
  return {
    points: new Map(
      compiled.network.marks.map(({ id }, m): [string, Vec3] => [
        id,
        [points[3 * m] ?? 0, points[3 * m + 1] ?? 0, points[3 * m + 2] ?? 0],
      ]),
    ),
    readings: readingsOf(solution),
    redundancy: compiled.readings.length - (compiled.unknowns - factor.loose.length),
    weightedSquareSum: dotOf(residuals, residuals),
    freedoms: factor.loose.length,
    loose: looseMoves.length === 0 ? [] : looseOf(solution),
    rounds,
    converged,
    sigmaOf: (combination) => {
      const direction = directionOf(solution, combination);
      if (looseMoves.some((move) => givesIn(move, direction))) return Infinity;
      const y = forwardBy(factor, direction);
      return Math.sqrt(dotOf(y, y));
    },
    covarianceOf: (mark) => covarianceOf(solution, mark),
    likeness: (first, second) => likenessOf(solution, first, second),
  };
};

/**
 * Weighted least squares over all readings at once. Give marks with rough starts; a start is improved robustly first,
 * so that one misreading does not send the solution astray. Readings with a sigma that is not positive, or marks that
 * do not exist, throw: they are checked before (`surveyNetwork`).
 */
export const adjust = (network: Network): Adjustment => adjustmentOf(solveNetwork(network));
