import { bad, good, type Problem, parseLength, type Result } from '../../base/index.ts';
import { MOST_OF_ONE_STOCK } from '../../design/index.ts';
import type { LayoutGrain } from '../layout/index.ts';
import type { CsvRow } from './csv-rows.ts';

/** What a cell holds, or what was expected of it. */
export type ReadCell<T> = (text: string) => Result<T, string>;

const GRAINS: readonly LayoutGrain[] = ['length', 'width', 'any'];

/** A length above zero as a person types it; a bare number is millimetres. Null where it cannot be read. */
export const lengthFrom = (text: string): number | null => {
  const read = parseLength(text, 'mm');
  return read.ok && read.value > 0 ? read.value : null;
};

export const lengthCell: ReadCell<number> = (text) => {
  const value = lengthFrom(text);
  return value === null ? bad('a length above zero, as 600, 600 mm or 23 5/8 in') : good(value);
};

/** A whole number, at least so many. */
export const countCell =
  (least: 0 | 1): ReadCell<number> =>
  (text) => {
    const value = Number(text);
    return text !== '' && Number.isInteger(value) && value >= least && value <= MOST_OF_ONE_STOCK
      ? good(value)
      : bad(`a whole number from ${least} to ${MOST_OF_ONE_STOCK}`);
  };

export const grainCell: ReadCell<LayoutGrain> = (text) => {
  const value = GRAINS.find((each) => each === text);
  return value === undefined ? bad('length, width or any') : good(value);
};

export const priceCell: ReadCell<number> = (text) => {
  const value = Number(text);
  return text !== '' && Number.isFinite(value) && value >= 0 ? good(value) : bad('a price of zero or more');
};

export const nameCell: ReadCell<string> = (text) => (text === '' ? bad('a name') : good(text));

/** An offcut in hand is used before a sheet is bought. */
export const offcutCell: ReadCell<boolean> = (text) =>
  text === '' || text === 'no' ? good(false) : text === 'yes' ? good(true) : bad('yes, no or nothing');

/** What it was given instead where the cell may be empty. */
export const orEmpty =
  <T, E>(read: ReadCell<T>, empty: E): ReadCell<T | E> =>
  (text) =>
    text === '' ? good(empty) : read(text);

/** Reads cells one after another and keeps what is wrong, so that one run tells a person all of it. */
export class CellReader {
  readonly problems: Problem[] = [];

  read<T>(row: CsvRow, column: string, as: ReadCell<T>, instead: T): T {
    const text = row.cell(column);
    const read = as(text);
    if (read.ok) return read.value;
    this.refuse(row, column, read.error, text === '' ? 'nothing' : `'${text}'`);
    return instead;
  }

  refuse({ row }: CsvRow, column: string, expected: string, got: string): void {
    this.problems.push({ at: `row ${row}, ${column}`, code: 'bad-cell', expected, got });
  }
}
