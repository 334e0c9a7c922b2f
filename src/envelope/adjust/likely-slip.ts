import { MM_PER_INCH } from '../../base/index.ts';

/** A usual way in which a length goes wrong on its way from the tape to the table. */
export const SLIPS = [
  'feet-inches-swapped',
  'feet-for-inches',
  'inches-for-feet',
  'inches-for-mm',
  'mm-for-inches',
  'cm-for-mm',
  'mm-for-cm',
  'hook-at-100',
  'hook-at-one-inch',
  'ten-off',
  'hundred-off',
  'foot-off',
  'inch-off',
  'digits-swapped',
  'sign',
] as const;
export type Slip = (typeof SLIPS)[number];

const INCHES_A_FOOT = 12;

/** 5 ft 4 in for 4 ft 5 in; null where a part would not fit the other place. Whole feet keep their fraction of an inch. */
const feetInchesSwapped = (mm: number): number | null => {
  const inches = Math.abs(mm) / MM_PER_INCH;
  const feet = Math.floor(inches / INCHES_A_FOOT);
  const rest = inches - feet * INCHES_A_FOOT;
  const whole = Math.floor(rest);
  if (feet >= INCHES_A_FOOT || feet === whole) return null;
  return Math.sign(mm) * (whole * INCHES_A_FOOT + feet + (rest - whole)) * MM_PER_INCH;
};

/** What a whole number of millimetres is with two neighbouring digits the other way round. */
const digitSwaps = (mm: number): readonly number[] => {
  const digits = Math.abs(Math.round(mm)).toString();
  const fraction = Math.abs(mm) - Math.floor(Math.abs(mm));
  return Array.from({ length: Math.max(0, digits.length - 1) }, (_, i) => {
    const [a, b] = [digits[i] ?? '', digits[i + 1] ?? ''];
    return Math.sign(mm) * (Number(digits.slice(0, i) + b + a + digits.slice(i + 2)) + fraction);
  }).filter((value) => value !== mm);
};

const MENDED: { readonly [Name in Slip]: (mm: number) => readonly (number | null)[] } = {
  'feet-inches-swapped': (mm) => [feetInchesSwapped(mm)],
  'feet-for-inches': (mm) => [mm / INCHES_A_FOOT],
  'inches-for-feet': (mm) => [mm * INCHES_A_FOOT],
  'inches-for-mm': (mm) => [mm * MM_PER_INCH],
  'mm-for-inches': (mm) => [mm / MM_PER_INCH],
  'cm-for-mm': (mm) => [mm * 10],
  'mm-for-cm': (mm) => [mm / 10],
  'hook-at-100': (mm) => [mm - 100],
  'hook-at-one-inch': (mm) => [mm - MM_PER_INCH],
  'ten-off': (mm) => [mm - 10, mm + 10],
  'hundred-off': (mm) => [mm - 100, mm + 100],
  'foot-off': (mm) => [mm - INCHES_A_FOOT * MM_PER_INCH, mm + INCHES_A_FOOT * MM_PER_INCH],
  'inch-off': (mm) => [mm - MM_PER_INCH, mm + MM_PER_INCH],
  'digits-swapped': digitSwaps,
  sign: (mm) => [-mm],
};

/** A mended reading must come within this many of its own sigmas of what the others make it. */
const CLOSE_SIGMAS = 3;

/**
 * The slip that would explain a length which the others contradict, or null: the one that comes closest to what they
 * make it; among equals the earlier of the list, since those of units leave less to chance than those of a digit.
 */
export const likelySlip = (readMm: number, othersMm: number, sigmaMm: number): Slip | null => {
  let best: Slip | null = null;
  let least = CLOSE_SIGMAS * sigmaMm;
  for (const slip of SLIPS)
    for (const mended of MENDED[slip](readMm)) {
      const off = mended === null ? Infinity : Math.abs(mended - othersMm);
      if (best === null ? off <= least : off < least) [best, least] = [slip, off];
    }
  return best;
};
