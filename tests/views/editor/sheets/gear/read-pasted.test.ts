import { describe, expect, it } from 'vitest';
import { KG_PER_POUND } from '../../../../../src/base/index.ts';
import type { GearKind } from '../../../../../src/catalog/index.ts';
import { readPasted } from '../../../../../src/views/editor/sheets/gear/read-pasted.ts';

const kind: GearKind = {
  id: 'breathing-set-45',
  name: 'Breathing set, 45 minutes',
  group: 'breathing',
  sizeMm: [350, 260, 640],
  massKg: 13.5,
  massSigmaKg: 0.8,
  form: 'pack',
  needs: ['bracket'],
  source: 'test',
};
const CATALOGUE = new Map([[kind.id, kind]]);
const read = (text: string, units: 'in' | 'mm' = 'mm') => readPasted(text, units, CATALOGUE);
const sizes = (text: string, units: 'in' | 'mm' = 'mm') =>
  read(text, units).map((row) => (row.ok ? [row.gear.name, ...row.gear.sizeMm, row.gear.massKg, row.count] : row.says));

describe('a pasted list of gear', () => {
  it('reads tab-separated rows in the plain order', () => {
    expect(sizes('rope bag\t400\t250\t250\t7.5\t2\nwedges\t300\t200\t100\t2')).toEqual([
      ['rope bag', 400, 250, 250, 7.5, 2],
      ['wedges', 300, 200, 100, 2, 1],
    ]);
  });

  it('reads inches with fractions and marks, and bare masses as pounds', () => {
    // 14 3/8 in = 14.375 × 25.4 = 365.125 mm; 30 lb = 30 × 0.45359237 kg.
    const [row] = sizes('bar\t14 3/8"\t6\t4\t30', 'in');
    expect(row).toEqual(['bar', 365.125, 6 * 25.4, 4 * 25.4, 30 * KG_PER_POUND, 1]);
  });

  it('follows a first row of heads, whatever their order, and the units named there', () => {
    const text = 'Qty,Weight (lb),Item,Height (in),Width (in),Length (in)\n3,10,cone,28,14,14';
    expect(sizes(text)).toEqual([['cone', 14 * 25.4, 14 * 25.4, 28 * 25.4, 10 * KG_PER_POUND, 3]]);
  });

  it('lets a unit in the cell win over the head', () => {
    expect(sizes('name\tlength (in)\twidth (in)\theight (in)\tmass (kg)\nbox\t300 mm\t10\t10\t5 lb')).toEqual([
      ['box', 300, 254, 254, 5 * KG_PER_POUND, 1],
    ]);
  });

  it('reads quoted cells with separators, quotes and line ends in them', () => {
    expect(sizes('"bag, ""red""",400,250,250,7\n"two\nlines",1,2,3,4')).toEqual([
      ['bag, "red"', 400, 250, 250, 7, 1],
      ['two\nlines', 1, 2, 3, 4, 1],
    ]);
  });

  it('takes size, mass and needs from the catalogue for a known name, and a weighed mass over the catalogue', () => {
    const [plain, weighed] = read('breathing set, 45 minutes\t\t\t\t\t2\nBreathing set, 45 minutes\t\t\t\t14.1');
    expect(plain).toMatchObject({ ok: true, count: 2, gear: { kind: 'breathing-set-45', massFrom: 'catalogue' } });
    expect(weighed).toMatchObject({ ok: true, gear: { massKg: 14.1, massFrom: 'measured', massSigmaKg: 0 } });
  });

  it('names what is wrong with each row it cannot read, and reads the others', () => {
    expect(
      sizes(
        '\t1\t2\t3\t4\nhose\tlong\t2\t3\t4\npump\t1\t2\t\t4\naxe\t1\t2\t3\theavy\nsaw\t1\t2\t3\t4\tmany\nrope\t1\t2\t3\t4',
      ),
    ).toEqual([
      'The name is missing.',
      '“long” is no length.',
      'The height is missing.',
      '“heavy” is no mass.',
      '“many” is no count from 1 to 100.',
      ['rope', 1, 2, 3, 4, 1],
    ]);
  });

  it('refuses sizes that are not above nothing', () => {
    expect(sizes('box\t0\t2\t3\t4')).toEqual(['“0” is no length.']);
  });

  it('numbers rows as the person sees them, empty lines counted', () => {
    expect(read('a\t1\t2\t3\t4\n\nb\t1\t2\t3\t4').map((row) => row.line)).toEqual([1, 3]);
  });

  it('reads nothing from nothing', () => {
    expect(read('')).toEqual([]);
    expect(read('\n \n')).toEqual([]);
  });
});
