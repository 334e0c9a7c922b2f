import { z } from 'zod';
import { catalogIdSchema, type DeepReadonly, sizeMmSchema } from '../parts.ts';
import type { FreshFitting } from './fresh.ts';

/** A bracket that holds one breathing-apparatus pack; the pack itself is a gear item placed in the opening. */
export const apparatusBracketSchema = z.strictObject({
  kind: z.literal('apparatus-bracket'),
  bracket: catalogIdSchema,
  mounting: z.enum(['floor', 'back']).default('back'),
  /** A strap over the pack, and what locks it in the bracket until it is released; null for none. */
  strap: catalogIdSchema.nullable().default(null),
  lock: catalogIdSchema.nullable().default(null),
  /** The room also takes the pack with the next larger cylinder on it. */
  nextSizeUp: z.boolean().default(false),
  /** How far the pack must come straight out before it is free of the bracket; null takes the house rule. */
  releaseStrokeMm: sizeMmSchema.nullable().default(null),
});
export type ApparatusBracket = DeepReadonly<z.infer<typeof apparatusBracketSchema>>;

export const freshApparatusBracket: FreshFitting<ApparatusBracket> = () => ({
  kind: 'apparatus-bracket',
  bracket: 'cradle-pack-plate',
  mounting: 'back',
  strap: 'strap-quick-50',
  lock: 'lock-pack-lever',
  nextSizeUp: true,
  releaseStrokeMm: null,
});
