import { roundUp } from '../bounds/dual-feasible.ts';
import { NO_LIMITS, type Problem } from '../engine/problem.ts';
import type { Improver } from '../improver.ts';
import type { MaterialSearch } from '../material-search.ts';
import { buildSheets } from './build-sheets.ts';
import type { LinearSolver } from './solver.ts';
import { stripPatterns } from './strip-patterns.ts';

/** Enough for a mix of sheet sizes: later nodes take seconds and save next to nothing. */
const WHOLE_NODES = 400;

/** Where only one price occurs, a price is a whole number of sheets. */
const roundPrice = (price: number, { sheets }: Problem): number => {
  const prices = new Set(sheets.map((sheet) => sheet.price));
  const only = sheets[0]?.price ?? 0;
  return prices.size === 1 && only > 0 ? roundUp(price / only) * only : price;
};

const isPlain = (limits: Problem['limits']): boolean =>
  limits === null || (limits.rip === NO_LIMITS.rip && limits.cut === NO_LIMITS.cut && limits.strip === NO_LIMITS.strip);

const proveOne = (search: MaterialSearch, solver: LinearSolver): void => {
  const { problem } = search;
  if (search.done || search.proven || problem.stages !== 2 || problem.pieces.length === 0) return;
  // For sheets of one size the search by turns is better and faster than whole numbers of patterns. The saw's limits and matched runs may forbid a pattern: then the patterns bound the price and are not cut.
  const mixed = problem.sheets.length > 1;
  const plain = mixed && isPlain(problem.limits) && problem.pieces.every(({ matched }) => !matched);
  const proof = stripPatterns(problem, solver, plain ? WHOLE_NODES : 0);
  search.learn(roundPrice(proof.price, problem), buildSheets(problem, proof));
};

/**
 * Proves what two-stage cutting can reach at least, by column generation over strip patterns, and takes over the
 * patterns where they make a better layout. For a job in two stages only: more stages can beat the bound. Takes a
 * fraction of a second and cannot be interrupted; call it in a worker: for several sizes of sheet at once, since its
 * patterns are the best start, for one size after some thousand turns.
 */
export const proveTwoStage = (improver: Improver, solver: LinearSolver): void => {
  for (const search of improver.searches) proveOne(search, solver);
};
