import type { LengthUnits } from '../base/index.ts';

/** A usual slip of the tape as the end of a sentence: It may be … */
const SLIP_WORDS: Readonly<Record<string, string>> = {
  'feet-inches-swapped': 'feet and inches that changed places',
  'feet-for-inches': 'inches written as feet',
  'inches-for-feet': 'feet written as inches',
  'inches-for-mm': 'inches written as millimetres',
  'mm-for-inches': 'millimetres written as inches',
  'cm-for-mm': 'centimetres written as millimetres',
  'mm-for-cm': 'millimetres written as centimetres',
  'hook-at-100': 'a tape held at 100 and not taken off',
  'hook-at-one-inch': 'a tape held at one inch and not taken off',
  'ten-off': 'a slip of ten millimetres',
  'hundred-off': 'a slip of a hundred millimetres',
  'foot-off': 'a slip of one foot',
  'inch-off': 'a slip of one inch',
  'digits-swapped': 'two digits that changed places',
  sign: 'written to the wrong side',
};

/** The words of a slip by its code, whatever is read in; null for a code of something else. */
export const slipWords = (code: string): string | null => SLIP_WORDS[code] ?? null;

/** Slips of metric figures: nobody makes them who reads inches. */
const METRIC: ReadonlySet<string> = new Set([
  'hook-at-100',
  'ten-off',
  'hundred-off',
  'digits-swapped',
  'cm-for-mm',
  'mm-for-cm',
]);

/** The words of a slip by its code; empty for none, and for one that cannot happen in the reader's units. */
export const saySlip = (slip: string, units: LengthUnits): string =>
  units === 'in' && METRIC.has(slip) ? '' : (SLIP_WORDS[slip] ?? '');
