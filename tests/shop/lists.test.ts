import { describe, expect, it } from 'vitest';
import { standardCatalog } from '../../src/catalog/index.ts';
import { sayListProblem } from '../../src/says/index.ts';
import { readDesignStock } from '../../src/shop/index.ts';

const catalog = standardCatalog();
const HEAD = 'name,length,width,qty,price,material,thickness,offcut\n';
const read = (rows: string) => readDesignStock(HEAD + rows, catalog);
const faults = (text: string): readonly string[] => {
  const result = readDesignStock(text, catalog);
  return result.ok ? [] : result.error.map((each) => `${each.at}: ${sayListProblem(each)}`);
};

describe('a list of stock for a design', () => {
  it('is read by id, by name, and by name and thickness, with lengths as people write them', () => {
    const rows =
      'A,800,400,2,,birch-ply-18,,yes\nB,48 in,24 in,,12.5,birch plywood 12 mm,12,no\nC,8 ft,4 ft,0,,Birch plywood,18,\n';
    expect(read(rows)).toEqual({
      ok: true,
      value: [
        { name: 'A', lengthMm: 800, widthMm: 400, quantity: 2, price: null, material: 'birch-ply-18', offcut: true },
        {
          name: 'B',
          lengthMm: expect.closeTo(1219.2, 6),
          widthMm: expect.closeTo(609.6, 6),
          quantity: null,
          price: 12.5,
          material: 'birch-ply-12',
          offcut: false,
        },
        {
          name: 'C',
          lengthMm: expect.closeTo(2438.4, 6),
          widthMm: expect.closeTo(1219.2, 6),
          quantity: 0,
          price: null,
          material: 'birch-ply-18',
          offcut: false,
        },
      ],
    });
  });

  it('counts an offcut once where nobody counted it', () => {
    const result = read('A,800,400,,,birch-ply-18,,yes\n');
    expect(result.ok && result.value[0]?.quantity).toBe(1);
  });

  it('says in a sentence, with row and column, what is wrong with every cell', () => {
    expect(faults(`${HEAD},long,0,-1,free,oak,thin,maybe\nB,800,400,1,,birch-ply-18,12,yes\n`)).toEqual([
      "row 2, offcut: expected yes, no or nothing, found 'maybe'",
      "row 2, thickness: expected a length above zero, as 600, 600 mm or 23 5/8 in, found 'thin'",
      expect.stringMatching(
        /^row 2, material: expected a material of the catalog by its name or id, as \S+, found 'oak'$/,
      ),
      'row 2, name: expected a name, found nothing',
      "row 2, length: expected a length above zero, as 600, 600 mm or 23 5/8 in, found 'long'",
      "row 2, width: expected a length above zero, as 600, 600 mm or 23 5/8 in, found '0'",
      "row 2, qty: expected a whole number from 0 to 10000, found '-1'",
      "row 2, price: expected a price of zero or more, found 'free'",
      "row 3, thickness: expected 17.1 to 18.1 mm for Birch plywood 18 mm, found '12'",
    ]);
  });

  it('says what is wrong with the list as a whole', () => {
    expect(faults('name,length\nA,5\n')).toEqual([
      'row 1: the header has no width, qty, price, material; expected name,length,width,qty,price,material',
    ]);
    expect(faults(HEAD)).toEqual([': there is no row under the header']);
    expect(faults('')[0]).toContain('the header has no name');
  });
});
