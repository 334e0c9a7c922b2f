import { z } from 'zod';
import { catalogIdSchema, type DeepReadonly } from '../parts.ts';
import type { FreshFitting } from './fresh.ts';

/** A vehicle bracket that holds one extinguisher upright; the extinguisher is a gear item placed in the opening. */
export const extinguisherCradleSchema = z.strictObject({
  kind: z.literal('extinguisher-cradle'),
  cradle: catalogIdSchema,
  /** What it is bolted to. */
  mounting: z.enum(['back', 'left', 'right']).default('back'),
});
export type ExtinguisherCradle = DeepReadonly<z.infer<typeof extinguisherCradleSchema>>;

export const freshExtinguisherCradle: FreshFitting<ExtinguisherCradle> = () => ({
  kind: 'extinguisher-cradle',
  cradle: 'cradle-extinguisher-10',
  mounting: 'back',
});
