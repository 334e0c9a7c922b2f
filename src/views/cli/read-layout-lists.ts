import { parseLength } from '../../base/index.ts';
import type { LayoutGrain, LayoutPart, StockSheet } from '../../shop/index.ts';
import { BadInput, type Complaint } from './bad-input.ts';
import { type CsvRow, readCsvFile } from './read-csv-file.ts';

/** What a cell holds, or what is wrong with it. */
type Read<T> = { readonly value: T } | { readonly says: string };

const MOST_OF_ONE = 10_000;
const GRAINS: readonly LayoutGrain[] = ['length', 'width', 'any'];

/** A length above zero as a person types it; a bare number is millimetres. Null where it cannot be read. */
export const lengthFrom = (text: string): number | null => {
  const read = parseLength(text, 'mm');
  return read.ok && read.value > 0 ? read.value : null;
};

const length = (text: string): Read<number> => {
  const value = lengthFrom(text);
  return value === null
    ? { says: `expected a length above zero, as 600, 600 mm or 23 5/8 in, found '${text}'` }
    : { value };
};

const count = (text: string): Read<number> => {
  const value = Number(text);
  return text !== '' && Number.isInteger(value) && value > 0 && value <= MOST_OF_ONE
    ? { value }
    : { says: `expected a whole number from 1 to ${MOST_OF_ONE}, found '${text}'` };
};

const grain = (text: string): Read<LayoutGrain> => {
  const value = GRAINS.find((each) => each === text);
  return value === undefined ? { says: `expected length, width or any, found '${text}'` } : { value };
};

const price = (text: string): Read<number> => {
  const value = Number(text);
  return text !== '' && Number.isFinite(value) && value >= 0
    ? { value }
    : { says: `expected a price of zero or more, found '${text}'` };
};

const name = (text: string): Read<string> =>
  text === '' ? { says: 'expected a name, found nothing' } : { value: text };

/** An offcut in hand is used before a sheet is bought. */
const offcut = (text: string): Read<boolean> =>
  text === '' || text === 'no'
    ? { value: false }
    : text === 'yes'
      ? { value: true }
      : { says: `expected yes, no or nothing, found '${text}'` };

/** Reads cells one after another and keeps what is wrong, so that one run tells a person all of it. */
class Reader {
  readonly complaints: Complaint[] = [];
  private readonly file: string;
  constructor(file: string) {
    this.file = file;
  }
  read<T>(row: CsvRow, column: string, as: (text: string) => Read<T>, instead: T): T {
    const read = as(row.cell(column));
    if ('value' in read) return read.value;
    this.complaints.push({ file: this.file, at: `row ${row.row}, ${column}`, says: read.says });
    return instead;
  }
}

/** Material and thickness together are what a sheet must match; either may be left out of both lists. */
const boardName = (row: CsvRow): string => {
  const thickness = lengthFrom(row.cell('thickness'));
  return [row.cell('material'), thickness === null ? row.cell('thickness') : `${thickness}`]
    .filter((each) => each !== '')
    .join(' ');
};

const partFrom = (row: CsvRow, reader: Reader): LayoutPart => ({
  mark: reader.read(row, 'mark', name, ''),
  length: reader.read(row, 'length', length, 0),
  width: reader.read(row, 'width', length, 0),
  quantity: reader.read(row, 'qty', count, 0),
  grain: reader.read(row, 'grain', grain, 'any'),
  material: boardName(row),
  group: row.cell('group'),
});

const stockFrom = (row: CsvRow, reader: Reader): StockSheet => ({
  name: reader.read(row, 'name', name, ''),
  length: reader.read(row, 'length', length, 0),
  width: reader.read(row, 'width', length, 0),
  quantity: row.cell('qty') === '' ? null : reader.read(row, 'qty', count, 0),
  price: reader.read(row, 'price', price, 0),
  material: boardName(row),
  offcut: reader.read(row, 'offcut', offcut, false),
});

export interface LayoutLists {
  readonly parts: readonly LayoutPart[];
  readonly stock: readonly StockSheet[];
}

/** Reads a parts list and a stock list. Throws BadInput with every row that cannot be read, of both files. */
export const readLayoutLists = (partsPath: string, stockPath: string): LayoutLists => {
  const partsFile = readCsvFile(partsPath, ['mark', 'length', 'width', 'qty', 'grain']);
  const stockFile = readCsvFile(stockPath, ['name', 'length', 'width', 'qty', 'price']);
  const [partsReader, stockReader] = [new Reader(partsPath), new Reader(stockPath)];
  const parts = partsFile.rows.map((row) => partFrom(row, partsReader));
  const sheets = stockFile.rows.map((row) => stockFrom(row, stockReader));
  // A stock list without material and thickness serves every part.
  const plain = sheets.every(({ material }) => material === '');
  const materials = [...new Set(parts.map(({ material }) => material ?? ''))];
  const stock =
    plain && materials.length === 1 ? sheets.map((sheet) => ({ ...sheet, material: materials[0] ?? '' })) : sheets;
  const complaints = [
    ...partsFile.complaints,
    ...partsReader.complaints,
    ...stockFile.complaints,
    ...stockReader.complaints,
  ];
  if (complaints.length > 0) throw new BadInput(complaints);
  return { parts, stock };
};
