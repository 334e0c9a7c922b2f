import { add, groupBy, ORIGIN, scale, type Vec3 } from '../base/index.ts';
import type { FitOut, MassItem } from '../fitout/index.ts';
import { type ListColumn, type ListTable, listTable, tableCsv } from './list-columns.ts';
import type { Marks } from './marks.ts';
import { type NameOf, placesOf } from './places.ts';
import { toKilogram, toTenth } from './rounding.ts';

/** One thing that weighs. */
export interface MassRow {
  readonly id: string;
  /** The part's mark, where it is a cut part. */
  readonly mark: string;
  readonly name: string;
  readonly kind: MassItem['kind'];
  readonly where: string;
  readonly massKg: number;
  readonly sigmaKg: number;
  /** Centre of the mass in vehicle axes, everything stowed. */
  readonly at: Vec3;
}

/** What a group of things weighs together and where that acts. */
export interface MassSum {
  readonly name: string;
  readonly massKg: number;
  /** Of independent masses: the root of the sum of squares. */
  readonly sigmaKg: number;
  /** Null where nothing weighs anything. */
  readonly at: Vec3 | null;
}

export interface MassTable {
  readonly rows: readonly MassRow[];
  /** By kind, in the order in which the kinds come up. */
  readonly kinds: readonly MassSum[];
  readonly carcasses: readonly MassSum[];
  readonly total: MassSum;
}

const sumOf = (name: string, items: readonly Pick<MassItem, 'massKg' | 'sigmaKg' | 'at'>[]): MassSum => {
  const massKg = items.reduce((sum, item) => sum + item.massKg, 0);
  const moment = items.reduce<Vec3>((sum, item) => add(sum, scale(item.at, item.massKg)), ORIGIN);
  return {
    name,
    massKg,
    sigmaKg: Math.hypot(...items.map(({ sigmaKg }) => sigmaKg)),
    at: massKg > 0 ? scale(moment, 1 / massKg) : null,
  };
};

/** Every mass of the fit-out in its order, with sums by kind and by carcass. The rows add up to the total. */
export const massTable = (fitout: FitOut, marks: Marks, names?: NameOf): MassTable => {
  const places = placesOf(fitout, names);
  return {
    rows: fitout.masses.map((item) => ({
      id: item.id,
      mark: marks.markOf.get(item.id) ?? '',
      name: item.name,
      kind: item.kind,
      where: places.of(item),
      massKg: item.massKg,
      sigmaKg: item.sigmaKg,
      at: item.at,
    })),
    kinds: [...groupBy(fitout.masses, ({ kind }) => kind)].map(([kind, items]) => sumOf(kind, items)),
    carcasses: [...groupBy(fitout.masses, ({ carcass }) => carcass)].map(([id, items]) =>
      sumOf(places.carcass(id), items),
    ),
    total: sumOf('total', fitout.masses),
  };
};

type Line = { readonly what: string } & Omit<MassRow, 'id' | 'at' | 'kind'> & {
    readonly kind: string;
    readonly at: Vec3 | null;
  };

const COLUMNS: readonly ListColumn<Line>[] = [
  { title: 'line', cell: (line) => line.what },
  { title: 'mark', cell: (line) => line.mark },
  { title: 'name', cell: (line) => line.name },
  { title: 'kind', cell: (line) => line.kind },
  { title: 'where', cell: (line) => line.where },
  { title: 'mass kg', cell: (line) => toKilogram(line.massKg) },
  { title: 'sigma kg', cell: (line) => toKilogram(line.sigmaKg) },
  { title: 'x forward mm', cell: (line) => (line.at === null ? null : toTenth(line.at[0])) },
  { title: 'y left mm', cell: (line) => (line.at === null ? null : toTenth(line.at[1])) },
  { title: 'z up mm', cell: (line) => (line.at === null ? null : toTenth(line.at[2])) },
];

const sumLine =
  (what: string) =>
  (sum: MassSum): Line => ({ ...sum, what, mark: '', kind: '', where: '' });

/** The masses in lines: items, then sums, told apart by the first column. */
export const massLines = ({ rows, kinds, carcasses, total }: MassTable): ListTable =>
  listTable(COLUMNS, [
    ...rows.map((row): Line => ({ ...row, what: 'item' })),
    ...kinds.map(sumLine('sum of kind')),
    ...carcasses.map(sumLine('sum of carcass')),
    sumLine('total')(total),
  ]);

/** The mass table as a file for a spreadsheet. */
export const massesCsv = (table: MassTable): string => tableCsv(massLines(table));
