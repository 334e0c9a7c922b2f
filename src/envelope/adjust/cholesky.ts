/**
 * Cholesky factor of a symmetric positive semi-definite matrix (n × n, row by row in one array) with a rank test:
 * a pivot that has shrunk to rounding against its own diagonal marks an unknown that the readings do not determine.
 */
export interface Factor {
  readonly size: number;
  /** Lower triangle, row by row; rows of loose unknowns are unit rows, so that solving leaves them at zero. */
  readonly lower: Float64Array;
  /** Unknowns that nothing holds, once those before them are held. */
  readonly loose: readonly number[];
}

/** A pivot below this share of its diagonal is rounding: double precision squared by the normal equations, and room for n². */
const LOOSE_SHARE = Number.EPSILON * 4096;

export const factored = (matrix: Float64Array, size: number): Factor => {
  const lower = new Float64Array(size * size);
  const isLoose = new Uint8Array(size);
  const loose: number[] = [];
  for (let i = 0; i < size; i++) {
    const rowI = i * size;
    for (let j = 0; j <= i; j++) {
      const rowJ = j * size;
      let sum = matrix[rowI + j] ?? 0;
      for (let k = 0; k < j; k++) sum -= (lower[rowI + k] ?? 0) * (lower[rowJ + k] ?? 0);
      if (i !== j) {
        lower[rowI + j] = isLoose[j] ? 0 : sum / (lower[rowJ + j] ?? 1);
      } else if (sum <= (matrix[rowI + i] ?? 0) * LOOSE_SHARE) {
        loose.push(i);
        isLoose[i] = 1;
        for (let k = 0; k < i; k++) lower[rowI + k] = 0;
        lower[rowI + i] = 1;
      } else lower[rowI + i] = Math.sqrt(sum);
    }
  }
  return { size, lower, loose };
};

/** The forward half, L·y = b: for covariances of a combination g of unknowns, gᵀ·(LLᵀ)⁻¹·g = |y|². */
export const forwardBy = ({ size, lower, loose }: Factor, right: Float64Array): Float64Array => {
  const y = Float64Array.from(right);
  for (const i of loose) y[i] = 0;
  let first = 0;
  while (first < size && y[first] === 0) first++;
  for (let i = first; i < size; i++) {
    let sum = y[i] ?? 0;
    for (let k = first; k < i; k++) sum -= (lower[i * size + k] ?? 0) * (y[k] ?? 0);
    y[i] = sum / (lower[i * size + i] ?? 1);
  }
  for (const i of loose) y[i] = 0;
  return y;
};

/** The backward half, Lᵀ·x = y; loose unknowns come out as zero. */
export const backwardBy = ({ size, lower, loose }: Factor, right: Float64Array): Float64Array => {
  const x = Float64Array.from(right);
  for (const i of loose) x[i] = 0;
  for (let i = size - 1; i >= 0; i--) {
    const part = (x[i] ?? 0) / (lower[i * size + i] ?? 1);
    x[i] = part;
    for (let k = 0; k < i; k++) x[k] = (x[k] ?? 0) - (lower[i * size + k] ?? 0) * part;
  }
  for (const i of loose) x[i] = 0;
  return x;
};

/** Solves L·Lᵀ·x = b; loose unknowns come out as zero. */
export const solvedBy = (factor: Factor, right: Float64Array): Float64Array =>
  backwardBy(factor, forwardBy(factor, right));

/** For each loose unknown the way the whole net gives when it moves by one: the readings do not change along it. */
export const looseMoves = (factor: Factor, matrix: Float64Array): readonly Float64Array[] =>
  factor.loose.map((loose) => {
    const right = new Float64Array(factor.size);
    for (let i = 0; i < factor.size; i++) right[i] = -(matrix[i * factor.size + loose] ?? 0);
    const move = solvedBy(factor, right);
    move[loose] = 1;
    return move;
  });
