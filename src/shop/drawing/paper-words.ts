import { formatInches, formatMillimetres, type LengthUnits } from '../../base/index.ts';
import { SHOP_FRACTION } from '../rounding.ts';

export const PAPER_CAUTION =
  'Measure the stock before cutting: thickness is as measured, not as named. The tape and the sheet in hand overrule this paper. No approval: local codes and licensed practice decide.';

export const scaleText = (reduction: number): string => `1:${reduction}`;
export const unitsText = (units: LengthUnits): string => (units === 'in' ? 'inches' : 'millimetres');

/** A size that is sawn or routed, without its unit. */
export const sizeText = (mm: number, units: LengthUnits): string =>
  units === 'in' ? formatInches(mm, SHOP_FRACTION) : formatMillimetres(mm);
