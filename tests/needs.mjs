// Programs that some tests need and npm does not bring: where to look for each, and the Debian package that holds it.
import { spawnSync } from 'node:child_process';
import { accessSync, constants, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';

/**
 * @param {string} path
 * @returns {boolean}
 */
const canRun = (path) => {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
};

/**
 * The first of the programs that can be run, looked for on the PATH unless it is named with its folder.
 * @param {readonly string[]} names
 * @param {NodeJS.ProcessEnv} env
 * @returns {string | null}
 */
export const findProgram = (names, env = process.env) => {
  const folders = (env.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  for (const name of names) {
    const paths = /[/\\]/.test(name) ? [name] : folders.map((folder) => join(folder, name));
    const found = paths.find(canRun);
    if (found) return found;
  }
  return null;
};

/** @returns {readonly string[]} */
const chromiumNames = () => {
  if (process.platform === 'darwin')
    return ['Google Chrome', 'Chromium'].map((name) => `/Applications/${name}.app/Contents/MacOS/${name}`);
  if (process.platform === 'win32')
    return ['C:/Program Files', 'C:/Program Files (x86)'].map((top) => `${top}/Google/Chrome/Application/chrome.exe`);
  return ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'];
};

/**
 * Chromium or Chrome: what CHROME_PATH names when that can be run, else the first one found.
 * @returns {string | null}
 */
export const findChromium = () => {
  const told = process.env.CHROME_PATH;
  return (told ? findProgram([told]) : null) ?? findProgram(chromiumNames());
};

/**
 * @typedef {object} Need
 * @property {string} package the Debian package
 * @property {() => string | null} find
 * @property {string} advice what a person does when it is not there and cannot be installed from here
 */

/**
 * The Python that has ezdxf: Debian's own, whatever other Python comes first on the PATH.
 * @returns {string | null}
 */
export const findEzdxf = () =>
  ['/usr/bin/python3', 'python3'].find((name) => spawnSync(name, ['-c', 'import ezdxf']).status === 0) ?? null;

/**
 * The Python that has openpyxl, found the same way.
 * @returns {string | null}
 */
export const findOpenpyxl = () =>
  ['/usr/bin/python3', 'python3'].find((name) => spawnSync(name, ['-c', 'import openpyxl']).status === 0) ?? null;

/** @type {Readonly<Record<'chromium' | 'ezdxf' | 'openpyxl' | 'poppler', Need>>} */
export const NEEDS = {
  chromium: {
    package: 'chromium',
    find: findChromium,
    advice: 'No Chromium or Chrome was found: install one, or set CHROME_PATH to its program.',
  },
  ezdxf: {
    package: 'python3-ezdxf',
    find: findEzdxf,
    advice: 'No Python with ezdxf was found: it reads our DXF files back in the tests. On Debian: python3-ezdxf.',
  },
  openpyxl: {
    package: 'python3-openpyxl',
    find: findOpenpyxl,
    advice: 'No Python with openpyxl was found: it reads our workbooks back in the tests. On Debian: python3-openpyxl.',
  },
  poppler: {
    package: 'poppler-utils',
    find: () => findProgram(['pdftoppm']),
    advice: 'No pdftoppm was found: it measures our PDF files in the tests. On Debian: poppler-utils.',
  },
};

const canInstall = () => process.platform === 'linux' && process.getuid?.() === 0 && findProgram(['apt-get']) !== null;

/**
 * Finds what is needed, installing its Debian package where that is possible.
 * @param {Need} need
 * @returns {string | null} the program, or null after the advice has been printed
 */
export const provide = (need) => {
  const found = need.find();
  if (found) return found;
  if (canInstall()) {
    console.log(`Installing ${need.package}…`);
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    for (const args of [['update'], ['install', '-y', '--no-install-recommends', need.package]])
      spawnSync('apt-get', ['-qq', ...args], { stdio: ['ignore', 'ignore', 'inherit'], env });
  }
  const installed = need.find();
  if (!installed) console.log(need.advice);
  return installed;
};
