import { isBuiltin } from 'node:module';
import type { Fault, HouseFile, HouseRule, SourceFile } from './house.ts';
import { isCore } from './rooms.ts';
import { codeOnly, lineAt } from './scan.ts';

/** Packages that compute and nothing else. A further one needs a decision: it must not look at clock, page or disk. */
export const CORE_PACKAGES: ReadonlySet<string> = new Set([
  '@noble/hashes',
  '@tarikjabiri/dxf',
  'dejavu-fonts-ttf',
  'fflate',
  'highs',
  'hucre',
  'manifold-3d',
  'mutative',
  'pdfkit',
  'robust-predicates',
  'uqr',
  'zod',
]);

const packageOf = (specifier: string): string =>
  specifier
    .split('/')
    .slice(0, specifier.startsWith('@') ? 2 : 1)
    .join('/');

/** Core rooms use packages that only compute. */
export const coreImportsComputeOnly: HouseRule = ({ sources }) =>
  sources
    .filter(({ path }) => isCore(path))
    .flatMap((file) =>
      file.imports
        .filter(({ target, specifier }) => target === null && !CORE_PACKAGES.has(packageOf(specifier)))
        .map(({ specifier, line }) => ({
          at: `${file.path}:${line}`,
          says: `${specifier} is ${isBuiltin(specifier) ? 'part of Node' : 'no package for core rooms'}`,
        })),
    );

const findIn = (file: { path: string; code: string }, pattern: RegExp, says: (found: string) => string): Fault[] =>
  [...file.code.matchAll(pattern)].map((match) => ({
    at: `${file.path}:${lineAt(file.code, match.index)}`,
    says: says(match[0].trim()),
  }));

/** A moment written as a number is data; everything else about dates asks the clock or the time zone. */
const CLOCK = /\bnew Date\b(?!\(\d)|(?<!new )\bDate\s*\(|\bDate\.\w+|\bperformance\.\w+/g;
const TIMERS = /\b(?:setTimeout|setInterval|setImmediate|requestAnimationFrame|requestIdleCallback)\b/g;
const CHANCE = /\bMath\.random\b|\brandomUUID\b|\bgetRandomValues\b/g;
const LOCALE = /\.toLocale\w+|\blocaleCompare\b|\bIntl\b/g;

/** Core rooms read no clock, no chance and no locale: the same design gives the same bytes. */
export const coreIsRepeatable: HouseRule = ({ sources }) =>
  sources
    .filter(({ path }) => isCore(path))
    .flatMap((file) => [
      ...findIn(file, CLOCK, (found) => `${found} reads the clock or the time zone`),
      ...findIn(file, TIMERS, (found) => `${found} waits for the clock`),
      ...findIn(file, CHANCE, (found) => `${found} is not repeatable: use seededRandom`),
      ...findIn(file, LOCALE, (found) => `${found} depends on the reader's language: use compareText`),
    ]);

const BARE_SMALLNESS = /(?<![\w.])(?:1(?:\.0*)?e-\d+|0?\.0{3,}1)(?!\w)/gi;

/** Rounding noise has names, and they stand in one file. */
export const smallnessHasNames: HouseRule = ({ sources }) =>
  sources
    .filter(({ path }) => path !== 'src/base/tolerance.ts')
    .flatMap((file) => findIn(file, BARE_SMALLNESS, (found) => `bare ${found}: name it in base/tolerance.ts`));

const isTest = ({ path }: HouseFile): boolean => /^tests\/.*\.tsx?$/.test(path);
const LEFT_OUT = /\b(?:test|it|describe|suite|bench)(?:\.\w+)*\.(?:only|skip|todo|fails)\b/g;

/** No test is left out, and none keeps the others from running. */
export const everyTestRuns: HouseRule = ({ files }) =>
  files
    .filter(isTest)
    .flatMap(({ path, text }) =>
      findIn({ path, code: codeOnly(text) }, LEFT_OUT, (found) => `${found} leaves tests out`),
    );

const LATER = /\b(?:TODO|FIXME|XXX)\b/g;

/** What is to be done later is written elsewhere. */
export const nothingLeftForLater: HouseRule = ({ sources }) =>
  sources.flatMap(({ path, text }: SourceFile) =>
    findIn({ path, code: text }, LATER, (found) => `${found} left in src`),
  );
