import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { RULE_IDS } from '../../src/inspection/index.ts';
import { faultsOf, pageFaultsOf } from './worked/faults.ts';
import { EXAMPLES } from './worked/index.ts';
import { PAGE_SUMS } from './worked/page-sums.ts';

test('every rule has one worked example, in the order of the rules', () => {
  expect(RULE_IDS.filter((id) => EXAMPLES.filter(({ rule }) => rule === id).length !== 1)).toEqual([]);
  expect(EXAMPLES.length).toBe(RULE_IDS.length);
});

describe('every number of a worked example is what its scene is built from, or what the inspection makes of it', () => {
  test.each(EXAMPLES.map((own) => [own.rule, own] as const))('%s', (_, own) => {
    expect(faultsOf(own)).toEqual([]);
  });
});

describe('worked sums of other pages', () => {
  const textOf = (page: string): string => readFileSync(`docs/${page}`, 'utf8');

  test.each(PAGE_SUMS.map((own) => [own.page, own.words, own] as const))('%s: %s', (page, words, own) => {
    expect(textOf(page)).toContain(words);
    expect(pageFaultsOf(own)).toEqual([]);
  });

  /** What follows “Worked”, and the last cells of the tables whose last column is `worked`. */
  const sumsOf = (text: string): readonly string[] => {
    const tables = text.split('\n\n').filter((block) => / worked \|\n/.test(block));
    const cells = tables.flatMap((table) =>
      table
        .trim()
        .split('\n')
        .slice(2)
        .map((row) => row.replace(/ ?\|$/, '').split(' | ').at(-1)?.trim() ?? ''),
    );
    return [...text.split('*Worked*:').slice(1), ...cells].map((sum) => sum.trim()).filter((sum) => /\d/.test(sum));
  };

  test('no worked sum of these pages is left out', () => {
    const all = (['loads.md', 'reach.md', 'power.md'] as const).flatMap((page) => sumsOf(textOf(page)));
    expect(all.length).toBeGreaterThanOrEqual(PAGE_SUMS.length);
    expect(all.filter((sum) => !PAGE_SUMS.some(({ words }) => sum.startsWith(words)))).toEqual([]);
  });
});
