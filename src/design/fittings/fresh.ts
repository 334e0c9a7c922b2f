import type { NodeId } from '../parts.ts';

/** Makes a fitting with sensible defaults for an opening just chosen; ids for openings inside come from `newId`. */
export type FreshFitting<F> = (newId: (prefix: string) => NodeId) => F;
