import { z } from 'zod';
import { catalogIdSchema, type DeepReadonly, notNegativeMmSchema, sizeMmSchema } from '../parts.ts';
import type { FreshFitting } from './fresh.ts';

/** A framed hole in a side or the back of an opening, so that long gear reaches into the room beyond. */
export const passThroughSchema = z.strictObject({
  kind: z.literal('pass-through'),
  /** The side of the opening that the hole goes through. */
  through: z.enum(['left', 'right', 'back']).default('right'),
  /** Clear hole between the edge trims: along the wall and up. */
  widthMm: sizeMmSchema.default(220),
  heightMm: sizeMmSchema.default(320),
  /** How far gear may reach past the far face of the wall; that room belongs to the gear. */
  beyondMm: notNegativeMmSchema.default(300),
  /** Sheet of the frame round the hole. */
  frameMaterial: catalogIdSchema,
  /** What covers the edges of the hole, by the metre. */
  edgeTrim: catalogIdSchema,
  /** What holds the gear on this side, or null. */
  restraint: catalogIdSchema.nullable().default(null),
});
export type PassThrough = DeepReadonly<z.infer<typeof passThroughSchema>>;

export const freshPassThrough: FreshFitting<PassThrough> = () => ({
  kind: 'pass-through',
  through: 'right',
  widthMm: 220,
  heightMm: 320,
  beyondMm: 300,
  frameMaterial: 'hdpe-6',
  edgeTrim: 'trim-edge-rubber',
  restraint: 'strap-quick-50',
});
