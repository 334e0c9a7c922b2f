import { z } from 'zod';
import { catalogIdSchema, type DeepReadonly, notNegativeMmSchema, sizeMmSchema } from '../parts.ts';
import type { FreshFitting } from './fresh.ts';

/** An open bay, with shelves where wanted and something to keep the gear in. */
export const openStorageSchema = z.strictObject({
  kind: z.literal('open-storage'),
  /** Heights of the shelves' upper faces above the floor of the opening, from the bottom up. */
  shelvesUpMm: z.array(sizeMmSchema).max(12).default([]),
  shelfMaterial: catalogIdSchema,
  /** Shelves are housed in the sides, or lie on pins in rows of holes and stand at the hole next to their height. */
  shelves: z.enum(['fixed', 'adjustable']).default('fixed'),
  /** A net or strap across the face, or null. */
  restraint: catalogIdSchema.nullable().default(null),
  /** A lip along the front of the floor and of each shelf; zero for none. */
  lipHeightMm: notNegativeMmSchema.default(0),
  /** A mat on the floor of the opening, or null. */
  mat: catalogIdSchema.nullable().default(null),
  /** A drain in the middle of the floor, or null. */
  drain: catalogIdSchema.nullable().default(null),
});
export type OpenStorage = DeepReadonly<z.infer<typeof openStorageSchema>>;

export const freshOpenStorage: FreshFitting<OpenStorage> = () => ({
  kind: 'open-storage',
  shelvesUpMm: [],
  shelfMaterial: 'birch-ply-12',
  shelves: 'fixed',
  restraint: 'net-small',
  lipHeightMm: 0,
  mat: null,
  drain: null,
});
