import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { houseRules, standardCatalog } from '../../src/catalog/index.ts';
import { solveFitOut } from '../../src/fitout/index.ts';
import {
  cutList,
  hardwareList,
  layoutSheets,
  markParts,
  priceOf,
  sheetJobs,
  validateLayout,
} from '../../src/shop/index.ts';
import { randomDesign } from './arbitrary.ts';

const catalog = standardCatalog();
const rules = houseRules(catalog, []);
const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
const area = ({ length, width }: { readonly length: number; readonly width: number }): number => length * width;

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
});
