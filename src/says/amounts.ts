import { formatInches, formatMass, formatMillimetres, type LengthUnits } from '../base/index.ts';

/** A length is said to the sixteenth of an inch or to a tenth of a millimetre. */
const SIXTEENTHS = 16;

/**
 * A length in a sentence: `3/8 in`, `9.5 mm`. What is there but rounds to nothing is said to be less than the smallest
 * step, so that a gap that is too small never reads as none.
 */
export const sayLength = (mm: number, units: LengthUnits): string => {
  const text = units === 'in' ? formatInches(Math.abs(mm), SIXTEENTHS) : formatMillimetres(Math.abs(mm));
  const word = units === 'in' ? 'in' : 'mm';
  if (Number(text) !== 0 || mm === 0) return `${mm < 0 ? '−' : ''}${text} ${word}`;
  return units === 'in' ? 'less than 1/16 in' : 'less than 0.1 mm';
};

const trimmed = (value: number, decimals: number): string => String(Number(value.toFixed(decimals))).replace('-', '−');

/** Three meaning figures are enough beside a tape. */
const plainFigure = (value: number): string =>
  trimmed(value, Math.abs(value) >= 100 ? 0 : Math.abs(value) >= 10 ? 1 : 2);

const DEGREE_UNITS: Readonly<Record<string, string>> = { deg: '°', degC: ' °C', K: ' °C' };
const WITHOUT_WORD: ReadonlySet<string> = new Set(['', 'count', 'factor', 'index']);

/** A value with its unit as the reader takes it: lengths and masses follow the choice, a share is said in per cent. */
export const sayAmount = (value: number, unit: string, units: LengthUnits): string => {
  if (unit === 'mm') return sayLength(value, units);
  if (unit === 'kg') return formatMass(value, units);
  if (unit === 'share') return `${trimmed(value * 100, 1)} %`;
  const degree = DEGREE_UNITS[unit];
  if (degree !== undefined) return `${plainFigure(value)}${degree}`;
  return WITHOUT_WORD.has(unit) ? plainFigure(value) : `${plainFigure(value)} ${unit}`;
};
