import { z } from 'zod';
import type { Opening } from '../cabinet.ts';
import { catalogIdSchema, type DeepReadonly, notNegativeMmSchema, sizeMmSchema } from '../parts.ts';
import type { FreshFitting } from './fresh.ts';

/** A full-depth tray on heavy or under-mount slides. Null where the solver is to choose by load and depth. */
const shape = {
  kind: z.literal('slide-out'),
  slide: catalogIdSchema.nullable().default(null),
  slideLengthMm: sizeMmSchema.nullable().default(null),
  deckMaterial: catalogIdSchema,
  /** Lip around the deck; zero for a bare deck. */
  lipHeightMm: notNegativeMmSchema.default(60),
  lipMaterial: catalogIdSchema,
  latch: catalogIdSchema.nullable().default(null),
  /** A pair of stops behind it that take it when the vehicle is struck from the front, or null for the back panel alone. */
  backStop: catalogIdSchema.nullable().default(null),
};
const bareSchema = z.strictObject(shape);

export type SlideOut = DeepReadonly<z.infer<typeof bareSchema>> & {
  /** The room above the deck; it moves with the tray. */
  readonly inside: Opening;
};

export const slideOutSchema = (opening: z.ZodType<Opening>) => z.strictObject({ ...shape, inside: opening });

export const freshSlideOut: FreshFitting<SlideOut> = (newId) => ({
  kind: 'slide-out',
  slide: null,
  slideLengthMm: null,
  deckMaterial: 'birch-ply-18',
  lipHeightMm: 60,
  lipMaterial: 'birch-ply-12',
  latch: 'latch-two-point-bar',
  backStop: 'stop-angle-18',
  inside: { id: newId('opening'), name: '', content: { kind: 'empty' } },
});
