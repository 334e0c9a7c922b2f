import { KG_PER_POUND, type LengthUnits } from '../../../../base/index.ts';

const KG_PER_UNIT: Readonly<Record<string, number>> = {
  kg: 1,
  kilograms: 1,
  g: 0.001,
  lb: KG_PER_POUND,
  lbs: KG_PER_POUND,
  pounds: KG_PER_POUND,
  oz: KG_PER_POUND / 16,
};

const MASS = /^(\d+(?:[.,]\d+)?|[.,]\d+)\s*([a-z]*)$/;

/** A mass as it is written in a list: `13.5`, `13,5 kg`, `30 lb`. A bare number is pounds for inches, else kilograms. */
export const readMassKg = (text: string, units: LengthUnits): number | null => {
  const match = MASS.exec(text.trim().toLowerCase());
  if (!match) return null;
  const perUnit = KG_PER_UNIT[match[2] === '' || match[2] === undefined ? (units === 'in' ? 'lb' : 'kg') : match[2]];
  return perUnit === undefined ? null : Number((match[1] ?? '').replace(',', '.')) * perUnit;
};
