import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { RULE_IDS } from '../../src/inspection/index.ts';
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
