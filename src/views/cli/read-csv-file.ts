import { parseCsv } from 'hucre/csv';
import type { Complaint } from './bad-input.ts';
import { readTextFile } from './read-text-file.ts';

/** One row under the header: cells by the name of their column, blanks trimmed. */
export interface CsvRow {
  readonly row: number;
  readonly cell: (column: string) => string;
}

export interface CsvFile {
  readonly rows: readonly CsvRow[];
  readonly complaints: readonly Complaint[];
}

/** A list of parts or sheets longer than this is no list for one job. */
const MOST_ROWS = 20_000;

/**
 * Reads a CSV file with a header row; the order of columns is free, unknown ones are left alone, empty rows are left
 * out. Throws BadInput where the file cannot be read; what is wrong inside comes back as complaints.
 */
export const readCsvFile = (path: string, needed: readonly string[]): CsvFile => {
  const cells = parseCsv(readTextFile(path, 'a CSV file')).map((row) => row.map((cell) => String(cell ?? '').trim()));
  const [header = [], ...rest] = cells;
  const names = header.map((name) => name.toLowerCase());
  const missing = needed.filter((name) => !names.includes(name));
  if (missing.length > 0)
    return {
      rows: [],
      complaints: [
        { file: path, at: 'row 1', says: `the header has no ${missing.join(', ')}; expected ${needed.join(',')}` },
      ],
    };
  const rows = rest.flatMap((row, i): readonly CsvRow[] =>
    row.every((cell) => cell === '') ? [] : [{ row: i + 2, cell: (column) => row[names.indexOf(column)] ?? '' }],
  );
  const tooMany = rows.length > MOST_ROWS;
  const says =
    rows.length === 0
      ? 'there is no row under the header'
      : `there are ${rows.length} rows; expected at most ${MOST_ROWS}`;
  return { rows, complaints: rows.length === 0 || tooMany ? [{ file: path, at: '', says }] : [] };
};
