import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, describe, expect, test } from 'vitest';
import { readHouse } from './house.ts';
import { HOUSE_RULE_NAMES, HOUSE_RULES, type HouseRuleName } from './rules.ts';

type Tree = Readonly<Record<string, string>>;

const HEAD = '// takes: x\n// gives: y\n// knows: z\n';

/** A small house in which everything is as it should be. */
const SOUND: Tree = {
  'package.json': JSON.stringify({ dependencies: { zod: '4.6.7' }, devDependencies: { vite: '8.3.8' } }),
  'package-lock.json': '{ "packages": { "node_modules/zod": { "version": "4.6.7", "integrity": "x" } } }',
  '.npmrc': 'fund=false\n',
  'docs/decisions/dependencies.md': '| `zod` | checks files | x |\n| `vite` | builds | x |\n',
  'assets/catalog/sheets.json': '[]',
  'src/base/index.ts': `${HEAD}export * from './a.ts';\n`,
  'src/base/a.ts': 'export const a = 1;\n',
  'src/base/tolerance.ts': 'export const ROUNDING_MM = 1e-6;\n',
  'src/design/index.ts': `${HEAD}import { a } from '../base/index.ts';\nimport s from '../../assets/catalog/sheets.json';\n`,
  'src/flow.ts': "import './design/index.ts';\n",
  'src/views/shared.mjs': "new URL('../../', import.meta.url);\n",
  'src/views/cli/main.ts':
    "import '../../flow.ts';\nimport '../shared.mjs';\nimport 'node:fs';\nconst now = Date.now();\n",
  'src/views/editor/main.tsx': "import 'react';\n",
  'tests/base/a.test.ts': "test('a', () => {});\n",
};

interface Planted {
  readonly rule: HouseRuleName;
  readonly about: string;
  readonly files: Tree;
  /** The file the fault is found in. */
  readonly at: string;
}

const inBase = (rule: HouseRuleName, about: string, text: string): Planted => ({
  rule,
  about,
  files: { 'src/base/b.ts': text },
  at: 'src/base/b.ts',
});

// Put together here, so that the rules do not find their own examples in this file.
const folder = ['', 'root', 'somebody'].join('/');

