import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { RULE_IDS } from '../../src/inspection/index.ts';
import { rulesOf, withExamples } from '../docs/worked-examples.ts';
import { demoDesign, wholeFlow } from '../golden/flow.ts';
import { rules } from './fixture.ts';
import { EXAMPLES } from './worked/index.ts';

const page = readFileSync('docs/checks.md', 'utf8');

test('the limits that the page states are those of the house rules', () => {
  const stated = [...page.matchAll(/`([a-z-]+)`,? \(?([\d.]+)(?: (?:mm|kg))?\b/g)]
    .map(([, id = '', value = '']) => [id, Number(value)] as const)
    .filter(([id]) => rules.all.has(id));
  expect(stated.length).toBeGreaterThan(20);
  expect(stated.filter(([id, value]) => rules.value(id) !== value)).toEqual([]);
});

/** The rows of the tables of checks by rule: what is checked with its formula, limit with its source, severity, worked example. */
const rows = new Map(
  page.split('\n').flatMap((line) => {
    const [, ...cells] = line.replace(/ \|$/, '').split(' | ');
    return rulesOf(line).map((id) => [id, cells] as const);
  }),
);

test('every rule has a row with what is checked, its formula, its limit, its severity and a worked example', () => {
  const faults = RULE_IDS.flatMap((id) => {
    const cells = rows.get(id);
    if (!cells) return [`${id}: no row`];
    return [
      ...(cells.length === 4 && cells.every((cell) => cell.length > 2)
        ? []
        : [`${id}: ${cells.length} cells, or an empty one`]),
      ...(/\. Formula: .*`[^`]+`/.test(cells[0] ?? '') ? [] : [`${id}: no formula`]),
    ];
  });
  expect(faults).toEqual([]);
});

test('the worked examples of the page are those that are tested', () => {
  expect(withExamples(page, EXAMPLES)).toBe(page);
  // Told apart from a page with one figure changed.
  const changed = page.replace('600 − 590 = 10', '600 − 591 = 9');
  expect(changed).not.toBe(page);
  expect(withExamples(changed, EXAMPLES)).toBe(page);
});

test('every finding of the demo with faults and of the large one says source and status of its limit', async () => {
  const flow = await wholeFlow();
  const findings = ['ten-faults', 'harrow-fell'].flatMap((name) => flow.inspection(demoDesign(name)).findings);
  expect(findings.length).toBeGreaterThan(20);
  expect(findings.filter(({ source, status }) => source === '' || status === '').map(({ rule }) => rule)).toEqual([]);
});
