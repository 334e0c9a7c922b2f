import { groupBy } from '../../base/index.ts';
import type { LaidSheet } from './layout.ts';
import { sheetPattern } from './sheet-pattern.ts';

/** Groups of equal sheets, by the numbers of the sheets; each sheet is in one group. */
export const repeatsOf = (sheets: readonly LaidSheet[]): readonly (readonly number[])[] =>
  [
    ...groupBy(
      sheets.map((sheet, at) => ({ at, pattern: sheetPattern(sheet) })),
      ({ pattern }) => pattern,
    ).values(),
  ].map((group) => group.map(({ at }) => at));
