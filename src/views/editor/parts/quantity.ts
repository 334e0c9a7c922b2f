import { formatLength, KG_PER_POUND, type LengthUnits } from '../../../base/index.ts';

/** A value as it is read: the figure, and its unit or '' where the figure has none. */
export interface Quantity {
  readonly figure: string;
  readonly unit: string;
}

const trimmed = (value: number, decimals: number): string => String(Number(value.toFixed(decimals))).replace('-', '−');

/** Three meaning figures are enough beside a tape; large values lose their decimals. */
const sensible = (value: number): string => trimmed(value, Math.abs(value) >= 100 ? 0 : Math.abs(value) >= 10 ? 1 : 2);

/** Units that are kept as they are, by the word that is shown. */
const SHOWN_UNITS: Readonly<Record<string, string>> = {
  deg: '°',
  degC: '°C',
  factor: '',
  count: '',
  index: '',
  'N.m': 'N·m',
};

/** A value of the inspection in the reader's units: lengths and masses follow the choice, a share is in per cent. */
export const quantityOf = (value: number, unit: string, units: LengthUnits): Quantity => {
  if (unit === 'mm') return { figure: formatLength(value, units), unit: units };
  if (unit === 'kg' && units === 'in') return { figure: sensible(value / KG_PER_POUND), unit: 'lb' };
  if (unit === 'share') return { figure: trimmed(value * 100, 1), unit: '%' };
  return { figure: sensible(value), unit: SHOWN_UNITS[unit] ?? unit };
};

export const quantityText = (value: number, unit: string, units: LengthUnits): string => {
  const { figure, unit: word } = quantityOf(value, unit, units);
  return word === '' ? figure : word === '°' ? `${figure}°` : `${figure} ${word}`;
};
