import { formatInches, type LengthUnits } from '../base/index.ts';
import { type CsvCell, csvText } from './csv.ts';
import { SHOP_FRACTION, toTenth } from './rounding.ts';

/** One column of a list: its title and what it says of a row. */
export interface ListColumn<Row> {
  readonly title: string;
  readonly cell: (row: Row) => CsvCell;
}

/** A length in millimetres, and beside it in inches where the design is in inches; both empty for null. */
export const lengthColumn = <Row>(
  title: string,
  of: (row: Row) => number | null,
  units: LengthUnits,
): readonly ListColumn<Row>[] => {
  const shown = (row: Row, print: (mm: number) => CsvCell): CsvCell => {
    const mm = of(row);
    return mm === null ? null : print(mm);
  };
  const inches: ListColumn<Row> = {
    title: `${title} in`,
    cell: (row) => shown(row, (mm) => formatInches(mm, SHOP_FRACTION)),
  };
  return [{ title: `${title} mm`, cell: (row) => shown(row, toTenth) }, ...(units === 'in' ? [inches] : [])];
};

/** A list laid out, for whoever writes it: as text, as a sheet of a workbook. */
export interface ListTable {
  readonly header: readonly string[];
  readonly rows: readonly (readonly CsvCell[])[];
}

export const listTable = <Row>(columns: readonly ListColumn<Row>[], rows: readonly Row[]): ListTable => ({
  header: columns.map(({ title }) => title),
  rows: rows.map((row) => columns.map(({ cell }) => cell(row))),
});

/** The list as a file for a spreadsheet. */
export const tableCsv = ({ header, rows }: ListTable): string => csvText(header, rows);

export const listCsv = <Row>(columns: readonly ListColumn<Row>[], rows: readonly Row[]): string =>
  tableCsv(listTable(columns, rows));
