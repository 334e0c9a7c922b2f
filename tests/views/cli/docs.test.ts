import { mkdirSync, readFileSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { TOP } from '../../../src/views/ground.mjs';
import { inProcess, PATIENCE_MS, scratch } from './command.ts';

// Every call in docs/terminal.md is made, and every document shown there is held against what the verb prints.
const page = readFileSync(join(TOP, 'docs/terminal.md'), 'utf8');
const { at, sweep } = scratch();
const before = process.cwd();
vi.setConfig({ testTimeout: PATIENCE_MS });
beforeAll(() => {
  mkdirSync(at('here'));
  symlinkSync(join(TOP, 'assets'), at('here', 'assets'));
  process.chdir(at('here'));
});
afterAll(() => {
  process.chdir(before);
  sweep();
});

const blocks = (language: string, text: string): readonly string[] =>
  [...text.matchAll(new RegExp(`\`\`\`${language}\\n([\\s\\S]*?)\`\`\``, 'g'))].map(([, inside]) => inside ?? '');

interface Section {
  readonly verb: string;
  readonly calls: readonly (readonly string[])[];
  readonly shown: unknown;
}

const sections: readonly Section[] = page
  .split(/^## /m)
  .slice(1)
  .map((text) => ({
    verb: text.split('\n')[0] ?? '',
    calls: blocks('sh', text).flatMap((block) =>
      block
        .trim()
        .split('\n')
        .map((line) => line.replace(/^npx hatchwright /, '').split(' ')),
    ),
    shown: JSON.parse(blocks('json', text)[0] ?? 'null'),
  }));

/** Names of all keys, with those of the first item of each list; lists that the page leaves empty are left out. */
const keysOf = (value: unknown, path = ''): readonly string[] => {
  if (Array.isArray(value)) return typeof value[0] === 'object' ? keysOf(value[0], `${path}[]`) : [];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inside]) => [`${path}.${key}`, ...keysOf(inside, `${path}.${key}`)]);
};

it('has a section for each verb that is offered', async () => {
  const { out } = await inProcess(['--help']);
  const offered = [...out.matchAll(/^ {2}([a-z]+) \[options\]/gm)].map(([, verb]) => verb);
  expect(sections.map(({ verb }) => verb)).toEqual(offered);
});

describe.each(sections)('$verb', ({ verb, calls, shown }) => {
  it('runs as the page says', async () => {
    expect(calls.length).toBeGreaterThan(0);
    for (const args of calls) {
      expect(args[0]).toBe(verb);
      const { code, out, complaints } = await inProcess(args);
      expect([0, 1]).toContain(code);
      expect(complaints).toBe('');
      if (args.includes('--json')) JSON.parse(out);
    }
  });

  it('prints the keys that the page shows', async () => {
    const [call = []] = calls;
    const { out } = await inProcess([...call.filter((word) => word !== '--json'), '--json']);
    const [real, told] = [JSON.parse(out), shown as Record<string, unknown>];
    expect(Object.keys(told).sort()).toEqual(Object.keys(real).sort());
    // A demo job may have no finding with a way out: only what is there can be compared.
    const realKeys = keysOf(real);
    const isThere = (key: string): boolean => {
      const list = key.lastIndexOf('[]');
      return list < 0 || realKeys.some((other) => other.startsWith(key.slice(0, list + 2)));
    };
    for (const key of keysOf(told).filter(isThere)) expect(realKeys).toContain(key);
  });
});
