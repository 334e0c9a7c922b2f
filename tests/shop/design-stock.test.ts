import { describe, expect, it } from 'vitest';
import { addStock, type Design, type StockRow } from '../../src/design/index.ts';
import type { FitOut } from '../../src/fitout/index.ts';
import {
  createPacket,
  cutList,
  cutSequenceCsv,
  layoutDrawings,
  layoutSheets,
  markParts,
  type PacketFile,
  priceOf,
  readDesignStock,
  type SheetLayouts,
  sheetJobs,
  stockLeft,
  stockLeftCsv,
  validateLayout,
} from '../../src/shop/index.ts';
import { catalog, design as designOf, emptyInspection, fitOutOf, panel, rules } from './fixture.ts';

const row = (changes: Partial<StockRow> = {}): Omit<StockRow, 'id'> => ({
  material: 'ply-18',
  name: 'Rack 3',
  lengthMm: 1300,
  widthMm: 700,
  quantity: 1,
  price: null,
  offcut: true,
  ...changes,
});
const designWith = (...rows: readonly Partial<StockRow>[]): Design => addStock(designOf(), rows.map(row)).design;
const layoutsOf = (design: Design, fitout: FitOut): SheetLayouts => {
  const jobs = sheetJobs(cutList({ fitout, marks: markParts(fitout), catalog, rules }), catalog, rules, design.stock);
  return layoutSheets(jobs, { seed: 7, steps: 40 });
};
// 900 × 600 and 1200 × 650: one board of 2440 × 1220, or the larger one on an offcut.
const two = fitOutOf([panel('p', { length: 900, width: 600 }), panel('q', { length: 1200, width: 650 })]);
const takenOf = ({ boards }: SheetLayouts) =>
  boards.flatMap(({ layout }) => layout.sheets.map(({ stock, parts }) => [stock, parts.length]));

describe('layouts from the stock of a design', () => {
  it('use offcuts first and trim them nowhere', () => {
    const layouts = layoutsOf(designWith({}), two);
    expect(takenOf(layouts)).toEqual([
      ['Rack 3', 1],
      ['2440 × 1220', 1],
    ]);
    expect(layouts).toMatchObject({ sheets: 1, offcuts: 1, price: 100, unplaced: 0 });
    const [board] = layouts.boards;
    expect(board?.layout.sheets[0]?.usable).toEqual({ x: 0, y: 0, length: 1300, width: 700 });
    expect(board && validateLayout(board.board.job, board.layout)).toEqual([]);
  });

  it('take the sheets of the design in place of those of the catalog', () => {
    const own = { name: 'Long', offcut: false, quantity: null, lengthMm: 3050, widthMm: 1525, price: 140 };
    expect(takenOf(layoutsOf(designWith(own), two))).toEqual([['Long', 2]]);
  });

  it('choose the cheapest mix of several priced sizes', () => {
    const small = { name: 'Small', offcut: false, quantity: null, lengthMm: 1300, widthMm: 700, price: 30 };
    const large = { name: 'Large', offcut: false, quantity: null, lengthMm: 2440, widthMm: 1220, price: 100 };
    // Two small ones for 60 instead of a large one for 100.
    expect(layoutsOf(designWith(small, large), two)).toMatchObject({ sheets: 2, price: 60 });
  });

  it('serve no part of another thickness or another material', () => {
    const other = fitOutOf([panel('p', { length: 900, width: 600, thickness: 18.4 })]);
    expect(takenOf(layoutsOf(designWith({}), other))).toEqual([['2440 × 1220', 1]]);
    expect(takenOf(layoutsOf(designWith({ material: 'ply-12' }), two))).toEqual([['2440 × 1220', 2]]);
  });

  it('never take more than there are, and name the parts that are left', () => {
    const few = designWith({ name: 'Last', offcut: false, quantity: 1, price: 80 });
    const layouts = layoutsOf(few, two);
    expect(takenOf(layouts)).toEqual([['Last', 1]]);
    expect(layouts.boards[0]?.layout.unplaced).toMatchObject([{ count: 1, reason: 'stock-used-up' }]);
  });
});

const textOf = (files: readonly PacketFile[], path: string): string => {
  const file = files.find((each) => each.path === path);
  if (!file || !('text' in file)) throw new Error(`no text file ${path}`);
  return file.text;
};
const packetOf = (design: Design, fitout: FitOut = two) =>
  createPacket({ design, fitout, catalog, rules, space: null, inspection: emptyInspection });

