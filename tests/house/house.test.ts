import { expect, test } from 'vitest';
import { TOP } from '../../src/views/ground.mjs';
import { readHouse } from './house.ts';
import { HOUSE_RULE_NAMES, HOUSE_RULES } from './rules.ts';

const house = readHouse(TOP);

test('the house is read at all: base and its door are there', () => {
  expect(house.sources.map(({ path }) => path)).toContain('src/base/index.ts');
  expect(house.files.map(({ path }) => path)).toContain('package-lock.json');
});

test.each(HOUSE_RULE_NAMES)('%s', (name) => {
  expect(HOUSE_RULES[name](house).map(({ at, says }) => `${at} ${says}`)).toEqual([]);
});
