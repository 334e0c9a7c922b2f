import fc from 'fast-check';
import { parseCsv } from 'hucre/csv';
import { describe, expect, it } from 'vitest';
import { csvText, neutralised } from '../../src/shop/csv.ts';

describe('neutralised', () => {
  it.each([
    '=1+1',
    '+1',
    '-1',
    '@SUM(A1)',
    '\t=1',
    '\rX',
    '\n=1',
    '|calc',
    ' =1',
    '   +1',
    '\u00a0=1',
    '\ufeff=1',
    '\u200b=1',
  ])('puts an apostrophe before %j', (text) => {
    expect(neutralised(text)).toBe(`'${text}`);
  });

  it('knows the full-width forms', () => {
    expect(neutralised('＝1+1')).toBe("'＝1+1");
    expect(neutralised('－1')).toBe("'－1");
  });

  it('takes signs away that only hide a formula', () => {
    expect(neutralised('\u0000=1')).toBe("'=1");
    expect(neutralised('\u001b\u0001@x')).toBe("'@x");
  });

  it.each(['', 'side, left', '14 3/8', 'a=b', '5-ply', '−3.5', 'x@y', "'quoted"])('leaves %j alone', (text) => {
    expect(neutralised(text)).toBe(text);
  });
});

describe('csvText', () => {
  it('writes commas, CRLF and doubled quotes, and keeps figures figures', () => {
    expect(
      csvText(
        ['mark', 'size'],
        [
          ['A "1"', -2.5],
          ['x,y', null],
        ],
      ),
    ).toBe('\ufeffmark,size\r\n"A ""1""",-2.5\r\n"x,y",\r\n');
  });

  it('gives back every text, and none that a spreadsheet would compute', () => {
    const line = fc.array(fc.string({ unit: 'binary' }), { minLength: 2, maxLength: 2 });
    fc.assert(
      fc.property(fc.array(line, { minLength: 1, maxLength: 5 }), (rows) => {
        const cells = rows.map((row) => row.map(neutralised));
        expect(parseCsv(csvText(['a', 'b'], rows)).slice(1)).toEqual(cells);
        for (const cell of cells.flat()) expect(cell.trimStart()).not.toMatch(/^[=+\-@|]/);
      }),
      { seed: 20_260_117, numRuns: 300 },
    );
  });
});
