import { spawnSync } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, describe, expect, test } from 'vitest';
import { BUILDS, fingerprint, freshen, isStale, nodeTooOld, packagesMissing, TOP } from '../../src/views/ground.mjs';

const trees: string[] = [];
afterEach(() => {
  for (const tree of trees.splice(0)) rmSync(tree, { recursive: true, force: true });
});

const plant = (files: Readonly<Record<string, string>>): string => {
  const top = mkdtempSync(join(tmpdir(), 'hatchwright-ground-'));
  trees.push(top);
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(top, path)), { recursive: true });
    writeFileSync(join(top, path), text);
  }
  return top;
};

describe('nodeTooOld', () => {
  test.each(['20.19.0', '20.20.2', '22.0.0', '24.1.0'])('%s will do', (version) => {
    expect(nodeTooOld(version)).toBeNull();
  });
  test.each(['18.20.0', '20.18.9', '9.99.0'])('%s is too old, and the sentence says what is needed', (version) => {
    expect(nodeTooOld(version)).toBe(`Hatchwright needs Node 20.19 or newer; this is Node ${version}.`);
  });
});

const BUILD = { name: 'toy', config: 'none', main: 'dist/toy/main.txt', sources: ['src', 'lock.json', 'absent'] };

const toyTree = (): string => plant({ 'src/a.txt': '1', 'src/deep/b.txt': '2', 'lock.json': '{}' });

const makeToy =
  (top: string, exitCode = 0) =>
  (): number => {
    mkdirSync(join(top, 'dist/toy'), { recursive: true });
    writeFileSync(join(top, BUILD.main), 'made');
    return exitCode;
  };

describe('freshen', () => {
  test('makes once what is missing, then leaves it alone', () => {
    const top = toyTree();
    expect(freshen(BUILD, { top, make: makeToy(top) })).toBe(true);
    expect(isStale(BUILD, top)).toBe(false);
    expect(freshen(BUILD, { top, make: () => expect.unreachable('made again') })).toBe(false);
  });

  test.each<[string, (top: string) => void]>([
    ['a file is written to', (top) => writeFileSync(join(top, 'src/deep/b.txt'), 'longer than before')],
    ['a file is touched', (top) => utimesSync(join(top, 'src/a.txt'), 1000, 1000)],
    ['a file is added', (top) => writeFileSync(join(top, 'src/deep/c.txt'), '')],
    ['a file goes', (top) => rmSync(join(top, 'src/deep/b.txt'))],
    ['the lock file changes', (top) => writeFileSync(join(top, 'lock.json'), '{ "a": 1 }')],
    ['a source appears', (top) => writeFileSync(join(top, 'absent'), '')],
    ['what was made goes', (top) => rmSync(join(top, BUILD.main))],
  ])('is stale when %s', (_, change) => {
    const top = toyTree();
    freshen(BUILD, { top, make: makeToy(top) });
    change(top);
    expect(isStale(BUILD, top)).toBe(true);
  });

  test('hidden files do not matter: editors leave them behind', () => {
    const top = toyTree();
    freshen(BUILD, { top, make: makeToy(top) });
    writeFileSync(join(top, 'src/.a.swp'), '');
    expect(isStale(BUILD, top)).toBe(false);
  });

  test('a file saved while it is being made leaves it stale', () => {
    const top = toyTree();
    const make = (): number => {
      writeFileSync(join(top, 'src/a.txt'), 'saved meanwhile');
      return makeToy(top)();
    };
    freshen(BUILD, { top, make });
    expect(isStale(BUILD, top)).toBe(true);
  });

  test('what could not be made stays stale, is told, and the lock is gone', () => {
    const top = toyTree();
    freshen(BUILD, { top, make: makeToy(top) });
    writeFileSync(join(top, 'src/a.txt'), 'broken');
    expect(() => freshen(BUILD, { top, make: makeToy(top, 1) })).toThrow('could not be built');
    expect(isStale(BUILD, top)).toBe(true);
    expect(existsSync(join(top, 'dist/.toy.lock'))).toBe(false);
  });

  test('a lock left behind by a process that is gone does not hold anyone up', () => {
    const top = toyTree();
    mkdirSync(join(top, 'dist'));
    const gone = spawnSync(process.execPath, ['-e', '']).pid;
    writeFileSync(join(top, 'dist/.toy.lock'), String(gone));
    expect(freshen(BUILD, { top, make: makeToy(top) })).toBe(true);
  });
});

test('looking whether the command is stale takes little time', () => {
  fingerprint(BUILDS.cli); // the folders are in memory now, as on the second start
  const times = Array.from({ length: 5 }, () => {
    const start = performance.now();
    fingerprint(BUILDS.cli);
    return performance.now() - start;
  });
  expect(Math.min(...times)).toBeLessThan(50);
});

