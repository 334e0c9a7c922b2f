import { readFileSync, type Stats, statSync } from 'node:fs';
import { type Design, readDesign } from '../../design/index.ts';
import { sayProblem } from '../../says/index.ts';
import { BadInput, badInput } from './bad-input.ts';

/** Larger than any honest design by far. What is larger is refused before it is read. */
const MOST_BYTES = 20_000_000;
const BYTES_PER_MB = 1_000_000;

const FAULTS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EACCES: 'this file may not be read',
  EPERM: 'this file may not be read',
  ENOTDIR: 'part of this path is not a folder',
  ELOOP: 'this path goes round in circles',
  ENAMETOOLONG: 'this path is too long',
};

/** What the file system refused, in words. */
export const fileFault = (error: unknown): string => {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  return FAULTS[code] ?? (error instanceof Error ? error.message : String(error));
};

const statOf = (path: string): Stats => {
  try {
    return statSync(path);
  } catch (error) {
    throw badInput(fileFault(error), path);
  }
};

const textOf = (path: string): string => {
  let bytes: Uint8Array;
  try {
    bytes = readFileSync(path);
  } catch (error) {
    throw badInput(fileFault(error), path);
  }
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    throw badInput('this file is not text (UTF-8 is expected)', path);
  }
};

/** Reads a design file. Throws BadInput with every problem, its place and what was expected there. */
export const readDesignFile = (path: string): Design => {
  const stat = statOf(path);
  if (stat.isDirectory()) throw badInput('this is a folder; a design file is expected', path);
  if (!stat.isFile()) throw badInput('this is not a plain file; a design file is expected', path);
  if (stat.size > MOST_BYTES) {
    const size = Math.round(stat.size / BYTES_PER_MB);
    throw badInput(`this file has ${size} MB; a design file has at most ${MOST_BYTES / BYTES_PER_MB} MB`, path);
  }
  const read = readDesign(textOf(path));
  if (read.ok) return read.value;
  throw new BadInput(
    read.error.map((problem) => ({ file: path, at: problem.at, says: sayProblem({ ...problem, at: '' }) })),
  );
};
