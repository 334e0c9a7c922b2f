import type { Vec2 } from '../../base/index.ts';
import type { Shape } from './drawing.ts';
import type { Area } from './sheet.ts';
import { ROW_MM, type TableColumn, table, tableHeight } from './table.ts';

/** Something that takes height in a column of the sheet: a table, which may be split, or a picture, which may not. */
export type Block =
  | {
      readonly kind: 'table';
      readonly title: string;
      readonly columns: readonly TableColumn[];
      readonly rows: readonly (readonly string[])[];
    }
  | { readonly kind: 'picture'; readonly height: number; readonly shapes: (at: Vec2) => readonly Shape[] };

type TableBlock = Extract<Block, { kind: 'table' }>;

/** Between two blocks. */
const GAP = 3;
/** A table is not begun where fewer rows than this fit, unless it has no more. */
const LEAST_ROWS = 3;

const CONTINUED = ', continued';

const split = (block: TableBlock, rows: number): readonly [TableBlock, TableBlock | null] => {
  if (rows >= block.rows.length) return [block, null];
  const title = block.title.endsWith(CONTINUED) ? block.title : `${block.title}${CONTINUED}`;
  return [
    { ...block, rows: block.rows.slice(0, rows) },
    { ...block, title, rows: block.rows.slice(rows) },
  ];
};

/** How many rows of the table fit the height; 0 where too few fit to begin. */
const rowsThatFit = (block: TableBlock, height: number): number => {
  const fit = Math.floor(height / ROW_MM) - 2;
  return fit >= Math.min(block.rows.length, LEAST_ROWS) ? Math.min(fit, block.rows.length) : 0;
};

/** Fills one column from the top; what did not fit is left, in order. */
const fillColumn = (
  blocks: readonly Block[],
  column: Area,
): { readonly shapes: readonly Shape[]; readonly left: readonly Block[] } => {
  const shapes: Shape[] = [];
  let top = column.to[1];
  for (const [i, block] of blocks.entries()) {
    const room = top - column.from[1];
    const at: Vec2 = [column.from[0], top];
    if (block.kind === 'picture') {
      // A picture taller than an empty column still has to stand somewhere.
      if (block.height > room && top < column.to[1]) return { shapes, left: blocks.slice(i) };
      shapes.push(...block.shapes(at));
      top -= block.height + GAP;
      continue;
    }
    const rows = rowsThatFit(block, room);
    if (rows === 0) return { shapes, left: blocks.slice(i) };
    const [now, later] = split(block, rows);
    shapes.push(...table(at, now.title, now.columns, now.rows));
    if (later) return { shapes, left: [later, ...blocks.slice(i + 1)] };
    top -= tableHeight(rows) + GAP;
  }
  return { shapes, left: [] };
};

/** Fills the columns one after the other; what did not fit is left for the next sheet. */
export const fillColumns = (
  blocks: readonly Block[],
  columns: readonly Area[],
): { readonly shapes: readonly Shape[]; readonly left: readonly Block[] } =>
  columns.reduce<{ shapes: readonly Shape[]; left: readonly Block[] }>(
    (done, column) => {
      const { shapes, left } = fillColumn(done.left, column);
      return { shapes: [...done.shapes, ...shapes], left };
    },
    { shapes: [], left: blocks },
  );

/** Between two columns of a sheet. */
export const COLUMN_GAP = 4;

/** Columns of a sheet that holds nothing but what the first one had no room for. */
const columnsOf = (room: Area, width: number): readonly Area[] => {
  const count = Math.floor((room.to[0] - room.from[0] + COLUMN_GAP) / (width + COLUMN_GAP));
  return Array.from({ length: count }, (_, i) => {
    const x = room.from[0] + i * (width + COLUMN_GAP);
    return { from: [x, room.from[1]], to: [x + width, room.to[1]] };
  });
};

/** Shapes of each continuation sheet until every block, so wide at most, has its place. */
export const continuations = (blocks: readonly Block[], room: Area, width: number): readonly (readonly Shape[])[] => {
  const sheets: (readonly Shape[])[] = [];
  for (let left = blocks; left.length > 0; ) {
    const filled = fillColumns(left, columnsOf(room, width));
    sheets.push(filled.shapes);
    left = filled.left;
  }
  return sheets;
};
