import { readFileSync } from 'node:fs';
import { KEEP_NOTHING, type LayoutJob, type LayoutPart, NO_TRIM } from '../../../src/shop/layout/index.ts';

/** A job with what is known of it. `known` is the best published value; `bound` a published bound, or 0. */
export interface Instance {
  readonly name: string;
  readonly group: string;
  readonly job: LayoutJob;
  readonly known: number;
  readonly bound: number;
}

interface Record500 {
  readonly name: string;
  readonly sheet: readonly [number, number];
  readonly pieces: readonly (readonly [number, number, number])[];
  readonly turned: number;
  readonly fixed: number;
}

interface Record12 {
  readonly name: string;
  readonly sheets: readonly (readonly [number, number, number])[];
  readonly pieces: readonly (readonly [number, number, number])[];
  readonly turned: number;
  readonly fixed: number;
  readonly boundTurned: number;
  readonly boundFixed: number;
}

const read = <T>(file: string): readonly T[] =>
  JSON.parse(readFileSync(`tests/bench/cutting/data/${file}`, 'utf8')) as readonly T[];

const partsOf = (pieces: Record500['pieces'], turned: boolean): readonly LayoutPart[] =>
  pieces.map(([length, width, quantity], i) => ({
    mark: `${i + 1}`,
    length,
    width,
    quantity,
    grain: turned ? 'any' : 'length',
  }));

const plain = { cut: 'saw', kerf: 0, trim: NO_TRIM, keep: KEEP_NOTHING } as const;

/** The 500 bin-packing instances. */
export const binPacking = (turned: boolean, stages: LayoutJob['stages']): readonly Instance[] =>
  read<Record500>('bin-packing-500.json').map((record) => ({
    name: record.name,
    group: `class ${Number(record.name.slice(2, 4))}`,
    job: {
      ...plain,
      parts: partsOf(record.pieces, turned),
      stock: [{ name: 'sheet', length: record.sheet[0], width: record.sheet[1], quantity: null, price: 1 }],
      stages,
    },
    known: turned ? record.turned : record.fixed,
    bound: 0,
  }));

/** The 12 instances with several priced sizes, two stages; the published values begin with rips. */
export const pricedSheets = (turned: boolean, firstCut?: LayoutJob['firstCut']): readonly Instance[] =>
  read<Record12>('priced-sheets-12.json').map((record) => ({
    name: record.name,
    group: record.name,
    job: {
      ...plain,
      parts: partsOf(record.pieces, turned),
      stock: record.sheets.map(([length, width, price], i) => ({
        name: `${i + 1}`,
        length,
        width,
        quantity: null,
        price,
      })),
      stages: 2,
      ...(firstCut && { firstCut }),
    },
    known: turned ? record.turned : record.fixed,
    bound: turned ? record.boundTurned : record.boundFixed,
  }));
