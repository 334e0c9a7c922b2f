import { expect, it } from 'vitest';
import { sayLoadPlate } from '../../src/says/index.ts';

it('a plate gives its load in both units, neither rounded up', () => {
  // 38 / 0.45359237 = 83.8 lb.
  expect(sayLoadPlate(38, 'mm')).toBe('Safe load 38 kg (83 lb), spread evenly. Lock it shut before driving.');
  expect(sayLoadPlate(38, 'in')).toMatch(/^Safe load 83 lb \(38 kg\)/);
});
