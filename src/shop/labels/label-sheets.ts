import type { LengthUnits, Vec2 } from '../../base/index.ts';
import { pageSize } from '../paper/paper-pages.ts';

/** A sheet of equal labels, in columns and rows about the middle of the page, rows without a gap. Lengths mm. */
export interface LabelSheet {
  readonly about: string;
  readonly page: Vec2;
  readonly columns: number;
  readonly rows: number;
  readonly size: Vec2;
  /** Between two columns. */
  readonly gap: number;
}

const sheet = (
  units: LengthUnits,
  columns: number,
  rows: number,
  size: Vec2,
  gap: number,
  about: string,
): LabelSheet => ({
  about: `${units === 'in' ? 'Letter' : 'A4'}, ${columns} × ${rows} labels of ${about}`,
  page: pageSize(units, 'upright'),
  columns,
  rows,
  size,
  gap,
});

/** Sizes that are sold everywhere, by paper and number of labels. */
export const LABEL_SHEETS = {
  'a4-8': sheet('mm', 2, 4, [99.1, 67.7], 2.5, '99.1 × 67.7 mm'),
  'a4-14': sheet('mm', 2, 7, [99.1, 38.1], 2.5, '99.1 × 38.1 mm'),
  'a4-21': sheet('mm', 3, 7, [63.5, 38.1], 2.5, '63.5 × 38.1 mm'),
  'letter-10': sheet('in', 2, 5, [101.6, 50.8], 4.7625, '4 × 2 in'),
  'letter-14': sheet('in', 2, 7, [101.6, 33.8667], 4.7625, '4 × 1 1/3 in'),
  'letter-30': sheet('in', 3, 10, [66.675, 25.4], 3.175, '2 5/8 × 1 in'),
} as const satisfies Readonly<Record<string, LabelSheet>>;

export type LabelSheetId = keyof typeof LABEL_SHEETS;
export const LABEL_SHEET_IDS = Object.keys(LABEL_SHEETS) as readonly LabelSheetId[];
export const isLabelSheetId = (id: string): id is LabelSheetId => id in LABEL_SHEETS;

/** What is taken where nobody chose. */
export const usualLabelSheet = (units: LengthUnits): LabelSheetId => (units === 'in' ? 'letter-10' : 'a4-14');

/** Lower left corner of a label, counted from 0 in rows from the upper left. */
export const labelCorner = ({ page, columns, rows, size, gap }: LabelSheet, place: number): Vec2 => {
  const [column, row] = [place % columns, Math.floor(place / columns)];
  const left = (page[0] - columns * size[0] - (columns - 1) * gap) / 2;
  const top = (page[1] + rows * size[1]) / 2;
  return [left + column * (size[0] + gap), top - (row + 1) * size[1]];
};
