import { type Dirent, existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { codeOnly, type Import, importsOf } from './scan.ts';

/** One file of the repository; `path` is relative to its top, with forward slashes. */
export interface HouseFile {
  readonly path: string;
  readonly text: string;
}

/** A file of src that holds code. */
export interface SourceFile extends HouseFile {
  /** The text without comments and string contents, same length. */
  readonly code: string;
  readonly imports: readonly SourceImport[];
}

export interface SourceImport extends Import {
  /** The file meant, relative to the top; null for a package. */
  readonly target: string | null;
}

export interface House {
  readonly top: string;
  readonly files: readonly HouseFile[];
  readonly sources: readonly SourceFile[];
}

/** What breaks a rule, where, in words. */
export interface Fault {
  readonly at: string;
  readonly says: string;
}

export type HouseRule = (house: House) => readonly Fault[];

const NOT_OURS = new Set(['node_modules', 'dist', '.git', 'shots']);
const TEXT =
  /\.(?:ts|tsx|mts|js|mjs|cjs|jsx|css|html|json|md|csv|svg|txt|toml|yml|yaml)$|(?:^|\/)(?:\.npmrc|\.gitignore|run)$/;

const walk = (top: string, folder: string): readonly string[] =>
  readdirSync(join(top, folder), { withFileTypes: true })
    .filter((entry: Dirent) => !NOT_OURS.has(entry.name))
    .sort((a, b) => (a.name < b.name ? -1 : 1))
    .flatMap((entry) => {
      const path = posix.join(folder, entry.name);
      return entry.isDirectory() ? walk(top, path) : entry.isFile() ? [path] : [];
    });

const sourceOf = ({ path, text }: HouseFile): SourceFile => {
  const code = codeOnly(text);
  const imports = importsOf(text, code).map((one) => ({ ...one, target: targetOf(path, one.specifier) }));
  return { path, text, code, imports };
};

const targetOf = (from: string, specifier: string): string | null =>
  specifier.startsWith('.') ? posix.join(posix.dirname(from), specifier.replace(/\?.*$/, '')) : null;

/** Reads every text file below the folder, and of src also what it imports. */
export const readHouse = (top: string): House => {
  const files = walk(top, '.')
    .filter((path) => TEXT.test(path))
    .map((path) => ({ path, text: readFileSync(join(top, path), 'utf8') }));
  const sources = files.filter(({ path }) => /^src\/.*\.(?:ts|tsx|mts|js|mjs)$/.test(path)).map(sourceOf);
  return { top, files, sources };
};

/** The text of a file, or null where it is not there. */
export const textOf = (house: House, path: string): string | null =>
  existsSync(join(house.top, path)) ? readFileSync(join(house.top, path), 'utf8') : null;
