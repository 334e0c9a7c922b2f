import { z } from 'zod';
import type { Opening } from '../cabinet.ts';
import { catalogIdSchema, type DeepReadonly, sizeMmSchema } from '../parts.ts';
import type { FreshFitting } from './fresh.ts';

/** A box on side-mounted slides. Null where the solver is to choose by load and depth. */
const shape = {
  kind: z.literal('drawer'),
  slide: catalogIdSchema.nullable().default(null),
  slideLengthMm: sizeMmSchema.nullable().default(null),
  /** Where the slides themselves lock. */
  slideLocks: z.enum(['none', 'shut', 'out', 'both']).default('none'),
  boxMaterial: catalogIdSchema,
  bottomMaterial: catalogIdSchema,
  boxHeightMm: sizeMmSchema.nullable().default(null),
  /** Front and back of the box sit between its sides in rabbets, or butt against them. */
  boxJoint: z.enum(['rabbet', 'butt']).default('rabbet'),
  /** The bottom stands in a groove all round, or is screwed on from below. */
  bottomJoint: z.enum(['groove', 'below']).default('groove'),
  front: z.enum(['inset', 'overlay']).default('inset'),
  latch: catalogIdSchema.nullable().default(null),
  /** A pair of stops behind it that take it when the vehicle is struck from the front, or null for the back panel alone. */
  backStop: catalogIdSchema.nullable().default(null),
  pull: catalogIdSchema.nullable().default(null),
};
const bareSchema = z.strictObject(shape);

export type Drawer = DeepReadonly<z.infer<typeof bareSchema>> & {
  /** The room inside the box; it moves with the drawer and may be divided again. */
  readonly inside: Opening;
};

export const drawerSchema = (opening: z.ZodType<Opening>) => z.strictObject({ ...shape, inside: opening });

export const freshDrawer: FreshFitting<Drawer> = (newId) => ({
  kind: 'drawer',
  slide: null,
  slideLengthMm: null,
  slideLocks: 'none',
  boxMaterial: 'birch-ply-12',
  bottomMaterial: 'birch-ply-6',
  boxHeightMm: null,
  boxJoint: 'rabbet',
  bottomJoint: 'groove',
  front: 'inset',
  latch: 'latch-slam',
  backStop: null,
  pull: null,
  inside: { id: newId('opening'), name: '', content: { kind: 'empty' } },
});
