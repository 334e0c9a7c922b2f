import type { LengthUnits, Vec2 } from '../../base/index.ts';
import { type Block, COLUMN_GAP, continuations, fillColumns } from './blocks.ts';
import type { Drawing, Shape } from './drawing.ts';
import { PAPER_CAUTION } from './paper-words.ts';
import { type Area, areaSize, type Cell, sheetFor, sheetShapes } from './sheet.ts';
import type { Surround } from './view-sheet.ts';

const PAD = 3;
const TITLE_ROWS = 4;
export const TABLE_MM = 76;

/** A figure with tables at its right, on as many sheets as the tables take. */
export interface TableSheet {
  readonly title: string;
  readonly mark: string;
  readonly units: LengthUnits;
  readonly surround: Surround;
  readonly blocks: readonly Block[];
  /** The figure's reduction in the free room, its shapes from the low corner of that room, and the title rows. */
  readonly figure: (room: Area) => {
    readonly reduction: number;
    readonly shapes: readonly Shape[];
    readonly rows: (reduction: number) => readonly (readonly Cell[])[];
  };
  readonly caution?: string;
  /** Sheets of the same paper that follow; they count in the numbers. */
  readonly more?: number;
}

/** Low corner of something in the middle of a room. */
export const centred = (room: Area, [width, height]: Vec2): Vec2 => {
  const free = areaSize(room);
  return [room.from[0] + (free[0] - width) / 2, room.from[1] + (free[1] - height) / 2];
};

export const tableSheets = (sheet: TableSheet): readonly Drawing[] => {
  const { units, surround, blocks } = sheet;
  const paper = sheetFor(units, TITLE_ROWS);
  const room: Area = {
    from: [paper.room.from[0] + PAD, paper.room.from[1] + PAD],
    to: [paper.room.to[0] - PAD, paper.room.to[1] - PAD],
  };
  const split = room.to[0] - TABLE_MM;
  const figure = sheet.figure({
    from: [room.from[0] + surround.left, room.from[1] + surround.bottom],
    to: [split - COLUMN_GAP - surround.right, room.to[1] - surround.top],
  });
  const first = fillColumns(blocks, [{ from: [split, room.from[1]], to: room.to }]);
  const pages = [[...figure.shapes, ...first.shapes], ...continuations(first.left, room, TABLE_MM)];
  const count = pages.length + (sheet.more ?? 0);
  return pages.map((shapes, i): Drawing => {
    const block = {
      mark: sheet.mark,
      sheet: `sheet ${i + 1} of ${count}`,
      rows: figure.rows(figure.reduction),
      caution: sheet.caution ?? PAPER_CAUTION,
    };
    return {
      title: sheet.title,
      size: paper.size,
      scale: 1 / figure.reduction,
      shapes: [...sheetShapes(paper, block), ...shapes],
    };
  });
};
