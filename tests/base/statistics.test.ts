import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chiSquareTail, normalTails, normalTwoSided } from '../../src/base/index.ts';

describe('chiSquareTail', () => {
  it('agrees with printed tables', () => {
    // Upper 5 % points: 3.841459 (1), 18.307038 (10), 124.342113 (100); upper 0.1 %: 10.827566 (1), 29.588298 (10).
    for (const [value, degrees, tail] of [
      [3.841459, 1, 0.05],
      [18.307038, 10, 0.05],
      [124.342113, 100, 0.05],
      [10.827566, 1, 0.001],
      [29.588298, 10, 0.001],
    ] as const)
      expect(Math.abs(chiSquareTail(value, degrees) / tail - 1)).toBeLessThan(0.00001);
  });

  it('for two degrees of freedom is e to the minus half of the value, and for four that times 1 + half', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 400, noNaN: true }), (value) => {
        const simple = Math.exp(-value / 2);
        expect(chiSquareTail(value, 2) / simple).toBeCloseTo(1, 10);
        expect(chiSquareTail(value, 4) / (simple * (1 + value / 2))).toBeCloseTo(1, 10);
      }),
      { seed: 21 },
    );
  });

  it('falls as the value grows, from one', () => {
    expect(chiSquareTail(0, 7)).toBe(1);
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 300 }),
        fc.double({ min: 0, max: 500, noNaN: true }),
        fc.double({ min: 0.1, max: 50, noNaN: true }),
        (degrees, value, more) => {
          expect(chiSquareTail(value + more, degrees)).toBeLessThanOrEqual(chiSquareTail(value, degrees));
        },
      ),
      { seed: 22 },
    );
  });
});

describe('normalTails and normalTwoSided', () => {
  it('agree with printed tables', () => {
    // Two-sided: 5 % 1.959964, 1 % 2.575829, 0.1 % 3.290527, 68.2689 % within one.
    expect(normalTwoSided(0.05)).toBeCloseTo(1.959964, 6);
    expect(normalTwoSided(0.01)).toBeCloseTo(2.575829, 6);
    expect(normalTwoSided(0.001)).toBeCloseTo(3.290527, 6);
    expect(normalTails(1)).toBeCloseTo(1 - 0.682689492, 9);
    expect(normalTails(-1)).toBe(normalTails(1));
  });

  it('undo each other', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.0001, max: 0.9999, noNaN: true }), (chance) => {
        expect(normalTails(normalTwoSided(chance)) / chance).toBeCloseTo(1, 9);
      }),
      { seed: 23 },
    );
  });

  it('refuses what is no chance', () => {
    for (const chance of [0, 1, -0.1, Number.NaN]) expect(() => normalTwoSided(chance)).toThrow('is not a chance');
  });
});
