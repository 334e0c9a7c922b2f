import { z } from 'zod';
import { catalogIdSchema, type DeepReadonly, notNegativeMmSchema, sizeMmSchema } from '../parts.ts';
import type { FreshFitting } from './fresh.ts';

/** An open bay, with shelves where wanted and something to keep the gear in. */
export const openStorageSchema = z.strictObject({
  kind: z.literal('open-storage'),
  /** Heights of the shelves' upper faces above the floor of the opening, from the bottom up. */
  shelvesUpMm: z.array(sizeMmSchema).max(12).default([]),
  shelfMaterial: catalogIdSchema,
  /** A net or strap across the face, or null. */
  restraint: catalogIdSchema.nullable().default(null),
  /** A lip along the front of the floor and of each shelf; zero for none. */
  lipHeightMm: notNegativeMmSchema.default(0),
});
export type OpenStorage = DeepReadonly<z.infer<typeof openStorageSchema>>;

export const freshOpenStorage: FreshFitting<OpenStorage> = () => ({
  kind: 'open-storage',
  shelvesUpMm: [],
  shelfMaterial: 'birch-ply-12',
  restraint: 'net-small',
  lipHeightMm: 0,
});
