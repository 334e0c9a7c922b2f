import { readFileSync, type Stats, statSync } from 'node:fs';
import { badInput } from './bad-input.ts';

/** Larger than any honest file by far. What is larger is refused before it is read. */
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

/** The text of a plain UTF-8 file; `what` names what is expected there. Throws BadInput for anything else. */
export const readTextFile = (path: string, what: string): string => {
  const stat = statOf(path);
  if (stat.isDirectory()) throw badInput(`this is a folder; ${what} is expected`, path);
  if (!stat.isFile()) throw badInput(`this is not a plain file; ${what} is expected`, path);
  if (stat.size > MOST_BYTES) {
    const size = Math.round(stat.size / BYTES_PER_MB);
    throw badInput(`this file has ${size} MB; ${what} has at most ${MOST_BYTES / BYTES_PER_MB} MB`, path);
  }
  return textOf(path);
};
