import { parseCsv } from 'hucre/csv';
import { bad, good, type Problem, type Result } from '../../base/index.ts';

/** One row under the header: cells by the name of their column, blanks trimmed. */
export interface CsvRow {
  /** As a spreadsheet counts it: the header is row 1. */
  readonly row: number;
  readonly cell: (column: string) => string;
}

/** A list of parts or sheets longer than this is no list for one job. */
const MOST_ROWS = 20_000;

/**
 * Reads CSV text with a header row; the order of columns is free, unknown ones are left alone, empty rows are left out.
 * An error names what is wrong with the list as a whole.
 */
export const csvRows = (text: string, needed: readonly string[]): Result<readonly CsvRow[]> => {
  const cells = parseCsv(text).map((row) => row.map((cell) => String(cell ?? '').trim()));
  const [header = [], ...rest] = cells;
  const names = header.map((name) => name.toLowerCase());
  const missing = needed.filter((name) => !names.includes(name));
  if (missing.length > 0) {
    const problem: Problem = { at: 'row 1', code: 'no-column', expected: needed.join(','), got: missing.join(', ') };
    return bad([problem]);
  }
  const rows = rest.flatMap((row, i): readonly CsvRow[] =>
    row.every((cell) => cell === '') ? [] : [{ row: i + 2, cell: (column) => row[names.indexOf(column)] ?? '' }],
  );
  if (rows.length === 0) return bad([{ at: '', code: 'no-rows' }]);
  return rows.length > MOST_ROWS
    ? bad([{ at: '', code: 'too-many-rows', expected: String(MOST_ROWS), got: String(rows.length) }])
    : good(rows);
};
