import { writeFileSync } from 'node:fs';
import { afterAll, describe, expect, it, vi } from 'vitest';
import { inProcess, PATIENCE_MS, scratch } from './command.ts';

const { at, sweep } = scratch();
vi.setConfig({ testTimeout: PATIENCE_MS });
afterAll(sweep);

let files = 0;
const file = (text: string): string => {
  const path = at(`list-${files++}.csv`);
  writeFileSync(path, text);
  return path;
};
const PARTS = 'mark,length,width,qty,grain\nA,600,400,4,length\nB,15 3/4 in,300 mm,2,any\n';
const STOCK = 'name,length,width,qty,price\nboard,1300,900,,50\n';
const PLAIN = ['--kerf', '0', '--trim', '0', '--seconds', '0.05'];

interface Sheet {
  readonly parts: readonly { readonly mark: string; readonly x: number; readonly length: number }[];
  readonly cuts: readonly { readonly setting: number; readonly gives: string }[];
}
interface Answer {
  readonly sheets: readonly Sheet[];
  readonly unplaced: readonly { readonly mark: string; readonly count: number }[];
  readonly lowerBoundSheets: number;
  readonly usedShare: number;
  readonly seconds: number;
}
const asked = async (parts: string, stock: string, ...more: readonly string[]): Promise<Answer> => {
  const { code, out, complaints } = await inProcess([
    'layout',
    file(parts),
    '--stock',
    file(stock),
    ...PLAIN,
    ...more,
    '--json',
  ]);
  expect({ code, complaints }).toEqual({ code: 0, complaints: '' });
  return JSON.parse(out) as Answer;
};

describe('layout', () => {
  it('places every part, with its cuts, bound and share', async () => {
    const answer = await asked(PARTS, STOCK);
    // 4 × 600 × 400 + 2 × 400.05 × 300 = 1 200 030 mm² is more than one board of 1 170 000: two at least.
    expect(answer.lowerBoundSheets).toBe(2);
    expect(answer.sheets).toHaveLength(2);
    expect(answer.usedShare).toBeCloseTo(1_200_030 / 2_340_000, 6);
    expect(answer.sheets.flatMap(({ parts }) => parts)).toHaveLength(6);
    expect(answer.unplaced).toEqual([]);
    const gives = answer.sheets.flatMap(({ cuts }) => cuts.map((cut) => cut.gives)).join(' ');
    for (const mark of ['A', 'B']) expect(gives).toContain(mark);
  });

  it('gives the same sheets for the same seed when it may not improve', async () => {
    const run = () => asked(PARTS, STOCK, '--seconds', '0', '--seed', '5');
    expect((await run()).sheets).toEqual((await run()).sheets);
  });

  it('proves two stages with its linear solver', async () => {
    const { out } = await inProcess(['layout', file(PARTS), '--stock', file(STOCK), ...PLAIN, '--stages', '2']);
    expect(out).toMatch(/Optimal/);
    expect(out).toMatch(/fence \d+/);
  });

  it('says which parts are missing and why, and still lays out the others', async () => {
    const parts = `${PARTS}C,2000,100,1,length\n`;
    const answer = await asked(parts, STOCK);
    expect(answer.unplaced).toMatchObject([{ mark: 'C', count: 1, reason: 'larger-than-every-sheet' }]);
    const { out } = await inProcess(['layout', file(parts), '--stock', file(STOCK), ...PLAIN]);
    expect(out).toContain('1 of C (2000 mm × 100 mm) is missing: it is larger than every sheet');
  });

  it('matches parts and sheets by material and thickness', async () => {
    const parts = 'mark,length,width,qty,grain,material,thickness\nA,600,400,1,any,ply,18 mm\nB,600,400,1,any,ply,12\n';
    const stock = 'name,length,width,qty,price,material,thickness\nthick,700,500,,5,ply,18\nthin,700,500,1,3,ply,12\n';
    const answer = await asked(parts, stock);
    expect(answer.sheets.map((sheet) => [sheet.parts[0]?.mark, (sheet as unknown as { stock: string }).stock])).toEqual(
      [
        ['B', 'thin'],
        ['A', 'thick'],
      ],
    );
  });
});

