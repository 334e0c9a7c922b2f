import type { LaidSheet } from './layout/index.ts';
import type { SheetLayouts } from './sheet-layouts.ts';

/** What is taken to the saw, by the name that is written on it: `2440 × 1220`, `offcut Rack 3`. */
export const stockName = ({ stock, offcut }: Pick<LaidSheet, 'stock' | 'offcut'>): string =>
  offcut && !/^offcut\b/i.test(stock) ? `offcut ${stock}` : stock;

const counted = (count: number, one: string): string => `${count} ${one}${count === 1 ? '' : 's'}`;

/** `2 offcuts in hand` */
export const offcutsText = (count: number): string => `${counted(count, 'offcut')} in hand`;

/** `5 sheets and 2 offcuts in hand` */
export const sheetsText = ({ sheets, offcuts }: Pick<SheetLayouts, 'sheets' | 'offcuts'>): string =>
  [
    ...(sheets > 0 || offcuts === 0 ? [counted(sheets, 'sheet')] : []),
    ...(offcuts > 0 ? [offcutsText(offcuts)] : []),
  ].join(' and ');
