/**
 * Rounding noise only. Allowances a shop would recognise (gaps, reveals, kerf, hand room) are data and live in the
 * design, the catalog or the house rules.
 */

/** Two lengths closer than this are the same length: double rounding over coordinates of a few metres stays below it. */
export const ROUNDING_MM = 1e-6;

/** Two areas closer than this are the same area (mm²): ROUNDING_MM along an edge of about one metre. */
export const ROUNDING_MM2 = 1e-3;

/** Two volumes closer than this are the same volume (mm³): ROUNDING_MM over a face of about one square metre. */
export const ROUNDING_MM3 = 1;

/** Two masses closer than this are the same mass (kg). */
export const ROUNDING_KG = 1e-9;

/** Two angles closer than this are the same angle (rad): ROUNDING_MM at one metre of radius. */
export const ROUNDING_RAD = 1e-9;

/** A share of a whole below this is rounding: sums of a few hundred products of order one stay below it. */
export const ROUNDING_SHARE = 1e-9;

/** An iteration has settled when its step is below this share of the finest spread that anyone will print. */
export const SETTLED_SHARE = 1e-7;

/** True when the lengths differ by rounding only; a difference of exactly ROUNDING_MM counts as the same. */
export const sameLength = (a: number, b: number): boolean => Math.abs(a - b) <= ROUNDING_MM;