const PLANTED: readonly Planted[] = [
  { rule: 'filesStandInRooms', about: 'a room of its own', files: { 'src/utils/a.ts': '' }, at: 'src/utils/a.ts' },
  { rule: 'filesStandInRooms', about: 'a file at the top', files: { 'src/helpers.ts': '' }, at: 'src/helpers.ts' },
  inBase('importsFlowOneWay', 'a room after it', "import { d } from '../design/index.ts';"),
  inBase('importsFlowOneWay', 'a type of a room after it', "import type { D } from '../design/index.ts';"),
  inBase('importsFlowOneWay', 'the flow', "import '../flow.ts';"),
  inBase('importsFlowOneWay', 'a late import', "export const d = () => import('../design/index.ts');"),
  {
    rule: 'roomsEnteredAtDoors',
    about: 'past the door',
    files: { 'src/design/b.ts': "import { a } from '../base/a.ts';" },
    at: 'src/design/b.ts',
  },
  {
    rule: 'roomsEnteredAtDoors',
    about: 'past the door by way of export',
    files: { 'src/flow.ts': "export { a } from './base/a.ts';" },
    at: 'src/flow.ts',
  },
  inBase('nothingOutsideButAssets', 'a test', "import '../../tests/base/a.test.ts';"),
  inBase('nothingOutsideButAssets', 'the record of the package, in a core room', "import '../../package.json';"),
  {
    rule: 'viewsKeepApart',
    about: 'a sibling',
    files: { 'src/views/cli/b.ts': "import '../editor/main.tsx';" },
    at: 'src/views/cli/b.ts',
  },
  {
    rule: 'viewsKeepApart',
    about: 'shared code that knows one view',
    files: { 'src/views/b.ts': "import './editor/main.tsx';" },
    at: 'src/views/b.ts',
  },
  { rule: 'doorsAreHeaded', about: 'no head', files: { 'src/base/index.ts': '' }, at: 'src/base/index.ts' },
  {
    rule: 'doorsAreHeaded',
    about: 'an empty line in the head',
    files: { 'src/base/index.ts': '// takes: x\n// gives:\n// knows: z\n' },
    at: 'src/base/index.ts',
  },
  { rule: 'doorsAreHeaded', about: 'no door', files: { 'src/shop/a.ts': '' }, at: 'src/shop/index.ts' },
  {
    rule: 'noImportCycles',
    about: 'two files',
    files: { 'src/base/b.ts': "import './c.ts';", 'src/base/c.ts': "import './b.ts';" },
    at: 'src/base/b.ts',
  },
  {
    rule: 'noImportCycles',
    about: 'three files, one of them by its door',
    files: { 'src/base/a.ts': "import './b.ts';", 'src/base/b.ts': "export { x } from './index.ts';" },
    at: 'src/base/a.ts',
  },
  inBase('noImportCycles', 'itself', "import './b.ts';"),
  inBase('coreImportsComputeOnly', 'react', "import { useState } from 'react';"),
  inBase('coreImportsComputeOnly', 'three by subpath', "import { x } from 'three/addons/x.js';"),
  inBase('coreImportsComputeOnly', 'node', "import 'node:fs';"),
  inBase('coreImportsComputeOnly', 'node without its prefix', "import 'fs';"),
  inBase('coreImportsComputeOnly', 'a scoped package', "import '@react-three/fiber';"),
  inBase('coreIsRepeatable', 'the clock', 'const t = Date.now();'),
  inBase('coreIsRepeatable', 'the clock by constructor', 'const t = new Date();'),
  inBase('coreIsRepeatable', 'the time zone', 'const t = new Date(text);'),
  inBase('coreIsRepeatable', 'the clock as text', 'const t = Date();'),
  inBase('coreIsRepeatable', 'the fine clock', 'const t = performance.now();'),
  inBase('coreIsRepeatable', 'chance', 'const r = Math.random();'),
  inBase('coreIsRepeatable', 'the locale of numbers', 'const s = (1).toLocaleString();'),
  inBase('coreIsRepeatable', 'the locale of letters', 'list.sort((a, b) => a.localeCompare(b));'),
  inBase('coreIsRepeatable', 'a formatter', 'const f = new Intl.NumberFormat();'),
  inBase('coreIsRepeatable', 'a timer', 'setTimeout(run, 1);'),
  inBase('coreIsRepeatable', 'chance inside a template', 'const s = `${' + 'Math.random()}`;'),
  inBase('smallnessHasNames', 'a bare power', 'const eps = 1e-9;'),
  inBase('smallnessHasNames', 'a bare decimal', 'const eps = 0.0001;'),
  {
    rule: 'smallnessHasNames',
    about: 'in a view',
    files: { 'src/views/editor/b.ts': 'if (x < 1E-6) y();' },
    at: 'src/views/editor/b.ts',
  },
  { rule: 'everyTestRuns', about: 'only', files: { 'tests/a.test.ts': 'test.only(x);' }, at: 'tests/a.test.ts' },
  { rule: 'everyTestRuns', about: 'skip', files: { 'tests/a.test.tsx': 'describe.skip(x);' }, at: 'tests/a.test.tsx' },
  {
    rule: 'everyTestRuns',
    about: 'skip after another modifier',
    files: { 'tests/a.test.ts': 'test.concurrent.skip(x);' },
    at: 'tests/a.test.ts',
  },
  { rule: 'everyTestRuns', about: 'todo', files: { 'tests/a.test.ts': 'it.todo(x);' }, at: 'tests/a.test.ts' },
  inBase('nothingLeftForLater', 'in a comment', `// ${'TO' + 'DO'}: later`),
  inBase('nothingLeftForLater', 'in a string', `const s = '${'FIX' + 'ME'}';`),
  inBase('filesStayShort', '401 lines', 'x;\n'.repeat(401)),
  {
    rule: 'filesStayShort',
    about: '401 lines of style',
    files: { 'src/views/editor/a.css': 'x\n'.repeat(401) },
    at: 'src/views/editor/a.css',
  },
  inBase('noMachinePaths', 'in a string', `const p = '${folder}';`),
  { rule: 'noMachinePaths', about: 'in a page', files: { 'docs/a.md': `see ${folder}/x\n` }, at: 'docs/a.md' },
  {
    rule: 'noPackageHosts',
    about: 'a download address',
    files: { 'package-lock.json': '{ "a": { "resolved": "https://packages.example/a.tgz" } }' },
    at: 'package-lock.json',
  },
  { rule: 'noPackageHosts', about: 'a host', files: { '.npmrc': 'registry=https://packages.example/' }, at: '.npmrc' },
  {
    rule: 'dependenciesArePinned',
    about: 'a range',
    files: { 'package.json': '{ "dependencies": { "zod": "^4.6.7" }, "devDependencies": { "vite": "8.3.8" } }' },
    at: 'package.json',
  },
  {
    rule: 'dependenciesArePinned',
    about: 'a tag, for a tool',
    files: { 'package.json': '{ "dependencies": { "zod": "4.6.7" }, "devDependencies": { "vite": "latest" } }' },
    at: 'package.json',
  },
  {
    rule: 'dependenciesHaveReasons',
    about: 'no reason',
    files: { 'docs/decisions/dependencies.md': '| `zod` | checks files | x |\n' },
    at: 'docs/decisions/dependencies.md',
  },
  {
    rule: 'dependenciesHaveReasons',
    about: 'an empty reason',
    files: { 'docs/decisions/dependencies.md': '| `zod` | checks files | x |\n| `vite` |  | x |\n' },
    at: 'docs/decisions/dependencies.md',
  },
  {
    rule: 'dependenciesHaveReasons',
    about: 'a reason for nothing',
    files: { 'docs/decisions/dependencies.md': '| `zod` | a | x |\n| `vite` | b | x |\n| `gone` | c | x |\n' },
    at: 'docs/decisions/dependencies.md',
  },
];

