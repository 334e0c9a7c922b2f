import * as fc from 'fast-check';
import loadHighs from 'highs';
import { describe, expect, test } from 'vitest';
import { boundOf, createImprover, highsSolver, proveTwoStage, validateLayout } from '../../../src/shop/layout/index.ts';
import { cabinetJob, part, plainJob } from './jobs.ts';

const solver = highsSolver(await loadHighs());

describe('proof for two-stage cutting', () => {
  test('three strips that no sheet takes together', () => {
    // parts of 600 × 700 locked to the grain in 1000 × 1000: one a sheet, though area alone says 3 × 0.42 → 2
    const job = plainJob([part('a', 600, 700, 3, { grain: 'length' })], {
      stock: [{ name: 's', length: 1000, width: 1000, quantity: null, price: 10 }],
      stages: 2,
    });
    const improver = createImprover(job, 1);
    proveTwoStage(improver, solver);
    expect(improver.best().sheets).toHaveLength(3);
    expect(improver.best().proof.verdict).toBe('optimal');
  });

  test('a mix of priced sheets: the cheaper mix is found and judged clean', () => {
    // four of 500 × 500: one sheet of 1000 × 1000 at 10, or four of 500 × 500 at 2 each = 8
    const job = plainJob([part('a', 500, 500, 4)], {
      stock: [
        { name: 'large', length: 1000, width: 1000, quantity: null, price: 10 },
        { name: 'small', length: 500, width: 500, quantity: null, price: 2 },
      ],
      stages: 2,
    });
    const improver = createImprover(job, 1);
    proveTwoStage(improver, solver);
    const layout = improver.best();
    expect(validateLayout(job, layout)).toEqual([]);
    expect(layout.price).toBe(8);
  });

  test.each([1, 2, 3])('cabinet job %i: within one sheet of the proven bound, judged clean', (seed) => {
    const job = cabinetJob(seed, { stages: 2 });
    const improver = createImprover(job, 1);
    proveTwoStage(improver, solver);
    improver.step(4000);
    const layout = improver.best();
    expect(validateLayout(job, layout)).toEqual([]);
    const staged = improver.searches.reduce((sum, search) => sum + search.stagedPrice, 0) / 80;
    expect(layout.sheets.length - staged).toBeLessThanOrEqual(1);
    expect(layout.sheets.length).toBeGreaterThanOrEqual(staged);
  });

  test('the bound never exceeds a layout that was cut', () => {
    const sizes = fc.record({
      length: fc.integer({ min: 50, max: 900 }),
      width: fc.integer({ min: 50, max: 900 }),
      quantity: fc.integer({ min: 1, max: 6 }),
    });
    fc.assert(
      fc.property(fc.array(sizes, { minLength: 1, maxLength: 8 }), fc.boolean(), (parts, turned) => {
        const job = plainJob(
          parts.map((one, i) => ({ mark: `${i}`, ...one, grain: turned ? 'any' : 'length' })),
          { stock: [{ name: 's', length: 1000, width: 1000, quantity: null, price: 1 }], stages: 2 },
        );
        const improver = createImprover(job, 1);
        improver.step(100);
        const [search] = improver.searches;
        if (search === undefined) throw new Error('no search');
        const before = improver.best().sheets.length;
        proveTwoStage(improver, solver);
        const layout = improver.best();
        expect(validateLayout(job, layout)).toEqual([]);
        expect(layout.sheets.length).toBeLessThanOrEqual(before);
        expect(search.stagedPrice).toBeLessThanOrEqual(layout.sheets.length);
        expect(boundOf(search.problem, search.problem.pieces).sheets).toBeLessThanOrEqual(layout.sheets.length);
      }),
      { seed: 11, numRuns: 60 },
    );
  });
});
