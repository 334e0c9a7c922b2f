import { ROUNDING_MM } from '../base/index.ts';
import type { Severity } from './finding.ts';

/**
 * What a gap to the vehicle is worth, given its limit and the half width at 95 % with which it is known:
 * overlapping, or too small even if the uncertainty falls in our favour: stop; too close to its limit to tell: caution;
 * larger than its limit by at least the uncertainty: nothing.
 */
export const gapSeverity = (value: number, limit: number, uncertainty: number): Severity | null => {
  if (value < -ROUNDING_MM || value - limit < -uncertainty - ROUNDING_MM) return 'stop';
  return value - limit < uncertainty - ROUNDING_MM ? 'caution' : null;
};
