import { mkdirSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { badInput } from './bad-input.ts';
import { fileFault } from './read-text-file.ts';

export interface FileToWrite {
  /** Relative to the folder written to, with `/`. */
  readonly path: string;
  readonly content: string | Uint8Array;
}

const isFolder = (path: string): boolean | null => {
  const stat = statSync(path, { throwIfNoEntry: false });
  return stat === undefined ? null : stat.isDirectory();
};

/** Throws BadInput where something that is not a folder stands in its place. A folder that is not there yet will do. */
export const expectFolder = (folder: string): void => {
  if (isFolder(folder) === false) throw badInput('this is a file; a folder to write to is expected', folder);
};

/**
 * Writes the files into the folder, which is made where it is not there. Each file is written beside its place and
 * then moved there, so that none is ever half written. Throws BadInput where the folder refuses.
 */
export const writeFiles = (folder: string, files: readonly FileToWrite[]): void => {
  expectFolder(folder);
  for (const { path, content } of files) {
    const place = join(folder, path);
    const beside = `${place}.part`;
    try {
      mkdirSync(dirname(place), { recursive: true });
      writeFileSync(beside, content);
      renameSync(beside, place);
    } catch (error) {
      rmSync(beside, { force: true });
      throw badInput(`cannot be written: ${fileFault(error)}`, place);
    }
  }
};
