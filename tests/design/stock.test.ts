import { describe, expect, it } from 'vitest';
import { type Material, standardCatalog } from '../../src/catalog/index.ts';
import {
  addStock,
  changeStock,
  type Design,
  emptyDesign,
  freshOffcut,
  freshSheet,
  type NodeId,
  printDesign,
  readDesign,
  removeStock,
  replaceStock,
  type StockRow,
  stockOfMaterial,
  stockProblems,
} from '../../src/design/index.ts';
import { sayProblem } from '../../src/says/index.ts';

const catalog = standardCatalog();
const known = (id: string): Material => {
  const material = catalog.materials.get(id);
  if (!material) throw new Error(`no ${id}`);
  return material;
};
const birch = known('birch-ply-18');
const row = (changes: Partial<StockRow> = {}): Omit<StockRow, 'id'> => ({
  material: birch.id,
  name: 'Rack 1',
  lengthMm: 900,
  widthMm: 400,
  quantity: 1,
  price: null,
  offcut: true,
  ...changes,
});
const empty = emptyDesign('Marrow Hill', 'mm');
const withRows = (...rows: readonly Partial<StockRow>[]): Design => addStock(empty, rows.map(row)).design;
const faults = (rows: readonly unknown[]): readonly string[] => {
  const read = readDesign(JSON.stringify({ ...JSON.parse(printDesign(empty)), stock: rows }));
  return read.ok ? [] : read.error.map(sayProblem);
};

describe('the stock of a design in its file', () => {
  it('may be left out: older files hold none', () => {
    const { stock: _, ...older } = JSON.parse(printDesign(empty)) as Record<string, unknown>;
    expect(readDesign(JSON.stringify(older))).toEqual({ ok: true, value: empty });
    expect(empty.stock).toEqual([]);
  });

  it('is read back as it was printed', () => {
    const design = withRows({}, { name: 'Full sheet', offcut: false, quantity: null, price: 99.5 });
    expect(readDesign(printDesign(design))).toEqual({ ok: true, value: design });
  });

  it('says in plain sentences where a row is wrong', () => {
    const good = { id: 'stock-1', ...row() };
    expect(faults([good])).toEqual([]);
    expect(
      faults([
        { ...good, lengthMm: 0 },
        { ...good, id: 'stock-2', quantity: -1 },
        { ...good, id: 'stock-3', price: -5 },
        { ...good, id: 'stock-4', name: '' },
        { ...good, id: 'stock-5', quantity: 1.5 },
        { ...good, id: 'stock-6', quantity: null },
      ]),
    ).toEqual([
      'Stock 1, length: is too small; expected more than 0, found 0',
      'Stock 2, quantity: is too small; expected at least 0, found -1',
      'Stock 3, price: is too small; expected at least 0, found -5',
      expect.stringMatching(/^Stock 4, name: /),
      expect.stringMatching(/^Stock 5, quantity: is of the wrong kind/),
      'Stock 6, quantity: is not one of the possible values; expected a whole number: an offcut is there so many times, found null',
    ]);
    expect(faults([good, good])).toEqual(['Stock 2, id: the same id is used twice, found stock-1']);
  });

  it('names a material that the catalog does not have', () => {
    const design = withRows({}, { material: 'oak-20' });
    expect(stockProblems(design.stock, catalog).map(sayProblem)).toEqual([
      'Stock 2, material: is a material that the catalog does not have, found oak-20',
    ]);
  });
});

describe('edits of the stock', () => {
  it('add with fresh ids, change, remove, and replace the whole', () => {
    const two = addStock(withRows({}), [row({ name: 'Rack 2' })]);
    expect(two.ids).toEqual(['stock-2']);
    const [first, second] = ['stock-1', 'stock-2'] as NodeId[] as [NodeId, NodeId];
    const longer = changeStock(two.design, second, { lengthMm: 1100 });
    expect(longer.stock.map(({ lengthMm }) => lengthMm)).toEqual([900, 1100]);
    expect(two.design.stock[1]?.lengthMm).toBe(900);
    expect(removeStock(longer, first).stock.map(({ name }) => name)).toEqual(['Rack 2']);
    expect(replaceStock(longer, [row({ name: 'New' })]).stock.map(({ id, name }) => [id, name])).toEqual([
      ['stock-1', 'New'],
    ]);
    expect(() => removeStock(longer, 'stock-9' as NodeId)).toThrow('no row of stock has the id stock-9');
  });

  it('count an offcut of which there were as many as wanted', () => {
    const sheet = withRows({ offcut: false, quantity: null });
    expect(changeStock(sheet, 'stock-1' as NodeId, { offcut: true }).stock[0]?.quantity).toBe(1);
  });

  it('offer fresh rows that can be had and read back', () => {
    const one = addStock(empty, [freshOffcut(empty, birch)]).design;
    const two = addStock(one, [freshOffcut(one, birch), freshSheet(one, birch)]).design;
    expect(two.stock.map(({ name, quantity }) => [name, quantity])).toEqual([
      ['Offcut 1', 1],
      ['Offcut 2', 1],
      ['Sheet 1', null],
    ]);
    expect(readDesign(printDesign(two)).ok).toBe(true);
  });
});

describe('what there is of a material', () => {
  const sizes = (design: Design) =>
    stockOfMaterial(design.stock, birch).map(({ name, quantity, price }) => [name, quantity, price]);
  const ofCatalog = birch.sheets.map(({ name, price }) => [name, null, price]);

  it('is the catalog where the design says nothing of it', () => {
    expect(sizes(empty)).toEqual(ofCatalog);
    expect(sizes(withRows({ material: 'birch-ply-12' }))).toEqual(ofCatalog);
  });

  it('is offcuts and the catalog, or offcuts and the sheets of the design', () => {
    expect(sizes(withRows({}))).toEqual([['Rack 1', 1, 0], ...ofCatalog]);
    expect(sizes(withRows({ name: 'Own', offcut: false, quantity: 3, price: 70 }, {}))).toEqual([
      ['Rack 1', 1, 0],
      ['Own', 3, 70],
    ]);
  });

  it('costs by area what the catalog asks for the size nearest to it, the very same for the same size', () => {
    const [first] = birch.sheets;
    const same = { offcut: false, lengthMm: first?.lengthMm ?? 0, widthMm: first?.widthMm ?? 0 };
    // Half of it is nearer to 1525 × 1525 at 82: 82 × (2440 × 610) / (1525 × 1525) = 52.48.
    const half = { ...same, widthMm: (first?.widthMm ?? 0) / 2 };
    expect(sizes(withRows(same, { ...half, name: 'Half' }))).toEqual([
      ['Rack 1', 1, first?.price],
      ['Half', 1, 52.48],
    ]);
    expect(sizes(withRows({ price: 4 }))[0]).toEqual(['Rack 1', 1, 4]);
  });

  it('is told apart at the rack where two rows have one name', () => {
    expect(sizes(withRows({}, {}, {})).slice(0, 3)).toEqual([
      ['Rack 1', 1, 0],
      ['Rack 1 no. 2', 1, 0],
      ['Rack 1 no. 3', 1, 0],
    ]);
  });
});
