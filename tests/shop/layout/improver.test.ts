import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createImprover, type LayoutJob, type LayoutPart, validateLayout } from '../../../src/shop/layout/index.ts';
import { cabinetJob, part, plainJob } from './jobs.ts';

const solve = (job: LayoutJob, turns = 400, seed = 1) => {
  const improver = createImprover(job, seed);
  improver.step(turns);
  return improver.best();
};

const partsOf = fc.array(
  fc.record({
    length: fc.integer({ min: 20, max: 1300 }),
    width: fc.integer({ min: 15, max: 900 }),
    quantity: fc.integer({ min: 1, max: 5 }),
    grain: fc.constantFrom('length', 'width', 'any' as const),
    group: fc.constantFrom(undefined, undefined, undefined, 'a', 'b'),
  }),
  { minLength: 1, maxLength: 14 },
);

const anyJob: fc.Arbitrary<LayoutJob> = fc
  .record({
    parts: partsOf,
    kerf: fc.constantFrom(0, 1.6, 3.2, 4),
    trim: fc.constantFrom(0, 5, 10),
    stages: fc.constantFrom<LayoutJob['stages'][]>(2, 3, 'any'),
    cut: fc.constantFrom('saw', 'saw', 'saw', 'router', 'shear' as const),
    ripLimit: fc.constantFrom(undefined, undefined, 760, 500),
    longestCut: fc.constantFrom(undefined, undefined, 1300),
    minStrip: fc.constantFrom(undefined, undefined, 40, 60),
    firstCut: fc.constantFrom(undefined, undefined, 'rip', 'crosscut' as const),
    few: fc.boolean(),
    offcut: fc.boolean(),
  })
  .map(
    ({ parts, kerf, trim, stages, cut, few, offcut, firstCut, ripLimit, longestCut, minStrip }): LayoutJob => ({
      parts: parts.map(({ group, ...one }, i): LayoutPart => ({ mark: `M${i}`, ...one, ...(group && { group }) })),
      stock: [
        { name: 'board', length: 2440, width: 1220, quantity: few ? 2 : null, price: 80 },
        { name: 'small', length: 1525, width: 1525, quantity: 1, price: 55 },
        ...(offcut ? [{ name: 'left', length: 800, width: 600, quantity: 1, price: 0, offcut: true }] : []),
      ],
      cut,
      kerf,
      trim: { left: trim, right: 0, bottom: trim, top: 0 },
      stages,
      keep: { minSide: 250, minAreaMm2: 100_000, valueShare: 0.5 },
      ...(ripLimit && { ripLimit }),
      ...(firstCut && { firstCut }),
      ...(longestCut && { longestCut }),
      ...(minStrip && { minStrip }),
    }),
  );

describe('laws of every layout', () => {
  test('the judge finds nothing, whatever the job', () => {
    fc.assert(
      fc.property(anyJob, fc.integer({ min: 0, max: 1000 }), (job, seed) => {
        expect(validateLayout(job, solve(job, 60, seed))).toEqual([]);
      }),
      { seed: 5, numRuns: 150 },
    );
  });
});

describe('cabinet jobs', () => {
  test.each([1, 2, 3])('job %i: judged clean in any, three and two stages', (seed) => {
    for (const stages of ['any', 3, 2] as const) {
      const job = cabinetJob(seed, { stages });
      const layout = solve(job, 500);
      expect(validateLayout(job, layout)).toEqual([]);
      expect(layout.unplaced).toEqual([]);
    }
  });
  test('plain job is proved', () => {
    const layout = solve(plainJob([part('a', 1220, 610, 4)]));
    // four quarters of a sheet fill it: 4 × 1220 × 610 = 2440 × 1220
    expect(layout.sheets).toHaveLength(1);
    expect(layout.proof.verdict).toBe('optimal');
  });
});
