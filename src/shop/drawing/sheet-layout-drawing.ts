import { formatMillimetres, type LengthUnits, type Vec2 } from '../../base/index.ts';
import { cutRows, sequenceOf } from '../cut-rows.ts';
import { type LaidSheet, type Rectangle, sheetStrips } from '../layout-figure.ts';
import type { BoardLayout } from '../sheet-layouts.ts';
import { stockName } from '../stock-words.ts';
import { type Block, fillColumns } from './blocks.ts';
import type { Drawing, Shape } from './drawing.ts';
import { hatching } from './hatch.ts';
import { PAPER_CAUTION, scaleText, sizeText, unitsText } from './paper-words.ts';
import { circle, line, type OnSheet, onSheet, rectangle, TEXT_MM, text } from './shapes.ts';
import { type Area, areaSize, type Cell, reductionFor, sheetFor, sheetShapes } from './sheet.ts';
import type { TableColumn } from './table.ts';

export interface LayoutWords {
  readonly designTitle: string;
  readonly customer: string;
  /** Letter, hash and who approved it. */
  readonly signed: string;
  readonly units: LengthUnits;
}

/** On paper, mm. */
const PAD = 3;
const GAP = 5;
const LETTER_MM = 3.5;
const LETTER_ROOM = 8;
const NOTE_ROOM = 8;
const ARROW = { half: 4, barb: 1.2 } as const;
const HATCH_MM = 4;
const CORNER_MM = 1.2;
const TAKE_UP = 5;

const COLUMNS: readonly TableColumn[] = [
  { title: 'no.', width: 7, align: 'right' },
  { title: 'cut', width: 19, align: 'left' },
  { title: 'set to', width: 21, align: 'left' },
  { title: 'gives', width: 43, align: 'left' },
  { title: 'times', width: 9, align: 'right' },
];
const TABLE_WIDTH = COLUMNS.reduce((sum, { width }) => sum + width, 0);

const cornersOf = ({ x, y, length, width }: Rectangle): readonly [Vec2, Vec2] => [
  [x, y],
  [x + length, y + width],
];

const boxOf = (layer: 'outline' | 'seen' | 'behind' | 'rule', rest: Rectangle, move: OnSheet): Shape => {
  const [from, to] = cornersOf(rest);
  return rectangle(layer, move(from), move(to));
};

/** A line with a barb at both ends, along the grain of the part as it lies. */
const grainArrow = (middle: Vec2, upright: boolean): readonly Shape[] => {
  const at = (along: number, across: number): Vec2 =>
    upright ? [middle[0] + across, middle[1] + along] : [middle[0] + along, middle[1] + across];
  const barbs = [-1, 1].flatMap((end) =>
    [-1, 1].map((side): Shape => {
      const tip = end * ARROW.half;
      return line('dimension', at(tip, 0), at(tip - end * ARROW.barb, (side * ARROW.barb) / 2));
    }),
  );
  return [line('dimension', at(-ARROW.half, 0), at(ARROW.half, 0)), ...barbs];
};

const partShapes = (sheet: LaidSheet, laid: BoardLayout, units: LengthUnits, move: OnSheet): readonly Shape[] => {
  const known = new Map(laid.board.parts.map((part) => [part.mark, part]));
  return sheet.parts.flatMap((part): readonly Shape[] => {
    const [low, high] = cornersOf(part);
    const [from, to] = [move(low), move(high)];
    const [wide, tall] = [to[0] - from[0], to[1] - from[1]];
    const middle: Vec2 = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
    const height = Math.min(LETTER_MM, tall - 1, wide);
    const hasRoom = tall > 2 * LETTER_MM + TEXT_MM.note + ARROW.half && wide > 2 * ARROW.half + 2;
    const size = `${sizeText(part.length, units)} × ${sizeText(part.width, units)}`;
    const within = wide - 1;
    return [
      boxOf('seen', part, move),
      text([middle[0], hasRoom ? middle[1] : middle[1] - height / 2], part.mark, {
        height,
        align: 'middle',
        strong: true,
        within,
      }),
      ...(hasRoom
        ? [text([middle[0], middle[1] - LETTER_MM], size, { height: TEXT_MM.caption, align: 'middle', within })]
        : []),
      ...(hasRoom && known.get(part.mark)?.grain === 'length'
        ? grainArrow([middle[0], from[1] + ARROW.half / 2 + 1], part.turned)
        : []),
    ];
  });
};