describe('the packet of a design with stock', () => {
  it('with nothing left of a material names every part of it, on its first page too', async () => {
    const packet = await packetOf(designWith({ name: 'Gone', offcut: false, quantity: 0 }));
    expect(packet.layouts).toMatchObject({ sheets: 0, offcuts: 0, price: 0, unplaced: 2 });
    const usedUp = packet.missing.filter((line) => line.includes('the sheets in stock are used up'));
    expect(usedUp).toHaveLength(2);
    expect(packet.missing).toContain('2 parts lie on no sheet: their material is not in the price.');
    const first = JSON.stringify(packet.firstPage);
    expect(first).toContain('used up');
    expect(first).toContain('from 0 sheets;');
    expect(JSON.parse(textOf(packet.files, 'manifest.json'))).toMatchObject({ sheets: 0, offcuts: 0 });
  });

  it('names a row whose material is not known', async () => {
    const { missing } = await packetOf(designWith({ material: 'oak-20' }));
    expect(missing).toContain(
      'Stock 1, material: is a material that the catalog does not have, found oak-20; it serves no part.',
    );
  });

  it('tells the person at the saw which offcut to take, on drawing and list', async () => {
    const packet = await packetOf(designWith({}));
    const [words, ...others] = textOf(packet.files, 'cut-sequence.csv').trimEnd().split('\r\n').slice(1);
    expect(words).toContain('offcut Rack 3');
    expect(others.at(-1)).toContain('2440 × 1220');
    const [drawing] = layoutDrawings(packet.layouts, {
      designTitle: '',
      customer: '',
      signed: '',
      units: 'mm',
    }).flatMap(({ drawings }) => drawings);
    expect(drawing?.title).toContain('offcut Rack 3');
    expect(JSON.stringify(drawing?.shapes)).toContain('take offcut Rack 3');
    expect(JSON.stringify(packet.firstPage)).toContain('from 1 sheet and 1 offcut in hand;');
    expect(JSON.parse(textOf(packet.files, 'manifest.json'))).toMatchObject({ sheets: 1, offcuts: 1 });
    expect(cutSequenceCsv(packet.layouts, 'in')).toContain('offcut Rack 3');
  });

  it('counts in the price what is bought alone, and says how many offcuts are used', async () => {
    const sheetsOf = async (design: Design) => {
      const { price } = await packetOf(design);
      const lines = price.lines.filter(({ group }) => group === 'sheets');
      return { inHand: price.inHand, lines: lines.map(({ what, count, unit, amount }) => [what, count, unit, amount]) };
    };
    expect(await sheetsOf(designOf())).toEqual({
      inHand: '',
      lines: [['Birch plywood 18 mm, 2440 × 1220', 1, 'sheet', 100]],
    });
    expect(await sheetsOf(designWith({}))).toEqual({
      inHand: '1 offcut in hand is used and costs nothing.',
      lines: [
        ['Birch plywood 18 mm, offcut Rack 3', 1, 'offcut', 0],
        ['Birch plywood 18 mm, 2440 × 1220', 1, 'sheet', 100],
      ],
    });
    const both = { lengthMm: 2200, widthMm: 800, price: 12.5 };
    expect(await sheetsOf(designWith(both))).toEqual({
      inHand: '1 offcut in hand is used, at 12.50 as set in the list of stock.',
      lines: [['Birch plywood 18 mm, offcut Rack 3', 1, 'offcut', 12.5]],
    });
  });

  it('handles sheets, not offcuts, and still shows the group where nothing is bought', async () => {
    const design = designWith({ quantity: 2 });
    const layouts = layoutsOf(design, two);
    expect(layouts).toMatchObject({ sheets: 0, offcuts: 2 });
    const price = priceOf({ design, fitout: two, catalog, rules, layouts, hardware: [] });
    expect(price.lines.some(({ from }) => from.includes('hours-sheet-handling'))).toBe(false);
    expect(price.groups[0]).toMatchObject({ group: 'sheets', amount: 0 });
  });
});

describe('what is left once the design is cut', () => {
  const design = designWith(
    { name: 'Rack 3', quantity: 2 },
    { name: 'Rack 4', lengthMm: 300, widthMm: 200 },
    { name: 'Bought', offcut: false, quantity: 3, lengthMm: 2440, widthMm: 1220, price: 90 },
    { material: 'ply-12', name: 'Other' },
  );
  const one = fitOutOf([
    panel('p', { length: 900, width: 600 }),
    panel('q', { length: 1200, width: 650 }),
    panel('r', { length: 2000, width: 600 }),
  ]);
  const layouts = layoutsOf(design, one);

  it('is what was there less what is used, and the offcuts that are kept, named after their sheets', () => {
    const left = stockLeft(design, layouts, catalog);
    expect(left.slice(0, 3).map(({ name, quantity }) => [name, quantity])).toEqual([
      ['Rack 4', 1],
      ['Bought', 2],
      ['Other', 1],
    ]);
    const kept = layouts.boards.flatMap(({ layout }) => layout.sheets.flatMap(({ offcuts }) => offcuts));
    expect(left.length).toBe(3 + kept.length);
    expect(kept.length).toBeGreaterThan(0);
    expect(left.at(-1)).toMatchObject({ material: 'ply-18', offcut: true, quantity: 1, price: null });
    expect(left.at(-1)?.name).toContain(`${design.title}, ply-18 `);
  });

  it('comes back from its file as it was', () => {
    const read = readDesignStock(stockLeftCsv(stockLeft(design, layouts, catalog), catalog), catalog);
    expect(read).toEqual({ ok: true, value: stockLeft(design, layouts, catalog) });
  });
});
