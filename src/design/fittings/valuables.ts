import { z } from 'zod';
import type { Opening } from '../cabinet.ts';
import { catalogIdSchema, type DeepReadonly, sizeMmSchema } from '../parts.ts';
import type { FreshFitting } from './fresh.ts';

/** A shallow locked slide-out for what must not be lost: lined, behind a lock, with something over it. */
const shape = {
  kind: z.literal('valuables'),
  slide: catalogIdSchema.nullable().default(null),
  slideLengthMm: sizeMmSchema.nullable().default(null),
  boxMaterial: catalogIdSchema,
  bottomMaterial: catalogIdSchema,
  lock: catalogIdSchema,
  pull: catalogIdSchema.nullable().default(null),
  /** A mat in the bottom of the box, or null. */
  liner: catalogIdSchema.nullable().default(null),
  /** A fixed sheet over the box, so that nobody reaches in from above; null under a panel that closes it anyway. */
  coverMaterial: catalogIdSchema.nullable().default(null),
};
const bareSchema = z.strictObject(shape);

export type Valuables = DeepReadonly<z.infer<typeof bareSchema>> & {
  /** The room inside the box; it moves with it. */
  readonly inside: Opening;
};

export const valuablesSchema = (opening: z.ZodType<Opening>) => z.strictObject({ ...shape, inside: opening });

export const freshValuables: FreshFitting<Valuables> = (newId) => ({
  kind: 'valuables',
  slide: null,
  slideLengthMm: null,
  boxMaterial: 'birch-ply-12',
  bottomMaterial: 'birch-ply-6',
  lock: 'latch-lock-bar',
  pull: 'pull-flush-small',
  liner: 'mat-foam-10',
  coverMaterial: 'birch-ply-9',
  inside: { id: newId('opening'), name: '', content: { kind: 'empty' } },
});
