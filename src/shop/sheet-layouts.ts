import type { LengthUnits } from '../base/index.ts';
import { sizeText } from './drawing/paper-words.ts';
import {
  createImprover,
  cutSequences,
  type Layout,
  type Proof,
  type SheetSequence,
  sayNote,
  sayUnplaced,
} from './layout/index.ts';
import type { Board } from './sheet-jobs.ts';

/** One board with its sheets laid out. */
export interface BoardLayout {
  readonly board: Board;
  readonly layout: Layout;
  /** One for each group of equal sheets; `sheets` in it counts from 0 within this board. */
  readonly sequences: readonly SheetSequence[];
  /** How good it is, in a few words for the side of a figure. */
  readonly proof: string;
  readonly keptOffcuts: number;
  /** Sheets of the layout that are no offcuts, and offcuts in hand that are used. */
  readonly sheets: number;
  readonly offcuts: number;
}

/** All boards of a design. */
export interface SheetLayouts {
  readonly boards: readonly BoardLayout[];
  /** Bought, or taken as whole sheets. */
  readonly sheets: number;
  /** Offcuts in hand that are used. */
  readonly offcuts: number;
  /** Of sheets and offcuts alone, in the shop's currency. */
  readonly price: number;
  readonly unplaced: number;
}

export interface LayoutBudget {
  readonly seed: number;
  /** Turns of the search for each board; the same seed and steps give the same layout on every machine. */
  readonly steps: number;
}

/**
 * What the packet and the first look on screen use: one seed and one number of steps, so that paper and screen agree.
 * The large demo needs a fraction of a second for it.
 */
export const STANDARD_BUDGET: LayoutBudget = { seed: 1, steps: 300 };

/** The proof in a few words. */
export const proofText = ({ verdict, sheetsAbove }: Proof): string => {
  if (verdict === 'optimal') return 'proved least';
  if (verdict === 'optimal-2-stage') return 'proved least for 2-stage';
  if (sheetsAbove === 0) return 'no layout has fewer sheets';
  return `within ${sheetsAbove} sheet${sheetsAbove === 1 ? '' : 's'} of any layout`;
};

/** A layout of a board with all that follows from it. */
export const boardLayout = (board: Board, layout: Layout): BoardLayout => ({
  board,
  layout,
  sequences: cutSequences(board.job, layout),
  proof: proofText(layout.proof),
  keptOffcuts: layout.sheets.reduce((sum, { offcuts }) => sum + offcuts.length, 0),
  sheets: layout.sheets.filter(({ offcut }) => !offcut).length,
  offcuts: layout.sheets.filter(({ offcut }) => offcut).length,
});

/** Boards put together, with their sums. */
export const sheetLayoutsOf = (boards: readonly BoardLayout[]): SheetLayouts => ({
  boards,
  sheets: boards.reduce((sum, { sheets }) => sum + sheets, 0),
  offcuts: boards.reduce((sum, { offcuts }) => sum + offcuts, 0),
  price: boards.reduce((sum, { layout }) => sum + layout.price, 0),
  unplaced: boards.reduce((sum, { layout }) => sum + layout.unplaced.reduce((n, { count }) => n + count, 0), 0),
});

/** Lays out every board within a budget of steps; the same jobs, seed and steps give the same layouts. */
export const layoutSheets = (jobs: readonly Board[], { seed, steps }: LayoutBudget): SheetLayouts =>
  sheetLayoutsOf(
    jobs.map((board) => {
      const improver = createImprover(board.job, seed);
      improver.step(steps);
      return boardLayout(board, improver.best());
    }),
  );

/** What must be said beside the drawings of a board: parts that are missing and why, settings and sheets not used. */
export const boardRemarks = ({ layout }: BoardLayout, units: LengthUnits): readonly string[] => [
  ...layout.unplaced.map((one) => sayUnplaced(one, (mm) => `${sizeText(mm, units)} ${units}`)),
  ...layout.notes.map(sayNote),
];
