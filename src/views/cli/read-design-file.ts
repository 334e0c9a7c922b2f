import { type Design, readDesign } from '../../design/index.ts';
import { sayProblem } from '../../says/index.ts';
import { BadInput } from './bad-input.ts';
import { readTextFile } from './read-text-file.ts';

/** Reads a design file. Throws BadInput with every problem, its place and what was expected there. */
export const readDesignFile = (path: string): Design => {
  const read = readDesign(readTextFile(path, 'a design file'));
  if (read.ok) return read.value;
  throw new BadInput(
    read.error.map((problem) => ({ file: path, at: problem.at, says: sayProblem({ ...problem, at: '' }) })),
  );
};
