import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { RULE_IDS } from '../../src/inspection/index.ts';
import { demoDesign, wholeFlow } from '../golden/flow.ts';
import { rules } from './fixture.ts';

const page = readFileSync('docs/checks.md', 'utf8');

test('the page of checks names every rule', () => {
  expect(RULE_IDS.filter((id) => !page.includes(`\`${id}\``))).toEqual([]);
});

test('the limits that the page states are those of the house rules', () => {
  const stated = [...page.matchAll(/`([a-z-]+)`,? \(?([\d.]+)(?: (?:mm|kg))?\b/g)]
    .map(([, id = '', value = '']) => [id, Number(value)] as const)
    .filter(([id]) => rules.all.has(id));
  expect(stated.length).toBeGreaterThan(20);
  expect(stated.filter(([id, value]) => rules.value(id) !== value)).toEqual([]);
});

/** The rows of the tables of checks: rule, what is checked, limit with its source, severity, worked example. */
const rows = new Map(
  [...page.matchAll(/^\| ((?:`[a-z-]+`(?:, )?)+) \|(.*)\|$/gm)].flatMap(([, ids = '', rest = '']) =>
    ids.split(', ').map((id) => [id.replaceAll('`', ''), rest.split(' | ').map((cell) => cell.trim())] as const),
  ),
);

test('every rule has a row with what is checked, its limit, its severity and a worked example', () => {
  const faults = RULE_IDS.flatMap((id) => {
    const cells = rows.get(id);
    if (!cells) return [`${id}: no row`];
    return cells.length === 4 && cells.every((cell) => cell.length > 2)
      ? []
      : [`${id}: ${cells.length} cells, or an empty one`];
  });
  expect(faults).toEqual([]);
});

test('every finding of the demo with faults and of the large one says source and status of its limit', async () => {
  const flow = await wholeFlow();
  const findings = ['ten-faults', 'harrow-fell'].flatMap((name) => flow.inspection(demoDesign(name)).findings);
  expect(findings.length).toBeGreaterThan(20);
  expect(findings.filter(({ source, status }) => source === '' || status === '').map(({ rule }) => rule)).toEqual([]);
});

const testsUnder = (folder: string): string =>
  readdirSync(folder, { withFileTypes: true })
    .map((entry) => {
      const path = `${folder}/${entry.name}`;
      if (entry.isDirectory()) return testsUnder(path);
      return path.endsWith('.test.ts') && !path.endsWith('docs.test.ts') ? readFileSync(path, 'utf8') : '';
    })
    .join('\n');

test('every rule is named by a test that looks at its findings', () => {
  const tests = testsUnder('tests/inspection');
  expect(RULE_IDS.filter((id) => !new RegExp(`[ '"\`]${id}[ '"\`]`).test(tests))).toEqual([]);
});