describe('packagesMissing', () => {
  const lock = (packages: object): string => JSON.stringify({ packages: { '': { version: '0' }, ...packages } });
  const A = { 'node_modules/a': { version: '1.0.0' } };
  const OLD = 1_000_000;

  const tree = (wanted: object, present: object | null): string => {
    const top = plant({
      'package-lock.json': lock(wanted),
      ...(present ? { 'node_modules/.package-lock.json': lock(present) } : {}),
    });
    if (present) utimesSync(join(top, 'node_modules/.package-lock.json'), OLD, OLD);
    return top;
  };

  test.each<[string, object, object | null, boolean]>([
    ['nothing is installed', A, null, true],
    ['the same is installed, though the lock file looks newer', A, A, false],
    ['another version is installed', A, { 'node_modules/a': { version: '1.0.1' } }, true],
    ['one is missing', { ...A, 'node_modules/b': { version: '1.0.0' } }, A, true],
    ['one for another machine is missing', { ...A, 'node_modules/b': { version: '1.0.0', optional: true } }, A, false],
  ])('%s', (_, wanted, present, missing) => {
    expect(packagesMissing(tree(wanted, present))).toBe(missing);
  });

  test('an installation newer than the lock file is taken on trust', () => {
    const top = tree(A, {});
    expect(packagesMissing(top)).toBe(true);
    utimesSync(join(top, 'package-lock.json'), OLD - 1, OLD - 1);
    expect(packagesMissing(top)).toBe(false);
  });
});

const TOY_COMMAND = `const [verb = 'none', code = '0'] = process.argv.slice(2);
console.log(JSON.stringify({ verb }));
process.exitCode = Number(code);
`;

/** A tree with the real launcher, the real build settings and packages, and a command of three lines. */
const launcherTree = (): string => {
  const top = plant({ 'src/views/cli/main.ts': TOY_COMMAND, 'assets/none.json': '{}' });
  for (const path of [
    'package.json',
    'package-lock.json',
    '.npmrc',
    'vite.cli.config.ts',
    'tsconfig.json',
    'src/views/ground.mjs',
    'src/views/cli/hatchwright.mjs',
  ])
    cpSync(join(TOP, path), join(top, path));
  symlinkSync(join(TOP, 'node_modules'), join(top, 'node_modules'), 'junction');
  return top;
};

const run = (top: string, command: string, args: readonly string[]) =>
  spawnSync(command, args, { cwd: top, encoding: 'utf8', timeout: 60_000 });

describe('the launcher', () => {
  const launcher = 'src/views/cli/hatchwright.mjs';

  test('builds the command when it is missing or stale, and hands on what it prints and how it ends', () => {
    const top = launcherTree();
    const first = run(top, process.execPath, [launcher, 'weigh', '1']);
    expect([first.stdout, first.stderr, first.status]).toEqual(['{"verb":"weigh"}\n', '', 1]);
    const made = readFileSync(join(top, BUILDS.cli.main), 'utf8');
    writeFileSync(join(top, BUILDS.cli.main), `${made}\nconsole.error('kept');\n`);
    expect(run(top, process.execPath, [launcher, 'weigh']).stderr).toBe('kept\n');
    writeFileSync(join(top, 'src/views/cli/main.ts'), TOY_COMMAND.replace('{ verb }', '{ verb, second: true }'));
    expect(run(top, process.execPath, [launcher, 'draw']).stdout).toBe('{"verb":"draw","second":true}\n');
  }, 60_000);

  test('a command that cannot be built: standard output stays empty, exit code 2', () => {
    const top = launcherTree();
    writeFileSync(join(top, 'src/views/cli/main.ts'), 'const = ;\n');
    const result = run(top, process.execPath, [launcher, 'weigh']);
    expect([result.stdout, result.status]).toEqual(['', 2]);
    expect(result.stderr).toContain('could not be built');
  }, 60_000);

  test('two at once build once and both run', async () => {
    const top = launcherTree();
    const { spawn } = await import('node:child_process');
    const start = (): Promise<string> =>
      new Promise((settle) => {
        const child = spawn(process.execPath, [launcher, 'weigh'], { cwd: top });
        let out = '';
        child.stdout.on('data', (data: Buffer) => {
          out += data.toString();
        });
        child.on('close', (code) => settle(`${code} ${out}`));
      });
    expect(await Promise.all([start(), start(), start()])).toEqual(Array(3).fill('0 {"verb":"weigh"}\n'));
  }, 60_000);

  test('npx and npm run find it in the repository itself', () => {
    const top = launcherTree();
    const npx = run(top, 'npx', ['--no', 'hatchwright', 'weigh', '2']);
    expect([npx.stdout, npx.status]).toEqual(['{"verb":"weigh"}\n', 2]);
    const npm = run(top, 'npm', ['run', '-s', 'hatchwright', '--', 'weigh', '2']);
    expect([npm.stdout, npm.status]).toEqual(['{"verb":"weigh"}\n', 2]);
  }, 60_000);
});
