import { bad, good, type Result } from './problems.ts';

/** What a person reads and writes lengths in. Files and the code inside hold millimetres whatever this says. */
export type LengthUnits = 'in' | 'mm';

export const MM_PER_INCH = 25.4;
export const KG_PER_POUND = 0.45359237;

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
    .replace(/(\d)-(?=[½¼¾⅛⅜⅝⅞⅓⅔])/g, '$1')
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

/** `1,200`: a thousand to some, a comma before decimals to others. `0,125` can only be the latter. */
const UNCLEAR_COMMA = /(?<![\d.,])[1-9]\d{0,2},\d{3}(?!\d)/;

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
  if (bottom === 0 || (whole !== undefined && Number(over) >= bottom)) return null;
  const amount = decimal !== undefined ? Number(decimal) : Number(whole ?? 0) + Number(over ?? overOnly) / bottom;
  return { amount, unit: unitWord ?? null, taken: all.length };
};

const FEET = new Set(['ft', 'foot', 'feet', "'"]);
const INCHES = new Set(['in', 'inch', 'inches', '"']);

/** What stands between two terms: `same` when the second only adds inches to feet (`1' 6"`, `1'-6"`). */
interface Joint {
  readonly sign: 1 | -1 | 'same';
  readonly taken: number;
}

/** Null where nothing joins the terms, or where a dash after feet could mean either: `1' - 6"`. */
const readJoint = (rest: string, afterFeet: boolean, spaced: boolean): Joint | null => {
  const match = /^([+-])(\s*)/.exec(rest);
  if (!match) return afterFeet ? { sign: 'same', taken: 0 } : null;
  const [all, mark, space] = match;
  if (mark === '+' || !afterFeet) return { sign: mark === '-' ? -1 : 1, taken: all.length };
  return spaced || space !== '' ? null : { sign: 'same', taken: 1 };
};

/**
 * Reads a length as a person of the trade types it: `14 3/8`, `14-3/8"`, `1' 6 1/2"`, `1'-6"`, `365 mm`, `36,5 cm`,
 * `14 3/8 + 1/4`, `600 - 18`. A number without a unit takes `units`, or, after feet, inches. Gives millimetres; a sum
 * may be negative and the caller decides whether that makes sense. What could mean two things is refused: `1,200`,
 * `1' - 6"`, `14 9/8`.
 */
export const parseLength = (text: string, units: LengthUnits): Result<number, { readonly got: string }> => {
  const refused = bad({ got: text });
  if (UNCLEAR_COMMA.test(text)) return refused;
  const whole = plain(text);
  const lead = /^[+-]\s*/.exec(whole)?.[0] ?? '';
  let sign = lead.startsWith('-') ? -1 : 1;
  let rest = whole.slice(lead.length);
  let total = 0;
  let afterFeet = false;
  for (;;) {
    const term = readTerm(rest);
    if (!term) return refused;
    const unit: string = term.unit ?? (afterFeet ? 'in' : units);
    if (afterFeet && !INCHES.has(unit)) return refused;
    total += sign * term.amount * (UNIT_MM[unit] ?? Number.NaN);
    const spaced = /\s$/.test(rest.slice(0, term.taken));
    rest = rest.slice(term.taken);
    if (rest === '') return Number.isFinite(total) ? good(total) : refused;
    const joint = readJoint(rest, FEET.has(unit), spaced);
    if (!joint) return refused;
    afterFeet = joint.sign === 'same';
    if (joint.sign !== 'same') sign = joint.sign;
    rest = rest.slice(joint.taken);
  }
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
