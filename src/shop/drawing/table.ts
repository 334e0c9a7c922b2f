import type { Vec2 } from '../../base/index.ts';
import type { Shape } from './drawing.ts';
import { line, TEXT_MM, text } from './shapes.ts';
import { fitted } from './text-width.ts';

export interface TableColumn {
  readonly title: string;
  readonly width: number;
  readonly align: 'left' | 'right';
}

/** One line of a table, mm on paper. */
export const ROW_MM = 4;
const CELL_PAD = 0.8;

/** Height that a table of so many rows takes, with its title and its header. */
export const tableHeight = (rows: number): number => (rows + 2) * ROW_MM;

const rowText = (
  at: Vec2,
  columns: readonly TableColumn[],
  cells: readonly string[],
  strong: boolean,
): readonly Shape[] => {
  let x = at[0];
  return columns.map((column, i) => {
    const height = strong ? TEXT_MM.caption : TEXT_MM.note;
    const room = column.width - 2 * CELL_PAD;
    const shape = text(
      [column.align === 'left' ? x + CELL_PAD : x + column.width - CELL_PAD, at[1] + (ROW_MM - height) / 2],
      fitted(cells[i] ?? '', height, room),
      { height, align: column.align, within: room },
    );
    x += column.width;
    return shape;
  });
};

/** A table hanging from its upper left corner: a title, a header, and one ruled line a row. */
export const table = (
  at: Vec2,
  title: string,
  columns: readonly TableColumn[],
  rows: readonly (readonly string[])[],
): readonly Shape[] => {
  const width = columns.reduce((sum, column) => sum + column.width, 0);
  const y = (i: number): number => at[1] - (i + 2) * ROW_MM;
  const rule = (i: number): Shape => line('rule', [at[0], y(i)], [at[0] + width, y(i)]);
  return [
    text([at[0] + CELL_PAD, at[1] - ROW_MM + CELL_PAD], title, { height: TEXT_MM.note, strong: true }),
    ...rowText(
      [at[0], y(0)],
      columns,
      columns.map((column) => column.title),
      true,
    ),
    rule(0),
    ...rows.flatMap((cells, i) => [...rowText([at[0], y(i + 1)], columns, cells, false), rule(i + 1)]),
  ];
};
