import { bad, good, type Result } from './problems.ts';

/** What a person reads and writes lengths in. Files and the code inside hold millimetres whatever this says. */
export type LengthUnits = 'in' | 'mm';

export const MM_PER_INCH = 25.4;
export const KG_PER_POUND = 0.45359237;
export const STANDARD_GRAVITY = 9.80665;

const UNIT_MM: Readonly<Record<string, number>> = {
  mm: 1,
  cm: 10,
  m: 1000,
  in: MM_PER_INCH,
  inch: MM_PER_INCH,
  inches: MM_PER_INCH,
  '"': MM_PER_INCH,
  ft: 12 * MM_PER_INCH,
  foot: 12 * MM_PER_INCH,
  feet: 12 * MM_PER_INCH,
  "'": 12 * MM_PER_INCH,
};

const FRACTION_SIGNS: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅓': '1/3',
  '⅔': '2/3',
};

/** Curly quotes, primes, dashes and fraction signs as people's keyboards make them, brought to plain characters. */
const plain = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[½¼¾⅛⅜⅝⅞⅓⅔]/g, (sign) => ` ${FRACTION_SIGNS[sign] ?? ''}`)
    .replace(/[“”″]|''/g, '"')
    .replace(/[‘’′]/g, "'")
    .replace(/[−–]/g, '-')
    .replace(/⁄/g, '/')
    .replace(/(\d),(\d)/g, '$1.$2')
    .trim();

const NUMBER = String.raw`(?:\d+(?:\.\d+)?|\.\d+)`;
const TERM = new RegExp(
  String.raw`^(?:(\d+)(?:\s+|-)(\d+)\/(\d+)|(\d+)\/(\d+)|(${NUMBER}))\s*(mm|cm|m|inches|inch|in|feet|foot|ft|"|')?\s*`,
);

interface Term {
  readonly amount: number;
  readonly unit: string | null;
  readonly taken: number;
}

const readTerm = (text: string): Term | null => {
  const match = TERM.exec(text);
  if (!match) return null;
  const [all, whole, over, under, overOnly, underOnly, decimal, unitWord] = match;
  const bottom = Number(under ?? underOnly ?? 1);
  if (bottom === 0) return null;
  const amount = decimal !== undefined ? Number(decimal) : Number(whole ?? 0) + Number(over ?? overOnly) / bottom;
  return { amount, unit: unitWord ?? null, taken: all.length };
};

/**
 * Reads a length as a person of the trade types it: `14 3/8`, `14-3/8"`, `1' 6 1/2"`, `365 mm`, `36.5 cm`,
 * `14 3/8 + 1/4`. A number without a unit takes `units`, or, after feet, inches. Gives millimetres; a sum may be
 * negative and the caller decides whether that makes sense.
 */
export const parseLength = (text: string, units: LengthUnits): Result<number, { readonly got: string }> => {
  const refused = bad({ got: text });
  let rest = plain(text);
  if (rest === '') return refused;
  let total = 0;
  let sign = 1;
  let afterFeet = false;
  let first = true;
  while (rest !== '') {
    const joint = /^([+-])\s*/.exec(rest);
    if (joint) {
      sign = joint[1] === '-' ? -1 : 1;
      rest = rest.slice(joint[0].length);
    } else if (!first && !afterFeet) return refused;
    const term = readTerm(rest);
    if (!term) return refused;
    const unit: string = term.unit ?? (afterFeet && !joint ? 'in' : units);
    total += sign * term.amount * (UNIT_MM[unit] ?? Number.NaN);
    afterFeet = unit === 'ft' || unit === "'" || unit === 'foot' || unit === 'feet';
    rest = rest.slice(term.taken);
    first = false;
  }
  return Number.isFinite(total) ? good(total) : refused;
};

const greatestCommonDivisor = (a: number, b: number): number => (b === 0 ? a : greatestCommonDivisor(b, a % b));

/** A length in inches and sixteenths (or another power of two): 365.125 mm → `14 3/8`. No unit is printed. */
export const formatInches = (mm: number, denominator = 16): string => {
  const parts = Math.round((Math.abs(mm) / MM_PER_INCH) * denominator);
  const sign = mm < 0 && parts > 0 ? '−' : '';
  const whole = Math.floor(parts / denominator);
  const rest = parts % denominator;
  if (rest === 0) return `${sign}${whole}`;
  const divisor = greatestCommonDivisor(rest, denominator);
  const fraction = `${rest / divisor}/${denominator / divisor}`;
  return whole === 0 ? `${sign}${fraction}` : `${sign}${whole} ${fraction}`;
};

/** A length in millimetres with at most `decimals` places and no trailing zeros: 365.10 → `365.1`. */
export const formatMillimetres = (mm: number, decimals = 1): string => {
  const text = Math.abs(mm)
    .toFixed(decimals)
    .replace(/\.?0+$/, decimals > 0 ? '' : '$&');
  return mm < 0 && Number(text) !== 0 ? `−${text}` : text;
};

/** A bare figure in the reader's units, for a drawing whose unit is stated once. */
export const formatLength = (mm: number, units: LengthUnits): string =>
  units === 'in' ? formatInches(mm) : formatMillimetres(mm);

/** A figure with its unit, for a sentence. */
export const formatLengthUnit = (mm: number, units: LengthUnits): string =>
  units === 'in' ? `${formatInches(mm)} in` : `${formatMillimetres(mm)} mm`;

/** A mass in the reader's units, with its unit. */
export const formatMass = (kg: number, units: LengthUnits): string => {
  const value = units === 'in' ? kg / KG_PER_POUND : kg;
  const text = Math.abs(value).toFixed(Math.abs(value) < 100 ? 1 : 0);
  return `${value < 0 && Number(text) !== 0 ? '−' : ''}${text} ${units === 'in' ? 'lb' : 'kg'}`;
};
