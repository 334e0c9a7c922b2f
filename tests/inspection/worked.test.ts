import { describe, expect, test } from 'vitest';
import { RULE_IDS } from '../../src/inspection/index.ts';
import { faultsOf } from './worked/faults.ts';
import { EXAMPLES } from './worked/index.ts';

test('every rule has one worked example, in the order of the rules', () => {
  expect(RULE_IDS.filter((id) => EXAMPLES.filter(({ rule }) => rule === id).length !== 1)).toEqual([]);
  expect(EXAMPLES.length).toBe(RULE_IDS.length);
});

describe('every number of a worked example is what its scene is built from, or what the inspection makes of it', () => {
  test.each(EXAMPLES.map((own) => [own.rule, own] as const))('%s', (_, own) => {
    expect(faultsOf(own)).toEqual([]);
  });
});
