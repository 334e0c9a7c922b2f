import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it, vi } from 'vitest';
import { BUILDS, TOP } from '../../../src/views/ground.mjs';
import { buildCommand, demoPath, filesUnder, hatchwright, outOfTheVehicle, PATIENCE_MS, scratch } from './command.ts';

// The built command as a process: exit codes, the two streams, and what only a bundle can get wrong. Everything else
// about the verbs is tested without starting Node.
const { at, sweep } = scratch();
vi.setConfig({ testTimeout: PATIENCE_MS });
beforeAll(() => {
  buildCommand();
  writeFileSync(at('out.json'), outOfTheVehicle());
}, PATIENCE_MS);
afterAll(sweep);

it('ends with 0 on a sound file, from any folder', () => {
  expect(hatchwright(['check', demoPath('quillmoor'), '--json'], at())).toEqual({
    code: 0,
    out: '{\n  "problems": []\n}\n',
    complaints: '',
  });
});

it('ends with 2 on bad input, with words on standard error alone', () => {
  const { code, out, complaints } = hatchwright(['inspect', 'nowhere.json']);
  expect([code, out]).toEqual([2, '']);
  expect(complaints).toBe('nowhere.json: there is no such file\n');
});

it('ends with 2 on a verb that it does not have', () => {
  expect(hatchwright(['polish'])).toMatchObject({ code: 2, out: '' });
});

it('ends with 1 while a stop stands, and finds the solid kernel beside nothing but its packages', () => {
  const { code, out, complaints } = hatchwright(['inspect', 'out.json', '--json'], at());
  expect([code, complaints]).toEqual([1, '']);
  expect(JSON.parse(out).findings.length).toBeGreaterThan(0);
});

it('writes a packet into a folder beside the design', () => {
  const { code, out } = hatchwright(['packet', 'out.json', '--to', 'packet', '--json'], at());
  expect(code).toBe(1);
  expect(filesUnder(at('packet')).size).toBe(JSON.parse(out).files.length);
});

it('does not mind a reader that has seen enough', () => {
  const command = `"${process.execPath}" "${join(TOP, BUILDS.cli.main)}" weigh "${demoPath('harrow-fell')}" --json | head -n 1`;
  const ran = spawnSync('sh', ['-c', command], { encoding: 'utf8' });
  expect([ran.stdout, ran.stderr]).toEqual(['{\n', '']);
});
