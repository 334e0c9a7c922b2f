import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Design, printDesign, readDesign } from '../../../src/design/index.ts';
import { run } from '../../../src/views/cli/program.ts';
import { BUILDS, freshen, TOP } from '../../../src/views/ground.mjs';

/** Longest that building or one run may take on a busy machine (ms). */
export const PATIENCE_MS = 120_000;

/** Makes the command where it is stale. */
export const buildCommand = (): void => {
  freshen(BUILDS.cli, { toStandardError: true });
};

export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly complaints: string;
}

/** Runs one command line in this process: the same program without the cost of starting Node. */
export const inProcess = async (args: readonly string[]): Promise<Ran> => {
  let [out, complaints] = ['', ''];
  const code = await run(args, {
    out: (text) => {
      out += text;
    },
    complain: (text) => {
      complaints += text;
    },
  });
  return { code, out, complaints };
};

/** Runs the built command as a person would. */
export const hatchwright = (args: readonly string[], folder = TOP): Ran => {
  const ran = spawnSync(process.execPath, [join(TOP, BUILDS.cli.main), ...args], {
    cwd: folder,
    encoding: 'utf8',
    timeout: PATIENCE_MS,
  });
  return { code: ran.status, out: ran.stdout, complaints: ran.stderr };
};

export const demoPath = (name: string): string => join(TOP, 'assets/designs', `${name}.json`);

export const demo = (name: string): Design => {
  const read = readDesign(readFileSync(demoPath(name), 'utf8'));
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  return read.value;
};

/** One empty carcass moved out of the vehicle through the hatch: nobody could call that clear of the trim. */
export const outOfTheVehicle = (): string => {
  const design = demo('quillmoor');
  const carcasses = design.cabinet.carcasses.slice(0, 1).map((carcass) => ({
    ...carcass,
    place: { ...carcass.place, x: { rule: 'at' as const, mm: -3000 } },
    opening: { ...carcass.opening, content: { kind: 'empty' as const } },
  }));
  return printDesign({ ...design, cabinet: { ...design.cabinet, carcasses }, gear: [], mounts: [] });
};

/** A demo job without cabinet and gear: nothing can hit anything. */
export const bareVehicle = (): string =>
  printDesign({ ...demo('quillmoor'), cabinet: { carcasses: [], braces: [] }, gear: [], mounts: [] });

/** A folder of its own for one test file; `sweep` takes it away. */
export const scratch = (): { readonly at: (...path: string[]) => string; readonly sweep: () => void } => {
  const folder = mkdtempSync(join(tmpdir(), 'hatchwright-cli-'));
  return {
    at: (...path) => join(folder, ...path),
    sweep: () => rmSync(folder, { recursive: true, force: true }),
  };
};

/** Every file under a folder with its text, by path. */
export const filesUnder = (folder: string, inside = ''): ReadonlyMap<string, string> => {
  const files = new Map<string, string>();
  for (const name of readdirSync(join(folder, inside)).sort()) {
    const path = inside === '' ? name : `${inside}/${name}`;
    if (statSync(join(folder, path)).isDirectory())
      for (const [deeper, text] of filesUnder(folder, path)) files.set(deeper, text);
    else files.set(path, readFileSync(join(folder, path), 'utf8'));
  }
  return files;
};
