// What every way in needs before it can begin: a Node new enough, the packages in place, a build that is not stale.
// Plain JavaScript on purpose: it runs before any package is installed and before anything is built.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  closeSync,
  existsSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The folder that holds package.json. */
export const TOP = fileURLToPath(new URL('../../', import.meta.url));

const OLDEST_NODE = /** @type {const} */ ([20, 19]);

/**
 * A sentence for the person when this Node is too old to run the program, else null.
 * @param {string} version as in `process.versions.node`
 * @returns {string | null}
 */
export const nodeTooOld = (version) => {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  const [oldMajor, oldMinor] = OLDEST_NODE;
  if (major > oldMajor || (major === oldMajor && minor >= oldMinor)) return null;
  return `Hatchwright needs Node ${oldMajor}.${oldMinor} or newer; this is Node ${version}.`;
};

/**
 * A failure that is told in one sentence, without a stack.
 */
export class PlainFailure extends Error {}

/**
 * What a build is made from and where it lands, relative to the folder it is made in.
 * @typedef {object} Build
 * @property {string} name
 * @property {string} config the vite configuration that makes it
 * @property {string} main the file whose presence shows that it was made
 * @property {readonly string[]} sources files and folders it depends on
 */

/** @type {Readonly<Record<'editor' | 'review' | 'cli', Build>>} */
export const BUILDS = {
  editor: {
    name: 'editor',
    config: 'vite.config.ts',
    main: 'dist/editor/index.html',
    sources: ['src', 'assets', 'vite.config.ts', 'vite.review.config.ts', 'package-lock.json'],
  },
  review: {
    name: 'review',
    config: 'vite.review.config.ts',
    main: 'dist/review/index.html',
    sources: ['src', 'assets', 'vite.review.config.ts', 'package-lock.json'],
  },
  cli: {
    name: 'cli',
    config: 'vite.cli.config.ts',
    main: 'dist/cli/hatchwright.mjs',
    sources: ['src', 'assets', 'vite.cli.config.ts', 'package-lock.json'],
  },
};

/**
 * @param {string} path
 * @returns {import('node:fs').Stats | null}
 */
const statOf = (path) => statSync(path, { throwIfNoEntry: false }) ?? null;

/**
 * @param {string} top
 * @param {string} path
 * @param {(line: string) => void} tell
 */
const tellTree = (top, path, tell) => {
  const stat = statOf(join(top, path));
  if (!stat) return tell(`${path} missing\n`);
  if (!stat.isDirectory()) return tell(`${path} ${stat.mtimeMs} ${stat.size}\n`);
  for (const name of readdirSync(join(top, path)).sort())
    if (!name.startsWith('.')) tellTree(top, `${path}/${name}`, tell);
};

/**
 * One text that changes whenever a source file is added, removed or written to. Reads no file, only its entry.
 * @param {Build} build
 * @param {string} [top]
 */
export const fingerprint = (build, top = TOP) => {
  const hash = createHash('sha1');
  for (const source of build.sources) tellTree(top, source, (line) => hash.update(line));
  return hash.digest('hex');
};

/**
 * @param {Build} build
 * @param {string} top
 */
const stampPath = (build, top) => join(top, 'dist', `.${build.name}.stamp`);

/**
 * True when the build is missing or something it is made from has changed since it was made.
 * @param {Build} build
 * @param {string} [top]
 */
export const isStale = (build, top = TOP) => {
  const stamp = stampPath(build, top);
  if (!existsSync(join(top, build.main)) || !existsSync(stamp)) return true;
  return readFileSync(stamp, 'utf8') !== fingerprint(build, top);
};

/** @param {number} ms */
const waitMs = (ms) => Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, ms);

/** @param {number} pid */
const isAlive = (pid) => {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return error instanceof Error && 'code' in error && error.code === 'EPERM';
  }
};

/**
 * Takes a lock file, waiting while another living process holds it. A lock left by a process that died is taken over.
 * @param {string} path
 */
const takeLock = (path) => {
  mkdirSync(dirname(path), { recursive: true });
  for (;;) {
    try {
      const file = openSync(path, 'wx');
      writeFileSync(file, String(process.pid));
      closeSync(file);
      return;
    } catch (error) {
      if (!(error instanceof Error && 'code' in error && error.code === 'EEXIST')) throw error;
    }
    const stat = statOf(path);
    const holder = stat ? Number(readFileSync(path, 'utf8')) : 0;
    // An empty file is a lock being written this moment; one that stays empty belongs to nobody.
    const abandoned = stat && (holder ? !isAlive(holder) : Date.now() - stat.mtimeMs > 2000);
    if (abandoned) rmSync(path, { force: true });
    else waitMs(100);
  }
};

