import type { Vec2 } from '../../base/index.ts';
import type { Shape } from '../drawing/drawing.ts';
import { line, rectangle, text } from '../drawing/shapes.ts';
import type { PaperCell, PaperColumn } from './paper.ts';
import { wrapWords } from './wrap-words.ts';

/** Capital height and pitch of lines in tables, mm. */
const TEXT = 1.9;
const PITCH = 3.3;
const PAD_X = 1;
const PAD_Y = 1;
const TICK_SIDE = 3;

interface LaidColumn extends PaperColumn {
  readonly x: number;
  readonly width: number;
}

/** A row with its words broken into lines. */
export interface LaidRow {
  readonly height: number;
  readonly cells: readonly (readonly string[] | 'tick')[];
}

export const laidColumns = (columns: readonly PaperColumn[], width: number): readonly LaidColumn[] => {
  const shares = columns.reduce((sum, { share }) => sum + share, 0);
  let x = 0;
  return columns.map((column) => {
    const laid = { ...column, x, width: (width * column.share) / shares };
    x += laid.width;
    return laid;
  });
};

export const laidRow = (cells: readonly PaperCell[], columns: readonly LaidColumn[], least: number): LaidRow => {
  const laid = columns.map((column, i) => {
    const cell = cells[i] ?? '';
    return typeof cell === 'string' ? wrapWords(cell, TEXT, column.width - 2 * PAD_X) : ('tick' as const);
  });
  const lines = Math.max(1, ...laid.map((cell) => (cell === 'tick' ? 1 : cell.length)));
  return { height: Math.max(lines * PITCH + 2 * PAD_Y - (PITCH - TEXT), least, TICK_SIDE + 2 * PAD_Y), cells: laid };
};

export const headRow = (columns: readonly LaidColumn[]): LaidRow =>
  laidRow(
    columns.map(({ title }) => title),
    columns,
    0,
  );

/** A row drawn below a corner, with the rule under it; a head is strong and has a rule above as well. */
export const rowShapes = (
  row: LaidRow,
  columns: readonly LaidColumn[],
  [left, top]: Vec2,
  head: boolean,
): readonly Shape[] => {
  const right = left + columns.reduce((sum, { width }) => sum + width, 0);
  const foot = top - row.height;
  const words = columns.flatMap((column, i): readonly Shape[] => {
    const cell = row.cells[i] ?? [];
    const x = left + column.x;
    if (cell === 'tick') {
      const at: Vec2 = [x + PAD_X, top - PAD_Y - TICK_SIDE];
      return [rectangle('rule', at, [at[0] + TICK_SIDE, at[1] + TICK_SIDE])];
    }
    const align = column.align ?? 'left';
    const at = align === 'right' ? x + column.width - PAD_X : x + PAD_X;
    return cell.map((shown, k) =>
      text([at, top - PAD_Y - TEXT - k * PITCH], shown, { height: TEXT, align, strong: head }),
    );
  });
  const fields = columns.filter(({ ruled }) => ruled === true).map(({ x }) => left + x);
  return [
    ...words,
    ...fields.map((x) => line('rule', [x, top], [x, foot])),
    line('rule', [left, foot], [right, foot]),
    ...(head ? [line('rule', [left, top], [right, top])] : []),
  ];
};
