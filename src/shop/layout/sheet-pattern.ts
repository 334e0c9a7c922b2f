import { compareText } from '../../base/index.ts';
import type { LaidSheet } from './layout.ts';

/** What makes two sheets equal for the saw: stock, and parts of equal size in equal places, whatever their marks. */
export const sheetPattern = ({ stock, material, parts }: LaidSheet): string =>
  [stock, material, ...parts.map(({ x, y, length, width }) => `${x} ${y} ${length} ${width}`).sort(compareText)].join(
    '\n',
  );
