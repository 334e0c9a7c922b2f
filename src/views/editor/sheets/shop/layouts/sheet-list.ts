import type { BoardLayout, LaidSheet, SheetLayouts } from '../../../../../shop/index.ts';

/** One sheet among those of all boards. */
export interface ListedSheet {
  readonly laid: BoardLayout;
  readonly sheet: LaidSheet;
  /** From 0 within its board. */
  readonly at: number;
}

/** All sheets in the order of boards. */
export const sheetList = ({ boards }: SheetLayouts): readonly ListedSheet[] =>
  boards.flatMap((laid) => laid.layout.sheets.map((sheet, at) => ({ laid, sheet, at })));
