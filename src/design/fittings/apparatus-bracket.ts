import { z } from 'zod';
import { catalogIdSchema, type DeepReadonly, sizeMmSchema } from '../parts.ts';
import type { FreshFitting } from './fresh.ts';

/** A bracket that holds one breathing-apparatus pack; the pack itself is a gear item placed in the opening. */
export const apparatusBracketSchema = z.strictObject({
  kind: z.literal('apparatus-bracket'),
  bracket: catalogIdSchema,
  mounting: z.enum(['floor', 'back']).default('back'),
  /** How far the pack must come straight out before it is free of the bracket; null takes the house rule. */
  releaseStrokeMm: sizeMmSchema.nullable().default(null),
});
export type ApparatusBracket = DeepReadonly<z.infer<typeof apparatusBracketSchema>>;

export const freshApparatusBracket: FreshFitting<ApparatusBracket> = () => ({
  kind: 'apparatus-bracket',
  bracket: 'cradle-pack-back',
  mounting: 'back',
  releaseStrokeMm: null,
});
