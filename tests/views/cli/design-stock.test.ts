import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it, vi } from 'vitest';
import { addStock, type Design, printDesign, readDesign, type StockRow } from '../../../src/design/index.ts';
import { TOP } from '../../../src/views/ground.mjs';
import { inProcess, PATIENCE_MS, scratch } from './command.ts';

const { at, sweep } = scratch();
vi.setConfig({ testTimeout: PATIENCE_MS });
afterAll(sweep);

const demo = (): Design => {
  const read = readDesign(readFileSync(join(TOP, 'assets/designs/quillmoor.json'), 'utf8'));
  if (!read.ok) throw new Error('no demo');
  return read.value;
};
let files = 0;
const written = (name: string, text: string): string => {
  const path = at(`${files++}-${name}`);
  writeFileSync(path, text);
  return path;
};
const row = (changes: Partial<StockRow> = {}): Omit<StockRow, 'id'> => ({
  material: 'birch-ply-18',
  name: 'Rack 3',
  lengthMm: 1800,
  widthMm: 900,
  quantity: 1,
  price: null,
  offcut: true,
  ...changes,
});
const designFile = (...rows: readonly Partial<StockRow>[]): string =>
  written('design.json', printDesign(addStock(demo(), rows.map(row)).design));

interface Answer {
  readonly sheets: readonly { readonly stock: string; readonly material: string; readonly offcut: boolean }[];
  readonly unplaced: readonly { readonly reason: string; readonly count: number }[];
  readonly boards: readonly { readonly material: string; readonly sheets: number; readonly offcuts: number }[];
  readonly price: number;
}
const laidOut = async (path: string, ...more: readonly string[]): Promise<Answer> => {
  const { code, out, complaints } = await inProcess(['layout', path, '--seconds', '0', '--json', ...more]);
  expect({ code, complaints }).toEqual({ code: 0, complaints: '' });
  return JSON.parse(out) as Answer;
};

describe('layout of a design file', () => {
  it('is cut from the catalog, from its own stock, or from a list in place of that', async () => {
    const plain = await laidOut(designFile());
    expect(plain.sheets.some(({ offcut }) => offcut)).toBe(false);
    const own = await laidOut(designFile({}));
    expect(own.sheets.filter(({ offcut }) => offcut).map(({ stock }) => stock)).toEqual(['Rack 3']);
    expect(own.price).toBeLessThanOrEqual(plain.price);
    const list = written(
      'rack.csv',
      'name,length,width,qty,price,material,offcut\nRack 8,1800,900,1,,Birch plywood 18 mm,yes\n',
    );
    const listed = await laidOut(designFile({}), '--stock', list);
    expect(listed.sheets.filter(({ offcut }) => offcut).map(({ stock }) => stock)).toEqual(['Rack 8']);
    const { out } = await inProcess(['layout', designFile({}), '--seconds', '0']);
    expect(out).toMatch(/sheet 1 of \d+: offcut Rack 3, Birch plywood 18 mm/);
    expect(out).toMatch(/\d+ sheets and 1 offcut in hand, [\d.]+ % used, price [\d.]+\n$/);
  });

  it('names what no sheet is left for', async () => {
    const path = designFile({ name: 'Gone', offcut: false, quantity: 0 });
    const { boards, unplaced } = await laidOut(path);
    expect(boards.find(({ material }) => material === 'birch-ply-18')).toMatchObject({ sheets: 0, offcuts: 0 });
    expect(unplaced.map(({ reason }) => reason)).toContain('stock-used-up');
    const { out } = await inProcess(['layout', path, '--seconds', '0']);
    expect(out).toContain('the sheets in stock are used up');
  });

  it('says which cells of the list are wrong, and that a list of parts needs one', async () => {
    const list = written('bad.csv', 'name,length,width,qty,price,material\nA,600,0,1,,oak\n');
    const bad = await inProcess(['layout', designFile(), '--stock', list]);
    expect(bad.code).toBe(2);
    expect(bad.complaints).toContain('row 2, width: expected a length above zero');
    expect(bad.complaints).toContain('row 2, material: expected a material of the catalog');
    const parts = await inProcess(['layout', written('parts.csv', 'mark,length,width,qty,grain\nA,6,4,1,any\n')]);
    expect(parts).toMatchObject({
      code: 2,
      complaints: '--stock: a list of parts needs the list of sheets that it is cut from\n',
    });
  });
});

describe('check of a design with stock', () => {
  it('passes sound rows and names bad ones with their places', async () => {
    expect((await inProcess(['check', designFile({})])).code).toBe(0);
    const odd = await inProcess(['check', designFile({}, { material: 'oak-20' })]);
    expect(odd.code).toBe(2);
    expect(odd.complaints).toContain('stock[1].material: Is a material that the catalog does not have, found oak-20');
    const raw = JSON.parse(readFileSync(designFile({}), 'utf8')) as { stock: Record<string, unknown>[] };
    Object.assign(raw.stock[0] ?? {}, { widthMm: 0, quantity: -2 });
    const sizes = await inProcess(['check', written('bad.json', JSON.stringify(raw))]);
    expect(sizes.complaints).toContain('stock[0].widthMm: Is too small; expected more than 0, found 0');
    expect(sizes.complaints).toContain('stock[0].quantity: Is too small; expected at least 0, found -2');
  });
});

describe('change of the stock', () => {
  it('puts a list in place of it, and writes the design', async () => {
    const list = written('rack.csv', 'name,length,width,qty,price,material,offcut\nA,800,400,,,birch-ply-18,yes\n');
    const to = at('stocked.json');
    const { out, complaints } = await inProcess(['change', designFile({}, {}), '--stock', list, '--to', to]);
    expect(complaints).toBe('');
    expect(out).toContain('stock: "2 rows" -> "1 row"');
    const read = readDesign(readFileSync(to, 'utf8'));
    expect(read.ok && read.value.stock).toEqual([
      { ...row({ name: 'A', lengthMm: 800, widthMm: 400 }), id: 'stock-1' },
    ]);
  });

  it('writes nothing where the list is wrong', async () => {
    const list = written('bad.csv', 'name,length,width,qty,price,material\n,800,400,,,birch-ply-18\n');
    const { code, complaints } = await inProcess(['change', designFile(), '--stock', list, '--to', at('not.json')]);
    expect(code).toBe(2);
    expect(complaints).toContain('row 2, name: expected a name, found nothing');
    expect(existsSync(at('not.json'))).toBe(false);
  });
});
