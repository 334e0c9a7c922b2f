import type { Improver } from '../improver.ts';
import type { MaterialSearch } from '../material-search.ts';
import { coverBySheets } from './cover-by-sheets.ts';
import type { LinearSolver } from './solver.ts';

/** Of the solver's clock, for the linear optimum and whole numbers of sheets together: it finds what it finds early. */
const MOST_SECONDS = 1.5;

const recombineOne = (search: MaterialSearch, solver: LinearSolver, seconds: number): boolean => {
  if (search.done || search.proven || search.best.leftOut.length > 0) return false;
  const { cost } = search.best;
  search.learn(0, coverBySheets(search.problem, search.pooled, search.nextPrice, solver, seconds));
  return search.best.cost < cost;
};

/**
 * Chooses among all good sheets that came by in the search those that hold every piece for the least price: a set cover
 * in whole numbers (Monaci and Toth 2006). True when that is a cheaper layout, from which the search goes on. Works only
 * when twice as many turns were made as at the last time; call it as often as convenient, in a worker: it takes up to
 * `seconds` of the solver's clock for each material, a little more for handing over the sheets, and cannot be interrupted.
 */
export const recombine = (improver: Improver, solver: LinearSolver, seconds = MOST_SECONDS): boolean => {
  let better = false;
  for (const search of improver.searches)
    if (search.timeToRecombine() && recombineOne(search, solver, seconds)) better = true;
  return better;
};