const offcutShapes = (sheet: LaidSheet, units: LengthUnits, move: OnSheet): readonly Shape[] =>
  sheet.offcuts.flatMap((rest): readonly Shape[] => {
    const [low, high] = cornersOf(rest);
    const [from, to] = [move(low), move(high)];
    const ring: readonly Vec2[] = [from, [to[0], from[1]], to, [from[0], to[1]]];
    const words = `keep ${sizeText(rest.length, units)} × ${sizeText(rest.width, units)}`;
    return [
      boxOf('rule', rest, move),
      ...hatching(ring, HATCH_MM),
      text([(from[0] + to[0]) / 2, (from[1] + to[1]) / 2], words, {
        height: TEXT_MM.note,
        align: 'middle',
        within: to[0] - from[0] - 1,
      }),
    ];
  });

const stripShapes = (sheet: LaidSheet, laid: BoardLayout, at: number, move: OnSheet): readonly Shape[] => {
  const place = sequenceOf(laid.sequences, at);
  if (place === null) return [];
  return sheetStrips(sheet, place.sequence).map(({ name, by, piece }) => {
    const [from, to] = [move([piece.x, piece.y]), move([piece.x + piece.length, piece.y + piece.width])];
    const where: Vec2 =
      by === 'rip'
        ? [move([0, 0])[0] - LETTER_ROOM / 2, (from[1] + to[1] - LETTER_MM) / 2]
        : [(from[0] + to[0]) / 2, move([0, 0])[1] - LETTER_ROOM / 2 - LETTER_MM / 2];
    return text(where, name, { height: LETTER_MM, align: 'middle', strong: true });
  });
};

/** Which piece to take, where it is no bought sheet: above the figure, as wide as that may be. */
const takeShapes = (sheet: LaidSheet, move: OnSheet, room: number): readonly Shape[] => {
  if (!sheet.offcut) return [];
  const at: Vec2 = [move([0, 0])[0], move([0, sheet.width])[1] + TAKE_UP];
  return [
    text(at, `take ${stockName(sheet)}, length along the grain`, {
      height: TEXT_MM.note,
      strong: true,
      within: room,
    }),
  ];
};

/** The reference corner is the one that cuts are counted from: low left, where the first edges are trimmed. */
const cornerShapes = (sheet: LaidSheet, move: OnSheet, room: number): readonly Shape[] => {
  const { usable } = sheet;
  const at = move([usable.x, usable.y]);
  const trim = sheet.offcut ? 'an offcut is not trimmed' : 'broken line: trim';
  return [
    circle('outline', at, CORNER_MM),
    text([move([0, 0])[0], move([0, sheet.width])[1] + 2], `reference corner: the ring, low left; ${trim}`, {
      height: TEXT_MM.note,
      within: room,
    }),
  ];
};

const figureShapes = (
  laid: BoardLayout,
  at: number,
  sheet: LaidSheet,
  units: LengthUnits,
  move: OnSheet,
  room: number,
) => [
  boxOf('outline', { x: 0, y: 0, length: sheet.length, width: sheet.width }, move),
  boxOf('behind', sheet.usable, move),
  ...offcutShapes(sheet, units, move),
  ...partShapes(sheet, laid, units, move),
  ...stripShapes(sheet, laid, at, move),
  ...cornerShapes(sheet, move, room),
  ...takeShapes(sheet, move, room),
];

const cell = (caption: string, share: number, value: string): Cell => ({ caption, share, value });

const kerfText = ({ board: { job } }: BoardLayout, units: LengthUnits): string =>
  job.cut === 'shear' ? 'none: sheared' : sizeText(job.kerf, units);

