import type { LengthUnits } from '../../../base/index.ts';
import { sayAmount } from '../../../says/index.ts';

/** A value of the inspection in the reader's units, with its unit. */
export const quantityText = (value: number, unit: string, units: LengthUnits): string => sayAmount(value, unit, units);
