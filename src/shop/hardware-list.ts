import { compareText, groupBy, type LengthUnits } from '../base/index.ts';
import type { Catalog, Hardware, HouseRules } from '../catalog/index.ts';
import type { FitOut, HardwareUse } from '../fitout/index.ts';
import { sayLoadPlate } from '../says/index.ts';
import { type ListColumn, type ListTable, lengthColumn, listTable, tableCsv } from './list-columns.ts';
import { counted, type NameOf, placesOf } from './places.ts';
import { toCent, toKilogram, toTenth } from './rounding.ts';

const MM_PER_METRE = 1000;

/** One thing to fetch or buy, for the whole cabinet. */
export interface HardwareRow {
  readonly item: string;
  readonly name: string;
  readonly from: HardwareUse['from'];
  readonly kind: string;
  /** What the quantity counts. */
  readonly by: 'piece' | 'pair' | 'metre';
  readonly quantity: number;
  /** More of what gets lost or spoilt; nothing else has spares. */
  readonly spares: number;
  /** Quantity and spares. */
  readonly fetch: number;
  /** Of a slide, which is bought by its length. */
  readonly lengthMm: number | null;
  readonly massKg: number;
  readonly price: number;
  readonly where: string;
  readonly note: string;
}

/** Fixings that are counted by the handful: a few more are fetched than are needed. */
const SMALL_FIXINGS: readonly Hardware['kind'][] = ['screw', 'bolt', 'insert', 'rivet'];

interface Article {
  readonly kind: string;
  readonly by: HardwareRow['by'];
  readonly massKg: number;
  readonly price: number;
}

/** What one of it weighs and costs; null where the catalog does not know it. */
const recordOf = (use: HardwareUse, catalog: Catalog): Article | null => {
  if (use.from === 'slide') {
    const slide = catalog.slides.get(use.item);
    const metres = (use.lengthMm ?? 0) / MM_PER_METRE;
    return slide ? { kind: 'slide', by: 'pair', massKg: slide.massKgPerMetre * metres, price: slide.price } : null;
  }
  if (use.from === 'device') {
    const device = catalog.devices.get(use.item);
    return device ? { kind: device.kind, by: 'piece', massKg: device.massKg, price: device.price } : null;
  }
  const piece = catalog.hardware.get(use.item);
  return piece ? { kind: piece.kind, by: piece.by, massKg: piece.massKg, price: piece.price } : null;
};

const sparesOf = (record: Article | null, quantity: number, rules: HouseRules): number =>
  record !== null && SMALL_FIXINGS.some((kind) => kind === record.kind)
    ? Math.ceil(quantity * rules.value('hardware-spare-share'))
    : 0;

const byShelf = (a: HardwareRow, b: HardwareRow): number =>
  compareText(a.from, b.from) ||
  compareText(a.kind, b.kind) ||
  compareText(a.name, b.name) ||
  compareText(a.item, b.item) ||
  (a.lengthMm ?? 0) - (b.lengthMm ?? 0);

export interface HardwareListInput {
  readonly fitout: FitOut;
  readonly catalog: Catalog;
  readonly rules: HouseRules;
  readonly names?: NameOf;
  /** Units of what is engraved on plates; millimetres and kilograms when left out. */
  readonly units?: LengthUnits;
}

const noteOf = ({ safeLoadKg }: HardwareUse, record: Article | null, units: LengthUnits): string => {
  if (record === null) return 'not in the catalog: no mass, no price';
  return safeLoadKg === undefined ? '' : `engrave: ${sayLoadPlate(safeLoadKg, units)}`;
};

/**
 * The pick list: one row an article, slides of different lengths apart. Mass is that of the quantity used, price that
 * of what is fetched, spares included (house rule `hardware-spare-share`).
 */
export const hardwareList = ({
  fitout,
  catalog,
  rules,
  names,
  units = 'mm',
}: HardwareListInput): readonly HardwareRow[] => {
  const places = placesOf(fitout, names);
  const keyOf = (use: HardwareUse): string =>
    `${use.from} ${use.item} ${use.from === 'slide' ? use.lengthMm : ''} ${use.safeLoadKg ?? ''}`;
  const rowOf = (uses: readonly HardwareUse[], first: HardwareUse): HardwareRow => {
    const record = recordOf(first, catalog);
    const quantity = uses.reduce((sum, use) => sum + use.quantity, 0);
    const spares = sparesOf(record, quantity, rules);
    return {
      item: first.item,
      name: first.name,
      from: first.from,
      kind: record?.kind ?? '',
      by: record?.by ?? 'piece',
      quantity,
      spares,
      fetch: quantity + spares,
      lengthMm: first.from === 'slide' ? first.lengthMm : null,
      massKg: (record?.massKg ?? 0) * quantity,
      price: (record?.price ?? 0) * (quantity + spares),
      where: counted(uses.map((use) => places.of(use))),
      note: noteOf(first, record, units),
    };
  };
  return [...groupBy(fitout.hardware, keyOf).values()]
    .flatMap((uses) => (uses[0] === undefined ? [] : [rowOf(uses, uses[0])]))
    .sort(byShelf);
};

const columns = (units: LengthUnits): readonly ListColumn<HardwareRow>[] => [
  { title: 'item', cell: (row) => row.name },
  { title: 'kind', cell: (row) => row.kind },
  ...lengthColumn<HardwareRow>('length', (row) => row.lengthMm, units),
  { title: 'counted by', cell: (row) => row.by },
  { title: 'needed', cell: (row) => toTenth(row.quantity) },
  { title: 'spares', cell: (row) => row.spares },
  { title: 'fetch', cell: (row) => toTenth(row.fetch) },
  { title: 'mass kg', cell: (row) => toKilogram(row.massKg) },
  { title: 'price', cell: (row) => toCent(row.price) },
  { title: 'where', cell: (row) => row.where },
  { title: 'catalog', cell: (row) => row.item },
  { title: 'note', cell: (row) => row.note },
];

export const hardwareTable = (rows: readonly HardwareRow[], units: LengthUnits): ListTable =>
  listTable(columns(units), rows);

/** The pick list as a file for a spreadsheet. */
export const hardwareCsv = (rows: readonly HardwareRow[], units: LengthUnits): string =>
  tableCsv(hardwareTable(rows, units));
