import { z } from 'zod';
import type { Opening } from '../cabinet.ts';
import { catalogIdSchema, type DeepReadonly, sizeMmSchema } from '../parts.ts';
import type { FreshFitting } from './fresh.ts';

/** A command board that stands flat in the face of its opening and turns out of it, its working face inward. */
const shape = {
  kind: z.literal('board'),
  /** About an upright edge, about the upper edge, or on a carriage that slides out first. */
  way: z.enum(['side-flip', 'top-flip', 'slide-and-turn']).default('side-flip'),
  /** The upright edge that it turns about; a board that flips up takes no notice of it. */
  hinge: z.enum(['left', 'right']).default('left'),
  /** Size of the board; null fills the opening. */
  widthMm: sizeMmSchema.nullable().default(null),
  heightMm: sizeMmSchema.nullable().default(null),
  material: catalogIdSchema,
  /** Angles from stowed that it holds, in degrees; the largest is its whole travel. */
  stopsDeg: z.array(z.number().min(1).max(180)).min(1).max(12),
  /** What holds it at its stops, at the hinge; null where nothing but the latch does. */
  ratchet: catalogIdSchema.nullable().default(null),
  /** A thin steel sheet on the working face. */
  magneticFace: z.boolean().default(true),
  markerTray: catalogIdSchema.nullable().default(null),
  /** A light along the upper edge of the working face: a device, or null. */
  worklight: catalogIdSchema.nullable().default(null),
  /** A pair of gas springs for a board that flips up, or null. */
  springs: catalogIdSchema.nullable().default(null),
  /** The slides of the carriage; null where the solver is to choose by load and depth. */
  slide: catalogIdSchema.nullable().default(null),
  slideLengthMm: sizeMmSchema.nullable().default(null),
  latch: catalogIdSchema.nullable().default(null),
};
const bareSchema = z.strictObject(shape);

export type CommandBoard = DeepReadonly<z.infer<typeof bareSchema>> & {
  /** The room behind the board; it stays with the carcass. */
  readonly inside: Opening;
};

export const boardSchema = (opening: z.ZodType<Opening>) => z.strictObject({ ...shape, inside: opening });

export const freshBoard: FreshFitting<CommandBoard> = (newId) => ({
  kind: 'board',
  way: 'side-flip',
  hinge: 'left',
  widthMm: null,
  heightMm: null,
  material: 'birch-ply-12',
  stopsDeg: [90, 120, 150, 180],
  ratchet: 'ratchet-arm-15',
  magneticFace: true,
  markerTray: 'tray-lip-25',
  worklight: null,
  springs: null,
  slide: null,
  slideLengthMm: null,
  latch: 'latch-draw',
  inside: { id: newId('opening'), name: '', content: { kind: 'empty' } },
});