describe('what is cut with, from what is in hand, in one strip', () => {
  it('a router goes round parts that no full cut frees, with its tool between them', async () => {
    // 600 + 8 + 600 = 1208: two abreast, as the tool of 8 mm of the house rules goes between.
    const two = 'mark,length,width,qty,grain\nA,600,400,2,length\n';
    const stock = 'name,length,width,qty,price\nboard,1208,400,,50\n';
    const run = async (...more: readonly string[]) => {
      const { out } = await inProcess(['layout', file(two), '--stock', file(stock), '--trim', '0', '--json', ...more]);
      return JSON.parse(out) as Answer;
    };
    const [routed, sheared] = [await run('--cut', 'router'), await run('--cut', 'shear')];
    expect(routed.sheets).toHaveLength(1);
    expect(routed.sheets[0]?.parts.map(({ x }) => x).toSorted((a, b) => a - b)).toEqual([0, 608]);
    expect(routed.sheets[0]?.cuts).toEqual([]);
    // A shear takes nothing away: the second part begins where the first ends.
    expect(sheared.sheets[0]?.parts.map(({ x }) => x).toSorted((a, b) => a - b)).toEqual([0, 600]);
    const wrong = await inProcess(['layout', file(two), '--stock', file(stock), '--cut', 'axe']);
    expect(wrong.complaints).toContain("expected saw, router or shear, found 'axe'");
  });

  it('an offcut in hand is used first, and matched fronts leave the sheet side by side', async () => {
    const stock = 'name,length,width,qty,price,offcut\nboard,1300,900,,50,\nleft,700,500,1,0,yes\n';
    const one = 'mark,length,width,qty,grain\nA,600,400,1,length\n';
    const answer = await asked(one, stock);
    expect((answer.sheets as unknown as { stock: string }[]).map((sheet) => sheet.stock)).toEqual(['left']);
    const fronts =
      'mark,length,width,qty,grain,group\nF1,300,200,1,length,fronts\nG,500,800,1,length,\nF2,250,200,1,length,fronts\n';
    const [sheet] = (await asked(fronts, STOCK)).sheets as unknown as {
      parts: { mark: string; x: number; y: number }[];
    }[];
    const of = (mark: string) => sheet?.parts.find((part) => part.mark === mark);
    expect(of('F2')?.y).toBe(of('F1')?.y);
    expect((of('F2')?.x ?? 0) - (of('F1')?.x ?? 0)).toBe(300);
    const odd = await inProcess(['layout', file(one), '--stock', file(stock.replace('yes', 'maybe'))]);
    expect(odd.complaints).toContain("row 3, offcut: expected yes, no or nothing, found 'maybe'");
  });
});

describe('bad lists', () => {
  it('names every bad cell of both files with its place, and exits with 2', async () => {
    const parts = file('mark,length,width,qty,grain\nA,six,400,1,length\n,600,400,0,across\n');
    const stock = file('name,length,width,qty,price\nboard,-1,900,,free\n');
    const { code, out, complaints } = await inProcess(['layout', parts, '--stock', stock]);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    const lines = complaints.trim().split('\n');
    expect(lines.map((line) => line.replace(/^\S+?\.csv: /, '').split(': expected')[0])).toEqual([
      'row 2, length',
      'row 3, mark',
      'row 3, qty',
      'row 3, grain',
      'row 2, length',
      'row 2, price',
    ]);
    expect(complaints).toContain("expected length, width or any, found 'across'");
  });

  it.each([
    ['a header without a column', 'mark,length\nA,600\n', 'the header has no width, qty, grain'],
    ['no rows', 'mark,length,width,qty,grain\n', 'there is no row under the header'],
    ['nothing at all', '', 'the header has no mark'],
  ])('refuses %s', async (_, parts, says) => {
    const { code, complaints } = await inProcess(['layout', file(parts), '--stock', file(STOCK)]);
    expect(code).toBe(2);
    expect(complaints).toContain(says);
  });

  it.each([
    ['--kerf', '-1'],
    ['--trim', 'some'],
    ['--seconds', '-2'],
    ['--stages', '4'],
    ['--seed', '1.5'],
  ])('refuses %s %s', async (option, value) => {
    const { code, complaints } = await inProcess(['layout', file(PARTS), '--stock', file(STOCK), `${option}=${value}`]);
    expect(code).toBe(2);
    expect(complaints).toContain(`${option}: expected`);
  });

  it('says which file is not there', async () => {
    const { code, complaints } = await inProcess(['layout', at('none.csv'), '--stock', file(STOCK)]);
    expect(code).toBe(2);
    expect(complaints).toContain('there is no such file');
  });
});
