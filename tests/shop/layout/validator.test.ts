import { describe, expect, test } from 'vitest';
import {
  createImprover,
  type LaidSheet,
  type Layout,
  type PlacedPart,
  validateLayout,
} from '../../../src/shop/layout/index.ts';
import { part, plainJob } from './jobs.ts';

const job = plainJob([part('a', 1000, 500, 4, { grain: 'length' }), part('b', 700, 300, 6)], { kerf: 4, stages: 3 });
const improver = createImprover(job, 1);
improver.step(200);
const clean = improver.best();

const changeSheet = (change: (sheet: LaidSheet) => LaidSheet): Layout => ({
  ...clean,
  sheets: clean.sheets.map((sheet, i) => (i === 0 ? change(sheet) : sheet)),
});
const changePart = (at: number, change: (placed: PlacedPart) => PlacedPart): Layout =>
  changeSheet((sheet) => ({ ...sheet, parts: sheet.parts.map((placed, i) => (i === at ? change(placed) : placed)) }));

const codes = (layout: Layout): ReadonlySet<string> => new Set(validateLayout(job, layout).map(({ code }) => code));

describe('the judge sees each planted fault', () => {
  test('a clean layout has none', () => {
    expect(validateLayout(job, clean)).toEqual([]);
  });

  test.each<[string, Layout]>([
    ['too-close', changePart(0, (placed) => ({ ...placed, x: placed.x + 2, length: placed.length }))],
    ['outside', changePart(0, (placed) => ({ ...placed, x: -1 }))],
    ['wrong-size', changePart(0, (placed) => ({ ...placed, length: placed.length - 1 }))],
    [
      'against-grain',
      changeSheet((sheet) => ({
        ...sheet,
        parts: sheet.parts.map((p) => (p.mark === 'a' ? { ...p, turned: true, length: p.width, width: p.length } : p)),
      })),
    ],
    ['count', changeSheet((sheet) => ({ ...sheet, parts: sheet.parts.slice(1) }))],
    ['unknown-part', changePart(0, (placed) => ({ ...placed, mark: 'zz' }))],
    ['wrong-material', changeSheet((sheet) => ({ ...sheet, material: 'steel' }))],
    ['stock', changeSheet((sheet) => ({ ...sheet, stock: 'other' }))],
    ['totals', { ...clean, price: clean.price + 1 }],
    ['bound', { ...clean, proof: { ...clean.proof, lowerBoundSheets: clean.sheets.length + 1 } }],
    ['repeats', { ...clean, repeats: [] }],
    ['tree', changeSheet((sheet) => ({ ...sheet, tree: null }))],
    [
      'cut-through-part',
      changeSheet((sheet) => ({
        ...sheet,
        cuts: [{ stage: 1, by: 'rip', at: (sheet.parts[0]?.y ?? 0) + 50, from: 0, to: 2440 }],
      })),
    ],
  ])('%s', (code, layout) => {
    expect(codes(layout)).toContain(code);
  });

  test('a pinwheel fits, but no full cut takes it apart', () => {
    // five parts around a hole of 1 × 1 in 3 × 3
    const pinwheel = plainJob([part('p', 200, 100, 4), part('c', 100, 100)], {
      stock: [{ name: 's', length: 300, width: 300, quantity: null, price: 1 }],
    });
    const placed: readonly PlacedPart[] = [
      { mark: 'p', x: 0, y: 0, length: 200, width: 100, turned: false },
      { mark: 'p', x: 200, y: 0, length: 100, width: 200, turned: true },
      { mark: 'p', x: 100, y: 200, length: 200, width: 100, turned: false },
      { mark: 'p', x: 0, y: 100, length: 100, width: 200, turned: true },
      { mark: 'c', x: 100, y: 100, length: 100, width: 100, turned: false },
    ];
    const solver = createImprover(pinwheel, 1);
    const sheet = solver.best().sheets[0];
    if (sheet === undefined) throw new Error('no sheet');
    const layout: Layout = {
      ...solver.best(),
      sheets: [{ ...sheet, parts: placed }],
      repeats: [[0]],
      price: 1,
      usedShare: 1,
    };
    const found = new Set(validateLayout(pinwheel, layout).map(({ code }) => code));
    expect(found).toContain('not-guillotine');
    const free = { ...pinwheel, cut: 'router' as const };
    expect(
      validateLayout(free, { ...layout, cut: 'router', sheets: [{ ...sheet, parts: placed, tree: null, cuts: [] }] }),
    ).toEqual([]);
  });

  test('three rounds where two are allowed', () => {
    const two = { ...job, stages: 2 as const };
    // rip below the part at 608, crosscut at 1000, rip between the two parts on the right
    const parts: readonly PlacedPart[] = [
      { mark: 'a', x: 0, y: 0, length: 1000, width: 500, turned: false },
      { mark: 'b', x: 1004, y: 0, length: 700, width: 300, turned: false },
      { mark: 'b', x: 1004, y: 304, length: 700, width: 300, turned: false },
      { mark: 'b', x: 600, y: 608, length: 700, width: 300, turned: false },
    ];
    const layout = changeSheet((sheet) => ({ ...sheet, parts }));
    expect(validateLayout(two, layout).map(({ about }) => about)).toContain('3 rounds from the rectangles');
  });
});
