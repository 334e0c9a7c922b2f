import { writeXlsx } from 'hucre/xlsx';
import { neutralised } from './csv.ts';
import type { ListTable } from './list-columns.ts';
import { packedAnew } from './zip.ts';

/** One sheet of a workbook: a list under its name. */
export interface WorkbookSheet {
  readonly name: string;
  readonly table: ListTable;
}

/** A file is the same bytes for the same design, so it carries one moment, which nobody takes for a real one. */
const NO_MOMENT = new Date(946_684_800_000);
const HEAD = { font: { bold: true } } as const;
const NARROWEST = 6;
const WIDEST = 48;

/** Wide enough for what stands in the column, in characters. */
const widthOf = ({ header, rows }: ListTable, column: number): number => {
  const longest = rows.reduce((most, row) => Math.max(most, String(row[column] ?? '').length), 0);
  return Math.min(WIDEST, Math.max(NARROWEST, longest + 2, (header[column] ?? '').length + 3));
};

const sheetOf = ({ name, table }: WorkbookSheet) => {
  const { header, rows } = table;
  const last = { row: rows.length, column: header.length - 1 };
  return {
    name,
    columns: header.map((_, column) => ({ width: widthOf(table, column) })),
    rows: [[...header], ...rows.map((row) => row.map((cell) => (typeof cell === 'string' ? neutralised(cell) : cell)))],
    cells: new Map(header.map((value, column) => [`0,${column}`, { value, style: HEAD }])),
    freezePane: { rows: 1 },
    ...(last.column < 0 ? {} : { autoFilter: { range: `A1:${columnName(last.column)}${last.row + 1}` } }),
    pageSetup: { orientation: 'landscape' as const, fitToPage: true, fitToWidth: 1, fitToHeight: 0 },
  };
};

const ALPHABET = 26;
/** `A` … `Z`, `AA` … */
const columnName = (index: number): string => {
  const last = String.fromCharCode('A'.charCodeAt(0) + (index % ALPHABET));
  return index < ALPHABET ? last : `${columnName(Math.floor(index / ALPHABET) - 1)}${last}`;
};

/**
 * The lists as one workbook (Office Open XML). Figures are numbers, text is text that no spreadsheet computes, and
 * there is no formula in it. The same lists give the same bytes.
 */
export const workbook = async (sheets: readonly WorkbookSheet[], title: string): Promise<Uint8Array> =>
  packedAnew(
    await writeXlsx({
      sheets: sheets.map(sheetOf),
      properties: { title, creator: 'Hatchwright', created: NO_MOMENT, modified: NO_MOMENT },
    }),
  );
