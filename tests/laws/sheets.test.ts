import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { groupBy } from '../../src/base/index.ts';
import { houseRules, standardCatalog } from '../../src/catalog/index.ts';
import { addStock } from '../../src/design/index.ts';
import { solveFitOut } from '../../src/fitout/index.ts';
import {
  cutList,
  hardwareList,
  layoutSheets,
  markParts,
  priceOf,
  readDesignStock,
  sheetJobs,
  stockLeft,
  stockLeftCsv,
  validateLayout,
} from '../../src/shop/index.ts';
import { randomDesign } from './arbitrary.ts';

const catalog = standardCatalog();
const rules = houseRules(catalog, []);
const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
const area = ({ length, width }: { readonly length: number; readonly width: number }): number => length * width;

const materials = ['birch-ply-18', 'birch-ply-12', 'birch-ply-6', 'birch-ply-9'];
const anyRows = fc.array(
  fc
    .record({
      material: fc.constantFrom(...materials),
      name: fc.constantFrom('Rack 1', 'Rack 2', '2440 × 1220', 'Größe ½, "alt"'),
      lengthMm: fc.integer({ min: 150, max: 2600 }),
      widthMm: fc.integer({ min: 150, max: 1250 }),
      quantity: fc.constantFrom(0, 1, 2, 5),
      price: fc.constantFrom(null, 0, 30),
      offcut: fc.boolean(),
    })
    // An offcut with a price of its own need not be used.
    .map((row) => (row.offcut ? { ...row, price: null } : row)),
  { minLength: 2, maxLength: 12 },
);

describe('from the cut list to the sheets and the price', () => {
  it('every part is on a sheet or named, parts are no more than their sheets, and the price adds up', () => {
    let laid = 0;
    fc.assert(
      fc.property(randomDesign(fc), (design) => {
        const fitout = solveFitOut(design, catalog, rules);
        const rows = cutList({ fitout, marks: markParts(fitout), catalog, rules });
        const layouts = layoutSheets(sheetJobs(rows, catalog, rules, []), { seed: 3, steps: 20 });
        for (const { board, layout } of layouts.boards) {
          expect(validateLayout(board.job, layout)).toEqual([]);
          const asked = sum(board.job.parts.map((part) => part.quantity * area(part)));
          const missing = sum(
            layout.unplaced.map(
              ({ mark, count }) =>
                count * area(board.job.parts.find((part) => part.mark === mark) ?? { length: 0, width: 0 }),
            ),
          );
          const lying = sum(layout.sheets.flatMap(({ parts }) => parts.map(area)));
          expect(lying).toBeCloseTo(asked - missing, 3);
          expect(lying).toBeLessThanOrEqual(sum(layout.sheets.map(({ usable }) => area(usable))));
          expect(layout.price).toBeCloseTo(sum(layout.sheets.map(({ price }) => price)), 6);
          laid += layout.sheets.length;
        }
        const price = priceOf({
          design,
          fitout,
          catalog,
          rules,
          layouts,
          hardware: hardwareList({ fitout, catalog, rules }),
        });
        expect(price.total).toBeCloseTo(sum(price.lines.map(({ amount }) => amount)), 2);
      }),
      { seed: 1208, numRuns: 60 },
    );
    expect(laid).toBeGreaterThan(100);
  });

  it('with stock of its own: no row more often than it is there, offcuts before sheets, every part on one or named', () => {
    const seen = { offcuts: 0, missing: 0 };
    fc.assert(
      fc.property(randomDesign(fc), anyRows, (plain, rows) => {
        const design = addStock(plain, rows).design;
        const fitout = solveFitOut(design, catalog, rules);
        const cut = cutList({ fitout, marks: markParts(fitout), catalog, rules });
        const layouts = layoutSheets(sheetJobs(cut, catalog, rules, design.stock), { seed: 5, steps: 10 });
        for (const { board, layout } of layouts.boards) {
          expect(validateLayout(board.job, layout)).toEqual([]);
          const used = groupBy(layout.sheets, ({ stock }) => stock);
          for (const { name, quantity, offcut, length, width } of board.job.stock) {
            const count = used.get(name)?.length ?? 0;
            expect(count).toBeLessThanOrEqual(quantity ?? Number.POSITIVE_INFINITY);
            if (offcut !== true || count === quantity) continue;
            // It lies unused: nothing that is sawn from a sheet, or from none, would go on it.
            const elsewhere = layout.sheets.flatMap((sheet) => (sheet.offcut ? [] : sheet.parts));
            const marks = new Set([...elsewhere, ...layout.unplaced].map(({ mark }) => mark));
            const fits = board.job.parts.filter(
              (part) =>
                marks.has(part.mark) &&
                Math.min(part.length, part.width) >= (board.job.minStrip ?? 0) &&
                ((part.length < length && part.width < width) ||
                  (part.grain === 'any' && part.width < length && part.length < width)),
            );
            expect(fits.map(({ mark }) => mark)).toEqual([]);
          }
        }
        const laid = sum(layouts.boards.flatMap(({ layout }) => layout.sheets.map(({ parts }) => parts.length)));
        expect(laid + layouts.unplaced).toBe(fitout.panels.length);
        const left = readDesignStock(stockLeftCsv(stockLeft(design, layouts, catalog), catalog), catalog);
        // A file without a row is no list.
        expect(left.ok ? left.value : []).toEqual(stockLeft(design, layouts, catalog));
        seen.offcuts += layouts.offcuts;
        seen.missing += layouts.unplaced;
      }),
      { seed: 4711, numRuns: 60 },
    );
    expect(seen.offcuts).toBeGreaterThan(50);
    expect(seen.missing).toBeGreaterThan(50);
  });
});
