import { changedBy, difference } from './difference.ts';

/**
 * `after` with what did not change taken from `before`. A design that came back from the worker is a copy throughout;
 * this gives it back the identity by which later stages tell what did not change.
 */
export const shareUnchanged = <T>(before: unknown, after: T): T => changedBy(before, difference(before, after)) as T;
