import { z } from 'zod';
import type { Opening } from '../cabinet.ts';
import { catalogIdSchema, type DeepReadonly, notNegativeMmSchema, sizeMmSchema } from '../parts.ts';
import type { FreshFitting } from './fresh.ts';

/** A full-depth tray on heavy or under-mount slides. Null where the solver is to choose by load and depth. */
const shape = {
  kind: z.literal('slide-out'),
  /** Rails under the deck, slides at its sides, or whichever carries the load. */
  mount: z.enum(['side', 'under']).nullable().default(null),
  slide: catalogIdSchema.nullable().default(null),
  slideLengthMm: sizeMmSchema.nullable().default(null),
  deckMaterial: catalogIdSchema,
  /** Lip around the deck; zero for a bare deck. */
  lipHeightMm: notNegativeMmSchema.default(60),
  lipMaterial: catalogIdSchema,
  /** It also locks every so far on its way out, on slides that do that; null for the ends alone. */
  lockEveryMm: z.number().min(50).max(3000).nullable().default(null),
  /** Slots along both sides of the deck, and straps through them over the load; null for a plain deck. */
  tieDown: z
    .strictObject({
      everyMm: z.number().min(60).max(3000),
      strap: catalogIdSchema,
      straps: z.number().int().min(1).max(8).default(2),
    })
    .nullable()
    .default(null),
  /** A plate that says what may be put on the tray, or null. */
  loadPlate: catalogIdSchema.nullable().default(null),
  latch: catalogIdSchema.nullable().default(null),
  /** A pair of stops behind it that take it when the vehicle is struck from the front, or null for the back panel alone. */
  backStop: catalogIdSchema.nullable().default(null),
};
const bareSchema = z.strictObject(shape);

/** A second deck over the first, between the sides of the tray. */
interface SecondLevel {
  /** Its upper face above that of the deck. */
  readonly upMm: number;
  /** The room on it; it moves with the tray. */
  readonly inside: Opening;
}

export type SlideOut = DeepReadonly<z.infer<typeof bareSchema>> & {
  /** The room above the deck; it moves with the tray. */
  readonly inside: Opening;
  readonly second: SecondLevel | null;
};

export const slideOutSchema = (opening: z.ZodType<Opening>) =>
  z.strictObject({
    ...shape,
    inside: opening,
    second: z.strictObject({ upMm: sizeMmSchema, inside: opening }).nullable().default(null),
  });

export const freshSlideOut: FreshFitting<SlideOut> = (newId) => ({
  kind: 'slide-out',
  mount: null,
  slide: null,
  slideLengthMm: null,
  deckMaterial: 'birch-ply-18',
  lipHeightMm: 60,
  lipMaterial: 'birch-ply-12',
  lockEveryMm: null,
  tieDown: { everyMm: 200, strap: 'strap-cam-25', straps: 2 },
  loadPlate: 'plate-load-90',
  latch: 'latch-two-point-bar',
  backStop: 'stop-angle-18',
  inside: { id: newId('opening'), name: '', content: { kind: 'empty' } },
  second: null,
});
