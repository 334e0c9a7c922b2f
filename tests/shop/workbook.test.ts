import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { csvText } from '../../src/shop/csv.ts';
import { createPacket } from '../../src/shop/packet.ts';
import { workbook } from '../../src/shop/workbook.ts';
import { catalog, design, emptyInspection, rules, twoColumns } from './fixture.ts';
import { readCsvFile, readWorkbook } from './python-readers.ts';

const HEADER = ['mark', 'qty', 'note'];
const NASTY = [
  '=1+1',
  '+cmd',
  '-2',
  '@sum',
  '  =A1',
  '＝1',
  '|x',
  '\t=1',
  'plain',
  'a "quoted", cell',
  'two\nlines',
  '⌀ 5/8',
];
/** What a reader must find: text that could start a formula has an apostrophe before it. */
const SAFE = ["'=1+1", "'+cmd", "'-2", "'@sum", "'  =A1", "'＝1", "'|x", "'\t=1", ...NASTY.slice(8)];

describe('workbook', () => {
  it('is read by somebody else with figures as figures, text as text, and no formula', async () => {
    const rows = NASTY.map((note, i) => [`A${i}`, i + 0.5, note]);
    const [sheet] = readWorkbook(
      await workbook([{ name: 'Cut list', table: { header: HEADER, rows } }], 'Brook Hollow'),
    );
    expect(sheet?.name).toBe('Cut list');
    expect(sheet?.formulas).toBe(0);
    expect(sheet?.rows).toEqual([HEADER, ...SAFE.map((note, i) => [`A${i}`, i + 0.5, note])]);
  });

  it('is the same bytes for the same lists', async () => {
    const sheets = [{ name: 'Cut list', table: { header: HEADER, rows: [['A1', 2, '']] } }];
    expect(await workbook(sheets, 'x')).toEqual(await workbook(structuredClone(sheets), 'x'));
  });

  it('holds every row of the lists beside it', async () => {
    const { files } = await createPacket({
      design: design(),
      fitout: twoColumns(),
      catalog,
      rules,
      space: null,
      inspection: emptyInspection,
    });
    const file = files.find(({ path }) => path === 'lists.xlsx');
    if (!file || !('bytes' in file)) throw new Error('no workbook');
    const sheets = readWorkbook(file.bytes);
    expect(sheets.map(({ name }) => name)).toEqual(['Cut list', 'Hardware', 'Cut sequence', 'Price', 'Masses']);
    for (const [name, path] of [
      ['Cut list', 'cut-list.csv'],
      ['Price', 'price.csv'],
      ['Masses', 'masses.csv'],
    ] as const) {
      const list = files.find((each) => each.path === path);
      if (!list || !('text' in list)) throw new Error(`no ${path}`);
      const rows = sheets.find((each) => each.name === name)?.rows ?? [];
      expect(rows.map((row) => row.map((cell) => (cell === null ? '' : String(cell))))).toEqual(readCsvFile(list.text));
    }
  });
});

describe('comma-separated files', () => {
  it('are read by somebody else as they were meant, whatever stands in them', () => {
    const cell = fc.oneof(fc.string({ unit: 'binary', maxLength: 8 }), fc.constantFrom(...NASTY));
    const rows = fc.sample(fc.array(cell, { minLength: 3, maxLength: 3 }), { seed: 314_159, numRuns: 200 });
    const clean = rows.map((row) => row.map((text) => text.replace(/[^\P{Cc}\t\n]|\p{Cs}|\ufeff/gu, '')));
    const read = readCsvFile(csvText(HEADER, clean));
    expect(read).toHaveLength(clean.length + 1);
    read.slice(1).forEach((row, i) => {
      row.forEach((found, k) => {
        const meant = clean[i]?.[k] ?? '';
        expect([meant, `'${meant}`]).toContain(found);
        expect(found).not.toMatch(/^\s*[=+\-@]/);
      });
    });
  });
});
