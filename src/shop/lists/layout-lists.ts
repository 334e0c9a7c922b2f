import { bad, good, type Result } from '../../base/index.ts';
import type { LayoutPart, StockSheet } from '../layout/index.ts';
import {
  CellReader,
  countCell,
  grainCell,
  lengthCell,
  lengthFrom,
  nameCell,
  offcutCell,
  orEmpty,
  priceCell,
} from './cells.ts';
import { type CsvRow, csvRows } from './csv-rows.ts';

/** Material and thickness together are what a sheet must match; either may be left out of both lists. */
const boardName = (row: CsvRow): string => {
  const thickness = lengthFrom(row.cell('thickness'));
  return [row.cell('material'), thickness === null ? row.cell('thickness') : `${thickness}`]
    .filter((each) => each !== '')
    .join(' ');
};

const partFrom = (row: CsvRow, reader: CellReader): LayoutPart => ({
  mark: reader.read(row, 'mark', nameCell, ''),
  length: reader.read(row, 'length', lengthCell, 0),
  width: reader.read(row, 'width', lengthCell, 0),
  quantity: reader.read(row, 'qty', countCell(1), 0),
  grain: reader.read(row, 'grain', grainCell, 'any'),
  material: boardName(row),
  group: row.cell('group'),
});

const stockFrom = (row: CsvRow, reader: CellReader): StockSheet => {
  const offcut = reader.read(row, 'offcut', offcutCell, false);
  return {
    name: reader.read(row, 'name', nameCell, ''),
    length: reader.read(row, 'length', lengthCell, 0),
    width: reader.read(row, 'width', lengthCell, 0),
    quantity: reader.read(row, 'qty', orEmpty(countCell(0), null), 0),
    // What lies in the rack is paid for.
    price: reader.read(row, 'price', offcut ? orEmpty(priceCell, 0) : priceCell, 0),
    material: boardName(row),
    offcut,
  };
};

const listOf = <T>(
  text: string,
  needed: readonly string[],
  from: (row: CsvRow, reader: CellReader) => T,
): Result<readonly T[]> => {
  const rows = csvRows(text, needed);
  if (!rows.ok) return rows;
  const reader = new CellReader();
  const items = rows.value.map((row) => from(row, reader));
  return reader.problems.length > 0 ? bad(reader.problems) : good(items);
};

/** Reads a list of parts to lay out: mark,length,width,qty,grain; also material,thickness,group. */
export const readPartsList = (text: string): Result<readonly LayoutPart[]> =>
  listOf(text, ['mark', 'length', 'width', 'qty', 'grain'], partFrom);

/** What the header of a list of stock must name. */
export const STOCK_COLUMNS = ['name', 'length', 'width', 'qty', 'price'] as const;

/** Reads a list of sheets: name,length,width,qty,price; also material,thickness,offcut. */
export const readStockList = (text: string): Result<readonly StockSheet[]> => listOf(text, STOCK_COLUMNS, stockFrom);
