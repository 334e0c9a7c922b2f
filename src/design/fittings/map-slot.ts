import { z } from 'zod';
import { catalogIdSchema, type DeepReadonly, notNegativeMmSchema } from '../parts.ts';
import type { FreshFitting } from './fresh.ts';

/** Equal slots side by side or one above the other, for maps, plans and binders. */
export const mapSlotSchema = z.strictObject({
  kind: z.literal('map-slot'),
  slots: z.number().int().min(1).max(12).default(3),
  /** Things stand upright side by side, or lie flat one above the other. */
  lie: z.enum(['upright', 'flat']).default('upright'),
  material: catalogIdSchema,
  /** A lip along the front of the floor of each slot; zero for none. */
  lipHeightMm: notNegativeMmSchema.default(0),
});
export type MapSlot = DeepReadonly<z.infer<typeof mapSlotSchema>>;

export const freshMapSlot: FreshFitting<MapSlot> = () => ({
  kind: 'map-slot',
  slots: 3,
  lie: 'upright',
  material: 'birch-ply-6',
  lipHeightMm: 40,
});
