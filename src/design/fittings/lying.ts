import { z } from 'zod';

/** How a long thing lies in its clamps: which way it runs, and what the clamps are bolted to. */
export const LYINGS = [
  'upright-back',
  'upright-left',
  'upright-right',
  'across-back',
  'across-floor',
  'deep-left',
  'deep-right',
  'deep-floor',
] as const;
export type Lying = (typeof LYINGS)[number];
export const lyingSchema = z.enum(LYINGS);
