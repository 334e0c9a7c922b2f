import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { radians } from '../../src/base/index.ts';
import { bendOf, flatLength } from '../../src/fitout/bend.ts';

interface BendCase {
  readonly thicknessMm: number;
  readonly insideRadiusMm: number;
  readonly kFactor: number;
  readonly bendDeg: number;
  readonly outsideFlangesMm: readonly number[];
  readonly expect: {
    readonly bendAllowanceMm: number;
    readonly bendDeductionMm: number;
    readonly flatLengthMm: number;
  };
}
const reference = JSON.parse(readFileSync(new URL('../reference/bends.json', import.meta.url), 'utf8')) as {
  readonly tolerance: number;
  readonly cases: readonly BendCase[];
};

describe('bends of sheet metal', () => {
  it('are those that were worked out apart from this program', () => {
    expect(reference.cases.length).toBeGreaterThan(3);
    for (const { thicknessMm, bendDeg, outsideFlangesMm, expect: wanted, ...sheet } of reference.cases) {
      const bend = bendOf(thicknessMm, sheet, radians(bendDeg));
      expect(Math.abs(bend.allowanceMm - wanted.bendAllowanceMm)).toBeLessThan(reference.tolerance);
      expect(Math.abs(bend.deductionMm - wanted.bendDeductionMm)).toBeLessThan(reference.tolerance);
      expect(Math.abs(flatLength(outsideFlangesMm, bend) - wanted.flatLengthMm)).toBeLessThan(reference.tolerance);
    }
  });

  it('leave a strip without a bend as long as it is', () => {
    expect(flatLength([123], bendOf(2, { insideRadiusMm: 3, kFactor: 0.4 }, Math.PI / 2))).toBe(123);
  });
});
