/**
 * Cholesky factor of a symmetric positive semi-definite matrix (n × n, row by row in one array) with a rank test:
 * a pivot that has shrunk to rounding against its own diagonal marks an unknown that the readings do not determine.
 */
export interface Factor {
  readonly size: number;
  /** Lower triangle, row by row; rows of loose unknowns are unit rows, so that solving leaves them at zero. */
  readonly lower: Float64Array;
  /** Unknowns that nothing holds. */
  readonly loose: readonly number[];
}

/** A pivot below this share of its diagonal is rounding: double precision squared by the normal equations, and room for n². */
const LOOSE_SHARE = Number.EPSILON * 4096;

export const factored = (matrix: Float64Array, size: number): Factor => {
  const lower = new Float64Array(size * size);
  const loose: number[] = [];
  for (let i = 0; i < size; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i * size + j] ?? 0;
      for (let k = 0; k < j; k++) sum -= (lower[i * size + k] ?? 0) * (lower[j * size + k] ?? 0);
      if (i !== j) {
        const pivot = lower[j * size + j] ?? 1;
        lower[i * size + j] = loose.includes(j) ? 0 : sum / pivot;
      } else if (sum <= (matrix[i * size + i] ?? 0) * LOOSE_SHARE) {
        loose.push(i);
        for (let k = 0; k < i; k++) lower[i * size + k] = 0;
        lower[i * size + i] = 1;
      } else lower[i * size + i] = Math.sqrt(sum);
    }
  }
  return { size, lower, loose };
};

/** Solves L·Lᵀ·x = b; loose unknowns come out as zero. */
export const solvedBy = ({ size, lower, loose }: Factor, right: Float64Array): Float64Array => {
  const x = Float64Array.from(right);
  for (const i of loose) x[i] = 0;
  for (let i = 0; i < size; i++) {
    let sum = x[i] ?? 0;
    for (let k = 0; k < i; k++) sum -= (lower[i * size + k] ?? 0) * (x[k] ?? 0);
    x[i] = sum / (lower[i * size + i] ?? 1);
  }
  for (let i = size - 1; i >= 0; i--) {
    let sum = x[i] ?? 0;
    for (let k = i + 1; k < size; k++) sum -= (lower[k * size + i] ?? 0) * (x[k] ?? 0);
    x[i] = sum / (lower[i * size + i] ?? 1);
  }
  for (const i of loose) x[i] = 0;
  return x;
};

/** The forward half only, L·y = b: for covariances of a combination g of unknowns, gᵀ·(LLᵀ)⁻¹·g = |y|². */
export const forwardBy = ({ size, lower, loose }: Factor, right: Float64Array): Float64Array => {
  const y = Float64Array.from(right);
  for (const i of loose) y[i] = 0;
  for (let i = 0; i < size; i++) {
    let sum = y[i] ?? 0;
    for (let k = 0; k < i; k++) sum -= (lower[i * size + k] ?? 0) * (y[k] ?? 0);
    y[i] = sum / (lower[i * size + i] ?? 1);
  }
  for (const i of loose) y[i] = 0;
  return y;
};
