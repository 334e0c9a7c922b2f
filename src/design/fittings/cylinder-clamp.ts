import { z } from 'zod';
import { catalogIdSchema, type DeepReadonly } from '../parts.ts';
import type { FreshFitting } from './fresh.ts';
import { lyingSchema } from './lying.ts';

/** Band clamps that hold one cylinder; the cylinder is a gear item placed in the opening. */
export const cylinderClampSchema = z.strictObject({
  kind: z.literal('cylinder-clamp'),
  clamp: catalogIdSchema,
  clamps: z.number().int().min(1).max(4).default(2),
  lies: lyingSchema.default('upright-back'),
});
export type CylinderClamp = DeepReadonly<z.infer<typeof cylinderClampSchema>>;

export const freshCylinderClamp: FreshFitting<CylinderClamp> = () => ({
  kind: 'cylinder-clamp',
  clamp: 'clamp-cylinder-180',
  clamps: 2,
  lies: 'upright-back',
});