const trees: string[] = [];
afterEach(() => {
  for (const tree of trees.splice(0)) rmSync(tree, { recursive: true });
});

const houseOf = (tree: Tree) => {
  const top = mkdtempSync(join(tmpdir(), 'hatchwright-house-'));
  trees.push(top);
  for (const [path, text] of Object.entries(tree)) {
    mkdirSync(dirname(join(top, path)), { recursive: true });
    writeFileSync(join(top, path), text);
  }
  return readHouse(top);
};

describe('a sound house passes', () => {
  test.each(HOUSE_RULE_NAMES)('%s', (name) => {
    expect(HOUSE_RULES[name](houseOf(SOUND))).toEqual([]);
  });

  test('rules look past comments, strings, fixed dates, named smallness and types that look back', () => {
    const house = houseOf({
      ...SOUND,
      'src/base/b.ts':
        "// Math.random, 1e-9\nimport type { C } from './c.ts';\nconst s = 'Date.now() 1e-9';\nnew Date(0); 1.2e-5; 11e-6;\n",
      'src/base/c.ts': "import { b } from './b.ts';\nexport interface Dated { readonly on: Date }\n",
      'src/base/lines.ts': 'x;\n'.repeat(400),
      'tests/b.test.ts': "test.skipIf(cond)('x'); const s = 'test.only';\n",
      'docs/a.md': 'docs/home/page, ./work/a, https://a.example/home/x\n',
    });
    for (const name of HOUSE_RULE_NAMES) expect(HOUSE_RULES[name](house), name).toEqual([]);
  });
});

describe('a planted fault is found', () => {
  test.each(PLANTED)('$rule: $about', ({ rule, files, at }) => {
    const faults = HOUSE_RULES[rule](houseOf({ ...SOUND, ...files }));
    expect(faults.map((fault) => fault.at.replace(/:\d+$/, ''))).toContain(at);
  });

  test('every rule has one', () => {
    const planted = new Set(PLANTED.map(({ rule }) => rule));
    expect(HOUSE_RULE_NAMES.filter((name) => !planted.has(name))).toEqual([]);
  });
});
