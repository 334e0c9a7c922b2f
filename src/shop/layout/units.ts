import { ROUNDING_MM } from '../../base/index.ts';

/** Lengths of the engine are whole thousandths of a millimetre: a sixty-fourth of an inch loses nothing that matters. */
export const UNITS_PER_MM = 1000;

/** For parts and kerf: rounding never makes a part fit that does not. */
export const unitsUp = (mm: number): number => Math.ceil((mm - ROUNDING_MM) * UNITS_PER_MM);

/** For sheets and limits. */
export const unitsDown = (mm: number): number => Math.floor((mm + ROUNDING_MM) * UNITS_PER_MM);
