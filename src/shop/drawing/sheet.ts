import type { LengthUnits, Vec2 } from '../../base/index.ts';
import type { Shape } from './drawing.ts';
import { line, rectangle, TEXT_MM, text } from './shapes.ts';
import { fitted } from './text-width.ts';
import { type Projection, projectionSign } from './title-foot.ts';

/** Landscape sheets that any office printer takes: ISO 216 A4, and Letter where inches are used. */
const PAPER: Readonly<Record<LengthUnits, Vec2>> = { mm: [297, 210], in: [279.4, 215.9] };

/**
 * Reductions that a three-sided scale has: those of ISO 5455 with 1:2.5 and 1:7.5 between them, and those of an
 * inch scale. None enlarges: a small part is drawn true.
 */
const REDUCTIONS: Readonly<Record<LengthUnits, readonly number[]>> = {
  mm: [1, 2, 2.5, 5, 7.5, 10, 20, 50, 100],
  in: [1, 2, 4, 8, 12, 16, 24, 32, 48, 96],
};

/** What a printer cannot reach, and a little more for a hole punch. */
const MARGIN = 9;
/** Least height of the title block, and of one of its rows; the caution stands under them. */
const TITLE_MM = 31;
const TITLE_ROW_MM = 7.2;
const CAUTION_MM = 4.5;
const CELL_PAD = 1.1;

export interface Area {
  readonly from: Vec2;
  readonly to: Vec2;
}
export const areaSize = ({ from, to }: Area): Vec2 => [to[0] - from[0], to[1] - from[1]];

export interface Sheet {
  readonly size: Vec2;
  /** Inside the frame and above the title block. */
  readonly room: Area;
  readonly titleBlock: Area;
}

export const sheetFor = (units: LengthUnits, titleRows = 3): Sheet => {
  const title = Math.max(TITLE_MM, CAUTION_MM + titleRows * TITLE_ROW_MM);
  const [width, height] = PAPER[units];
  const [left, right, bottom, top] = [MARGIN, width - MARGIN, MARGIN, height - MARGIN];
  return {
    size: [width, height],
    room: { from: [left, bottom + title], to: [right, top] },
    titleBlock: { from: [left, bottom], to: [right, bottom + title] },
  };
};

/** The largest standard reduction at which the size fits the room: 5 for 1:5. The last one where none fits. */
export const reductionFor = (size: Vec2, room: Vec2, units: LengthUnits): number => {
  const fits = (reduction: number): boolean => size[0] / reduction <= room[0] && size[1] / reduction <= room[1];
  const all = REDUCTIONS[units];
  return all.find(fits) ?? all.at(-1) ?? 1;
};

/** A field of the title block: its share of the width of its row. */
export interface Cell {
  readonly caption: string;
  readonly value: string;
  readonly share: number;
  /** The sign for the angle of projection, in place of a value. */
  readonly symbol?: Projection;
}

export interface TitleBlock {
  /** The mark of the part or the letter of the view, large, at the right. */
  readonly mark: string;
  readonly sheet: string;
  /** Rows of cells, upper first. */
  readonly rows: readonly (readonly Cell[])[];
  readonly caution: string;
}

const SIGN_MM = 2.8;
const SIGN_UP = 0.33;
/** The value of a cell over its foot. */
const VALUE_UP = 0.19;
const MARK_MM = 34;
const MARK_TEXT = 8;

const cellShapes = (cell: Cell, at: Vec2, width: number, height: number): readonly Shape[] => {
  const room = width - 2 * CELL_PAD;
  const value = { height: TEXT_MM.value, within: room };
  return [
    rectangle('rule', at, [at[0] + width, at[1] + height]),
    text([at[0] + CELL_PAD, at[1] + height - CELL_PAD - TEXT_MM.caption], cell.caption, { height: TEXT_MM.caption }),
    ...(cell.symbol === undefined
      ? []
      : projectionSign(cell.symbol, [at[0] + width / 2, at[1] + height * SIGN_UP], SIGN_MM)),
    // A quarter more than the estimate still fits, squeezed, before anything is left out.
    text([at[0] + CELL_PAD, at[1] + height * VALUE_UP], fitted(cell.value, TEXT_MM.value, room * 1.25), value),
  ];
};

const rowShapes = (cells: readonly Cell[], at: Vec2, width: number, height: number): readonly Shape[] => {
  const shares = cells.reduce((sum, { share }) => sum + share, 0);
  let x = at[0];
  return cells.flatMap((cell) => {
    const cellWidth = (width * cell.share) / shares;
    const shapes = cellShapes(cell, [x, at[1]], cellWidth, height);
    x += cellWidth;
    return shapes;
  });
};

const markShapes = (block: TitleBlock, from: Vec2, to: Vec2): readonly Shape[] => {
  const middle = (from[0] + to[0]) / 2;
  const within = to[0] - from[0] - 2 * CELL_PAD;
  return [
    rectangle('rule', from, to),
    text([middle, from[1] + (to[1] - from[1]) / 2 - 1.5], block.mark, {
      height: MARK_TEXT,
      align: 'middle',
      strong: true,
      within,
    }),
    text([middle, from[1] + CELL_PAD + 0.6], block.sheet, { height: TEXT_MM.note, align: 'middle', within }),
  ];
};

/** The frame, the title block along the foot of the sheet, and the caution under it. */
export const sheetShapes = (sheet: Sheet, block: TitleBlock): readonly Shape[] => {
  const { from, to } = sheet.titleBlock;
  const rowsFrom = from[1] + CAUTION_MM;
  const rowHeight = (to[1] - rowsFrom) / block.rows.length;
  const width = to[0] - from[0] - MARK_MM;
  const cautionRoom = to[0] - from[0] - 2 * CELL_PAD;
  return [
    rectangle('frame', from, sheet.room.to),
    line('frame', [from[0], to[1]], to),
    ...block.rows.flatMap((cells, i) => rowShapes(cells, [from[0], to[1] - (i + 1) * rowHeight], width, rowHeight)),
    ...markShapes(block, [from[0] + width, rowsFrom], to),
    text([from[0] + CELL_PAD, from[1] + 1.3], fitted(block.caution, TEXT_MM.note, cautionRoom * 1.25), {
      height: TEXT_MM.note,
      within: cautionRoom,
    }),
  ];
};
