import type { Problem } from '../base/index.ts';
import { sayProblem } from './say-problem.ts';

/** What is wrong with a list that was read, or with one cell of it, without its place: for behind the place. */
export const sayListProblem = (problem: Problem): string => {
  const { code, expected = '', got = '' } = problem;
  if (code === 'bad-cell') return `expected ${expected}, found ${got}`;
  if (code === 'no-column') return `the header has no ${got}; expected ${expected}`;
  if (code === 'no-rows') return 'there is no row under the header';
  if (code === 'too-many-rows') return `there are ${got} rows; expected at most ${expected}`;
  return sayProblem({ ...problem, at: '' });
};
