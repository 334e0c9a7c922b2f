import { spawnSync } from 'node:child_process';
import { chmodSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { TOP } from '../src/views/ground.mjs';
import { findProgram } from './needs.mjs';

const folder = mkdtempSync(join(tmpdir(), 'hatchwright-needs-'));
afterAll(() => rmSync(folder, { recursive: true }));

const program = (path: string, text: string, mode = 0o755): void => {
  writeFileSync(path, text);
  chmodSync(path, mode);
};

describe('findProgram', () => {
  const env = { PATH: ['', join(folder, 'absent'), folder].join(delimiter) };
  program(join(folder, 'second'), '');
  program(join(folder, 'data'), '', 0o644);

  test('gives the first name that can be run', () => {
    expect(findProgram(['first', 'second'], env)).toBe(join(folder, 'second'));
    expect(findProgram([join(folder, 'second')], {})).toBe(join(folder, 'second'));
    expect(findProgram(['first'], env)).toBeNull();
  });

  test('a file that cannot be run, or a folder, is no program', () => {
    expect(findProgram([folder], env)).toBeNull();
    expect(findProgram(['data'], env)).toBeNull();
  });
});

/** What `provide` answers and prints where the PATH holds nothing but the folder. */
const provideIn = (path: string): string => {
  const script = "import { NEEDS, provide } from './tests/needs.mjs'; console.log(String(provide(NEEDS.chromium)));";
  const env = { PATH: path };
  return spawnSync(process.execPath, ['--input-type=module', '-e', script], { cwd: TOP, env, encoding: 'utf8' }).stdout;
};

describe.skipIf(process.platform !== 'linux')('provide', () => {
  const fresh = (name: string): string => {
    const path = join(folder, name);
    mkdirSync(path);
    return path;
  };

  test('takes what is there', () => {
    const path = fresh('there');
    program(join(path, 'google-chrome'), '');
    expect(provideIn(path)).toBe(`${join(path, 'google-chrome')}\n`);
  });

  test('says what to do when it is not there and nothing can install it', () => {
    expect(provideIn(fresh('bare'))).toMatch(/^No Chromium or Chrome was found: .*\nnull\n$/);
  });

  test.skipIf(process.getuid?.() !== 0)('installs the package where the machine can, and says so', () => {
    const path = fresh('debian');
    // An installer that notes what it was asked for, and brings the program along.
    program(
      join(path, 'apt-get'),
      `#!/bin/sh\necho "$@" >> "${path}/asked"\ncase "$*" in *"install"*chromium*) : > "${path}/chromium"; /bin/chmod 755 "${path}/chromium";; esac\n`,
    );
    expect(provideIn(path)).toBe(`Installing chromium…\n${join(path, 'chromium')}\n`);
  });
});
