import { existsSync } from 'node:fs';
import type { Design } from '../../design/index.ts';
import { revisionDesign } from '../../revision/index.ts';
import { sayProblem } from '../../says/index.ts';
import { BadInput } from './bad-input.ts';
import { readDesignFile } from './read-design-file.ts';

const WITH_LETTER = /^(.+)@([A-Z]{1,3})$/;

/** A design file, or with `@B` behind its name the revision B that it holds. A file of that very name comes first. */
export const readLetter = (path: string): Design => {
  const match = existsSync(path) ? null : WITH_LETTER.exec(path);
  const [, file, letter] = match ?? [];
  if (file === undefined || letter === undefined) return readDesignFile(path);
  const read = revisionDesign(readDesignFile(file), letter);
  if (read.ok) return read.value;
  throw new BadInput(read.error.map((problem) => ({ file, at: problem.at, says: sayProblem({ ...problem, at: '' }) })));
};
