import type { LengthUnits } from '../base/index.ts';
import { type CutRow, cutRows } from './cut-rows.ts';
import type { Drawing } from './drawing/drawing.ts';
import { type LayoutWords, sheetLayoutDrawing } from './drawing/sheet-layout-drawing.ts';
import type { SequenceLine } from './layout/index.ts';
import { type ListColumn, type ListTable, lengthColumn, listTable, tableCsv } from './list-columns.ts';
import type { BoardLayout, SheetLayouts } from './sheet-layouts.ts';
import { stockName } from './stock-words.ts';

interface CsvRow {
  readonly laid: BoardLayout;
  /** From 0 within the board. */
  readonly sheet: number;
  readonly stock: string;
  readonly line: SequenceLine;
  readonly words: CutRow;
}

const columns = (units: LengthUnits): readonly ListColumn<CsvRow>[] => [
  { title: 'material', cell: ({ laid }) => laid.board.materialName },
  { title: 'sheet', cell: ({ sheet }) => sheet + 1 },
  { title: 'stock', cell: ({ stock }) => stock },
  { title: 'no.', cell: ({ line }) => line.number },
  { title: 'round', cell: ({ line }) => line.stage },
  { title: 'cut', cell: ({ line }) => line.by },
  { title: 'piece', cell: ({ line }) => line.from },
  { title: 'set', cell: ({ line }) => (line.by === 'rip' ? 'fence' : 'stop') },
  ...lengthColumn<CsvRow>('set to', ({ line }) => line.setting, units),
  ...lengthColumn<CsvRow>('cut length', ({ line }) => line.cutLength, units),
  { title: 'times', cell: ({ line }) => line.repeats },
  { title: 'gives', cell: ({ words }) => words.gives },
];

/** One row for each sheet of a stack: equal sheets are cut the same way and may hold other marks. */
const rowsOf = (laid: BoardLayout, units: LengthUnits): readonly CsvRow[] =>
  laid.sequences.flatMap((sequence) =>
    sequence.sheets.flatMap((sheet, place) => {
      const laidOn = laid.layout.sheets[sheet];
      return cutRows(sequence, place, units).flatMap((words, i): readonly CsvRow[] => {
        const line = sequence.lines[i];
        return line === undefined || laidOn === undefined
          ? []
          : [{ laid, sheet, stock: stockName(laidOn), line, words }];
      });
    }),
  );

/** The sequence of cuts of every sheet of every board. Settings are net of the kerf. */
export const cutSequenceTable = ({ boards }: SheetLayouts, units: LengthUnits): ListTable =>
  listTable(
    columns(units),
    boards.flatMap((laid) => rowsOf(laid, units)),
  );

/** The same as a file for a spreadsheet. */
export const cutSequenceCsv = (layouts: SheetLayouts, units: LengthUnits): string =>
  tableCsv(cutSequenceTable(layouts, units));

/** The drawing of every sheet with the name it has in a packet: `birch-ply-18-1`. */
export const layoutDrawings = (
  { boards }: SheetLayouts,
  words: LayoutWords,
): readonly { readonly name: string; readonly drawings: readonly Drawing[] }[] =>
  boards.flatMap((laid) =>
    laid.layout.sheets.map((_, at) => ({
      name: `${laid.board.key}-${at + 1}`,
      drawings: sheetLayoutDrawing(laid, at, words),
    })),
  );
