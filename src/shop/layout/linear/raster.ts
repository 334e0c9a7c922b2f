import type { Problem } from '../engine/problem.ts';

const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));

/** Longer rasters make the knapsacks slow; a coarser one is still valid for the bound. */
const MOST_STEPS = 16_000;
const COARSE_STEPS = 6_000;

/**
 * Step of the raster on which strips and sheets are filled. Exact where all sizes share a step that is coarse enough;
 * else sizes are rounded down with the sheet, so that every real pattern is still a pattern: the bound stays valid,
 * but the patterns cannot be cut.
 */
export interface Raster {
  readonly step: number;
  readonly exact: boolean;
}

export const rasterOf = ({ pieces, sheets }: Problem): Raster => {
  const longest = Math.max(...sheets.map(({ length, width }) => Math.max(length, width)));
  const step = pieces.reduce((common, { length, width }) => gcd(gcd(common, length), width), 0);
  if (longest / step <= MOST_STEPS) return { step, exact: true };
  return { step: Math.ceil(longest / COARSE_STEPS), exact: false };
};

export const onRaster = (size: number, { step }: Raster): number => Math.floor(size / step);
