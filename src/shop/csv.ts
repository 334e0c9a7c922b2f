import { writeCsv } from 'hucre/csv';

/** Text, a figure, or nothing. */
export type CsvCell = string | number | null;

/**
 * A spreadsheet takes a cell for a formula when it starts with one of these, some of them after blanks or signs that
 * do not show, and in their full-width forms too.
 */
const STARTS_FORMULA = /^[\s\p{Cc}\p{Cf}]*[=+\-@|＝＋－＠｜]|^[\t\r\n]/u;

/** Control signs that have no place in a table; line breaks and tabs stay. */
const CONTROLS = /[^\P{Cc}\t\r\n]/gu;

/** Text that a spreadsheet shows and never computes: what could start a formula gets an apostrophe before it. */
export const neutralised = (text: string): string => {
  const clean = text.replace(CONTROLS, '');
  return STARTS_FORMULA.test(clean) ? `'${clean}` : clean;
};

/**
 * A CSV file after RFC 4180 (commas, CRLF, doubled quotes) with a mark that says it is UTF-8, so that a spreadsheet
 * shows fractions and names as they are. Figures stay figures; text never becomes a formula.
 */
export const csvText = (header: readonly string[], rows: readonly (readonly CsvCell[])[]): string => {
  const cells = [header, ...rows].map((row) =>
    row.map((cell) => (typeof cell === 'string' ? neutralised(cell) : cell)),
  );
  return `${writeCsv(cells, { bom: true, lineSeparator: '\r\n' })}\r\n`;
};