/**
 * Makes the build when it is stale; two processes at once make it once.
 * @param {Build} build
 * @param {{ top?: string, toStandardError?: boolean, make?: (build: Build) => number }} [how] `toStandardError` keeps
 *   standard output for the program itself and says nothing at all when the build goes well; `make` answers with the
 *   exit code of the maker
 * @returns {boolean} whether anything was made
 */
export const freshen = (build, how = {}) => {
  const top = how.top ?? TOP;
  if (!isStale(build, top)) return false;
  const lock = join(top, 'dist', `.${build.name}.lock`);
  takeLock(lock);
  try {
    if (!isStale(build, top)) return false;
    // Taken before the build: a file saved while it runs makes the build stale again, as it should.
    const print = fingerprint(build, top);
    const make = how.make ?? ((one) => runVite(one, top, how.toStandardError ?? false));
    rmSync(stampPath(build, top), { force: true });
    if (make(build) !== 0)
      throw new PlainFailure(`The ${build.name} could not be built; what went wrong stands above.`);
    writeFileSync(stampPath(build, top), print);
    return true;
  } finally {
    rmSync(lock, { force: true });
  }
};

/**
 * @param {Build} build
 * @param {string} top
 * @param {boolean} quiet
 */
const runVite = (build, top, quiet) => {
  const vite = join(top, 'node_modules/vite/bin/vite.js');
  const result = spawnSync(process.execPath, [vite, 'build', '-c', build.config, '--logLevel', 'error'], {
    cwd: top,
    // Whoever asks may itself be a test or a tool under development; what is built never is.
    env: { ...process.env, NODE_ENV: 'production' },
    stdio: quiet ? ['ignore', 'pipe', 'pipe'] : ['ignore', 'inherit', 'inherit'],
    encoding: 'utf8',
  });
  if (quiet && result.status !== 0) process.stderr.write(result.stdout + result.stderr);
  return result.status ?? 1;
};

/**
 * @typedef {{ version?: string, optional?: boolean, devOptional?: boolean, link?: boolean }} Locked
 * @param {string} path
 * @returns {Record<string, Locked>}
 */
const lockedPackages = (path) => JSON.parse(readFileSync(path, 'utf8')).packages ?? {};

/**
 * True when the installed packages are not those of package-lock.json.
 * @param {string} [top]
 */
export const packagesMissing = (top = TOP) => {
  const wantedPath = join(top, 'package-lock.json');
  const presentPath = join(top, 'node_modules/.package-lock.json');
  const wanted = statOf(wantedPath);
  const present = statOf(presentPath);
  if (!present || !wanted) return !present;
  if (present.mtimeMs >= wanted.mtimeMs) return false;
  // A checkout makes an unchanged lock file look new: compare what stands in it before installing again.
  const installed = lockedPackages(presentPath);
  return Object.entries(lockedPackages(wantedPath)).some(
    ([path, { version, optional, devOptional }]) =>
      path !== '' && (installed[path] ? installed[path].version !== version : !optional && !devOptional),
  );
};

/**
 * Installs exactly what package-lock.json names, when it is not there already.
 * @param {{ toStandardError?: boolean }} [how]
 * @returns {boolean} whether anything was installed
 */
export const installPackages = (how = {}) => {
  if (!packagesMissing()) return false;
  process.stderr.write('Installing the packages Hatchwright is built on (once; needs the network)…\n');
  const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';
  const result = spawnSync(npm, ['ci', '--include=dev', '--no-fund', '--no-audit', '--loglevel=error'], {
    cwd: TOP,
    stdio: how.toStandardError ? ['ignore', 2, 2] : ['ignore', 'inherit', 'inherit'],
    shell: process.platform === 'win32',
  });
  if (result.status !== 0)
    throw new PlainFailure(
      'The packages could not be installed. With a network connection, run "npm ci" here and try again.',
    );
  return true;
};

/**
 * Runs a way in: a failure meant for people is printed as one sentence, with exit code `code`.
 * @param {() => Promise<void> | void} run
 * @param {number} [code]
 */
export const begin = async (run, code = 1) => {
  try {
    const tooOld = nodeTooOld(process.versions.node);
    if (tooOld) throw new PlainFailure(tooOld);
    await run();
  } catch (error) {
    if (!(error instanceof PlainFailure)) throw error;
    process.stderr.write(`${error.message}\n`);
    process.exitCode = code;
  }
};
