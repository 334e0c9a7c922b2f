import { bad, good, type LengthUnits, type Problem, parseLength, type Result } from '../base/index.ts';
import type { Design } from './design.ts';
import type { NodeId } from './parts.ts';
import { INSTRUMENTS, type Instrument, READING_KINDS, type Reading, type ReadingKind } from './survey.ts';

const ANGLES: ReadonlySet<ReadingKind> = new Set(['level', 'angle']);
/** True for the kinds whose value is degrees. */
export const readsAngle = (kind: ReadingKind): boolean => ANGLES.has(kind);

const COLUMNS = ['kind', 'from', 'to', 'value', 'instrument', 'note', 'at'] as const;
type Column = (typeof COLUMNS)[number];

/** Cells of a pasted line: a spreadsheet puts tabs between them, a CSV file commas or semicolons with quotes. */
const cellsOf = (line: string, separator: string): readonly string[] => {
  const cells: string[] = [];
  let cell = '';
  let quoted = false;
  for (let i = 0; i < line.length; i++) {
    const sign = line[i] ?? '';
    if (quoted && sign === '"' && line[i + 1] === '"') {
      cell += '"';
      i++;
    } else if (sign === '"' && (quoted || cell.trim() === '')) quoted = !quoted;
    else if (sign === separator && !quoted) {
      cells.push(cell.trim());
      cell = '';
    } else cell += sign;
  }
  return [...cells, cell.trim()];
};

const oneOf = <T extends string>(list: readonly T[], text: string): T | null =>
  list.find((item) => item === text.toLowerCase()) ?? null;

const separatorOf = (line: string): string => (line.includes('\t') ? '\t' : line.includes(';') ? ';' : ',');

const readAngle = (text: string): number | null => {
  const match = /^([+-]?\d+(?:[.,]\d+)?)\s*(?:°|deg)?$/.exec(text.trim());
  return match?.[1] === undefined ? null : Number(match[1].replace(',', '.'));
};

interface RowReader {
  readonly design: Design;
  readonly units: LengthUnits;
  readonly columns: readonly (Column | null)[];
}

const readRow = ({ design, units, columns }: RowReader, cells: readonly string[], at: string) => {
  const problems: Problem[] = [];
  const cell = (column: Column): string => cells[columns.indexOf(column)] ?? '';
  const marks = new Map(
    design.survey.marks.flatMap((mark) => [
      [mark.id as string, mark.id],
      [mark.name, mark.id],
    ]),
  );
  const markOf = (column: 'from' | 'to' | 'at'): NodeId | null => {
    const name = cell(column);
    const found = marks.get(name) ?? null;
    if (name !== '' && !found)
      problems.push({ at: `${at}.${column}`, code: 'no-such-mark', expected: 'a mark of the survey', got: name });
    return found;
  };
  const kind = oneOf(READING_KINDS, cell('kind'));
  if (!kind)
    problems.push({ at: `${at}.kind`, code: 'not-allowed', expected: READING_KINDS.join(', '), got: cell('kind') });
  const instrument: Instrument | null =
    cell('instrument') === '' ? (kind && readsAngle(kind) ? 'level' : 'tape') : oneOf(INSTRUMENTS, cell('instrument'));
  if (!instrument)
    problems.push({
      at: `${at}.instrument`,
      code: 'not-allowed',
      expected: INSTRUMENTS.join(', '),
      got: cell('instrument'),
    });
  const from = markOf('from');
  if (cell('from') === '') problems.push({ at: `${at}.from`, code: 'missing', expected: 'a mark of the survey' });
  const [to, vertex] = [markOf('to'), markOf('at')];
  const length = parseLength(cell('value'), units);
  const value = kind && readsAngle(kind) ? readAngle(cell('value')) : length.ok ? length.value : null;
  if (value === null)
    problems.push({ at: `${at}.value`, code: 'not-a-number', expected: 'a length or an angle', got: cell('value') });
  if (problems.length > 0 || !kind || !from || !instrument || value === null) return bad(problems);
  return good({ kind, from, to, at: vertex, value, instrument, sigma: null, note: cell('note'), leftOut: null });
};

/**
 * Readings pasted from a spreadsheet or a CSV file: a head `kind,from,to,value,instrument,note,at` in any order, or
 * none and then the columns in that order. Marks by id or by name; lengths as a person types them, angles in degrees.
 * Gives all rows, or every fault with its row (`row 3.value`), so that nothing is brought in by half.
 */
export const readReadingRows = (
  text: string,
  design: Design,
  units: LengthUnits = design.units,
): Result<readonly Omit<Reading, 'id'>[]> => {
  const lines = text.split(/\r\n|\r|\n/).map((line, i) => ({ line, row: i + 1 }));
  const filled = lines.filter(({ line }) => line.trim() !== '');
  const [first] = filled;
  if (!first) return bad([{ at: '', code: 'missing', expected: 'rows of readings' }]);
  const separator = separatorOf(first.line);
  const head = cellsOf(first.line, separator).map((cell) => oneOf(COLUMNS, cell));
  const headed = head.includes('kind') && head.includes('value');
  const reader: RowReader = { design, units, columns: headed ? head : COLUMNS };
  const read = filled
    .slice(headed ? 1 : 0)
    .map(({ line, row }) => readRow(reader, cellsOf(line, separator), `row ${row}`));
  const problems = read.flatMap((row) => (row.ok ? [] : row.error));
  return problems.length > 0 ? bad(problems) : good(read.flatMap((row) => (row.ok ? [row.value] : [])));
};