const titleRows = (
  laid: BoardLayout,
  sheet: LaidSheet,
  { designTitle, customer, signed, units }: LayoutWords,
  reduction: number,
  together: string,
): readonly (readonly Cell[])[] => [
  [cell('design', 5, designTitle), cell('customer', 3.5, customer), cell('revision', 4.5, signed)],
  [
    cell('material', 5, laid.board.materialName),
    cell('thickness', 2, `${formatMillimetres(laid.board.thickness, 2)} mm`),
    cell(
      sheet.offcut ? 'offcut in hand' : 'sheet',
      3,
      `${sizeText(sheet.length, units)} × ${sizeText(sheet.width, units)}`,
    ),
    cell('kerf', 2, kerfText(laid, units)),
  ],
  [
    cell('scale', 2, scaleText(reduction)),
    cell('units', 2, unitsText(units)),
    cell('cut together', 4, together),
    cell('cut by', 2, ''),
    cell('checked', 2, ''),
  ],
];

/** Pages that hold only the rest of a long table. */
const furtherPages = (blocks: readonly Block[], room: Area): readonly (readonly Shape[])[] => {
  const count = Math.max(1, Math.floor((areaSize(room)[0] + GAP) / (TABLE_WIDTH + GAP)));
  const columns = Array.from({ length: count }, (_, i): Area => {
    const x = room.from[0] + i * (TABLE_WIDTH + GAP);
    return { from: [x, room.from[1]], to: [x + TABLE_WIDTH, room.to[1]] };
  });
  const pages: (readonly Shape[])[] = [];
  for (let left = blocks; left.length > 0; ) {
    const filled = fillColumns(left, columns);
    pages.push(filled.shapes);
    left = filled.left;
  }
  return pages;
};

const tableOf = (laid: BoardLayout, at: number, units: LengthUnits): readonly Block[] => {
  const place = sequenceOf(laid.sequences, at);
  if (place === null) return [];
  const rows = cutRows(place.sequence, place.place, units).map((row) => [
    String(row.number),
    row.cut,
    row.setTo,
    row.gives,
    row.repeats > 1 ? `× ${row.repeats}` : '',
  ]);
  return [{ kind: 'table', title: 'sequence of cuts', columns: COLUMNS, rows }];
};

const togetherText = (laid: BoardLayout, at: number): string => {
  const equal = sequenceOf(laid.sequences, at)?.sequence.sheets ?? [];
  return equal.length > 1 ? `same cuts: sheets ${equal.map((each) => each + 1).join(', ')}` : 'this sheet alone';
};

/**
 * One sheet of a board on paper: parts with marks and grain, strips with their letters, the reference corner, the trim
 * line, kept offcuts hatched, and the sequence of cuts as a table, on as many pages as the table needs. `at` counts
 * from 0; an empty list for a sheet that there is not.
 */
export const sheetLayoutDrawing = (laid: BoardLayout, at: number, words: LayoutWords): readonly Drawing[] => {
  const sheet = laid.layout.sheets[at];
  if (sheet === undefined) return [];
  const { units } = words;
  const paper = sheetFor(units);
  const room: Area = {
    from: [paper.room.from[0] + PAD, paper.room.from[1] + PAD],
    to: [paper.room.to[0] - PAD, paper.room.to[1] - PAD],
  };
  const split = room.to[0] - TABLE_WIDTH;
  const figure: Area = {
    from: [room.from[0] + LETTER_ROOM, room.from[1] + LETTER_ROOM],
    to: [split - GAP, room.to[1] - NOTE_ROOM],
  };
  const free = areaSize(figure);
  const reduction = reductionFor([sheet.length, sheet.width], free, units);
  const low: Vec2 = [figure.from[0], figure.to[1] - sheet.width / reduction];
  const first = fillColumns(tableOf(laid, at, units), [{ from: [split, room.from[1]], to: room.to }]);
  const shapes = figureShapes(laid, at, sheet, units, onSheet(1 / reduction, low), free[0]);
  const pages = [[...shapes, ...first.shapes], ...furtherPages(first.left, room)];
  const count = laid.layout.sheets.length;
  const rows = titleRows(laid, sheet, words, reduction, togetherText(laid, at));
  return pages.map((page, i): Drawing => {
    const block = {
      mark: `${at + 1} / ${count}`,
      sheet: `page ${i + 1} of ${pages.length}`,
      rows,
      caution: PAPER_CAUTION,
    };
    return {
      title: `${laid.board.materialName}, sheet ${at + 1} of ${count}${sheet.offcut ? `, ${stockName(sheet)}` : ''}: layout and cuts`,
      size: paper.size,
      scale: 1 / reduction,
      shapes: [...sheetShapes(paper, block), ...page],
    };
  });
};
