import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  createImprover,
  type Layout,
  type LayoutJob,
  type LayoutPart,
  type StockSheet,
  validateLayout,
} from '../../../src/shop/layout/index.ts';
import { part, plainJob } from './jobs.ts';

const solve = (job: LayoutJob, turns = 200, seed = 1): Layout => {
  const improver = createImprover(job, seed);
  improver.step(turns);
  return improver.best();
};

const board: StockSheet = { name: 'board', length: 2440, width: 1220, quantity: null, price: 80 };
const left = (name: string, length: number, width: number, quantity = 1): StockSheet => ({
  name,
  length,
  width,
  quantity,
  price: 0,
  offcut: true,
});

const anyStock: fc.Arbitrary<readonly StockSheet[]> = fc
  .record({
    boards: fc.constantFrom<(number | null)[]>(null, null, 0, 1, 2),
    small: fc.constantFrom(0, 1, 3),
    offcuts: fc.array(
      fc.record({
        length: fc.integer({ min: 100, max: 1200 }),
        width: fc.integer({ min: 100, max: 900 }),
        quantity: fc.integer({ min: 0, max: 3 }),
      }),
      { maxLength: 4 },
    ),
  })
  .map(({ boards, small, offcuts }) => [
    ...offcuts.map(({ length, width, quantity }, i) => left(`left ${i}`, length, width, quantity)),
    { ...board, quantity: boards },
    { name: 'small', length: 1525, width: 1525, quantity: small, price: 55 },
  ]);

const anyJob: fc.Arbitrary<LayoutJob> = fc
  .record({
    parts: fc.array(
      fc.record({
        length: fc.integer({ min: 50, max: 1300 }),
        width: fc.integer({ min: 50, max: 900 }),
        quantity: fc.integer({ min: 1, max: 5 }),
        grain: fc.constantFrom('length', 'any' as const),
      }),
      { minLength: 1, maxLength: 12 },
    ),
    stock: anyStock,
    kerf: fc.constantFrom(0, 3.2),
    stages: fc.constantFrom<LayoutJob['stages'][]>(2, 3, 'any'),
  })
  .map(({ parts, stock, kerf, stages }) =>
    plainJob(
      parts.map((one, i): LayoutPart => ({ mark: `M${i}`, ...one })),
      { stock, kerf, stages, trim: { left: 10, right: 10, bottom: 10, top: 10 } },
    ),
  );

/** A thousandth for the rounding to whole units. */
const NEAR = 0.001;
const goesOn = (one: LayoutPart, { length, width }: StockSheet): boolean =>
  (one.length <= length - NEAR && one.width <= width - NEAR) ||
  (one.grain === 'any' && one.width <= length - NEAR && one.length <= width - NEAR);

/** Offcuts that lie unused though a part on a bought sheet, or on none, would go on them. */
const leftLying = (job: LayoutJob, layout: Layout): readonly string[] => {
  const bought = layout.sheets.filter(({ offcut }) => !offcut).flatMap(({ parts }) => parts);
  const elsewhere = new Set([...bought, ...layout.unplaced].map(({ mark }) => mark));
  const used = (name: string): number => layout.sheets.filter(({ stock }) => stock === name).length;
  return job.stock
    .filter((stock) => stock.offcut === true && used(stock.name) < (stock.quantity ?? 0))
    .filter((stock) => job.parts.some((one) => elsewhere.has(one.mark) && goesOn(one, stock)))
    .map(({ name }) => name);
};

describe('offcuts in hand', () => {
  test('take a part though the sheet that is bought anyway has room for it', () => {
    // 2400 × 1000 needs the board, and 400 × 150 would lie beside it.
    const job = plainJob([part('large', 2400, 1000), part('small', 400, 150)], {
      stock: [board, left('rack 2', 500, 300), left('rack 1', 450, 200)],
    });
    const layout = solve(job);
    // The smaller of the two that would do.
    expect(layout.sheets.map(({ stock, parts }) => [stock, parts.map(({ mark }) => mark)])).toEqual([
      ['rack 1', ['small']],
      ['board', ['large']],
    ]);
    expect(layout.price).toBe(80);
  });

  test('with a price of their own are used where that is cheaper', () => {
    const stock = (price: number): readonly StockSheet[] => [board, { ...left('rack', 900, 600), price }];
    const alone = [part('a', 800, 500)];
    expect(solve(plainJob(alone, { stock: stock(12) })).price).toBe(12);
    // The board is bought anyway and has room: 12 is saved.
    const both = [part('large', 2440, 700), part('a', 800, 500)];
    expect(solve(plainJob(both, { stock: stock(12) })).price).toBe(80);
  });

  test('are not turned against the grain', () => {
    const job = plainJob([part('a', 700, 300, 1, { grain: 'length' })], { stock: [board, left('rack', 400, 800)] });
    expect(solve(job).sheets.map(({ stock }) => stock)).toEqual(['board']);
  });

  test('on random jobs: never more than there are, used before a sheet, and the judge finds nothing', () => {
    const seen = { offcuts: 0, short: 0, sheets: 0 };
    fc.assert(
      fc.property(anyJob, fc.nat(1000), (job, seed) => {
        const improver = createImprover(job, seed);
        for (const turns of [1, 40, 200]) {
          improver.step(turns);
          const layout = improver.best();
          expect(validateLayout(job, layout)).toEqual([]);
          for (const { name, quantity } of job.stock)
            expect(layout.sheets.filter(({ stock }) => stock === name).length).toBeLessThanOrEqual(
              quantity ?? Number.POSITIVE_INFINITY,
            );
          expect(leftLying(job, layout)).toEqual([]);
          seen.offcuts += layout.sheets.filter(({ offcut }) => offcut).length;
          seen.sheets += layout.sheets.filter(({ offcut }) => !offcut).length;
          seen.short += layout.unplaced.filter(({ reason }) => reason === 'stock-used-up').length;
        }
      }),
      { seed: 77, numRuns: 150 },
    );
    // Each of the three came up often enough to have been tried.
    expect(Math.min(...Object.values(seen))).toBeGreaterThan(100);
  });
});
