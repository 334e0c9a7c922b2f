import { z } from 'zod';
import type { Opening } from '../cabinet.ts';
import { catalogIdSchema, type DeepReadonly } from '../parts.ts';
import type { FreshFitting } from './fresh.ts';

/** A leaf or a roll shutter before an opening. What is inside stays with the carcass. */
const shape = {
  kind: z.literal('door'),
  /** The edge that the leaf turns about; a roll shutter goes up into a box at the top. */
  hung: z.enum(['left', 'right', 'top', 'bottom', 'roll']).default('left'),
  /** The leaf stands in the opening or over half of what surrounds it; a shutter always stands in it. */
  front: z.enum(['inset', 'overlay']).default('inset'),
  /** Sheet of the leaf, or of the slats and the bottom rail of a shutter. */
  material: catalogIdSchema,
  hinge: catalogIdSchema,
  latch: catalogIdSchema.nullable().default(null),
  /** A lock beside the latch, or null for a door that does not lock. */
  lock: catalogIdSchema.nullable().default(null),
  /** How far the leaf turns; a shutter takes no notice of it. */
  opensDeg: z.number().min(1).max(180).default(110),
  /** What holds it open: gas springs on a leaf hung at the top, straps on one hung at the bottom, or null. */
  stay: catalogIdSchema.nullable().default(null),
};
const bareSchema = z.strictObject(shape);

export type Door = DeepReadonly<z.infer<typeof bareSchema>> & {
  /** The room behind the door. */
  readonly inside: Opening;
};

export const doorSchema = (opening: z.ZodType<Opening>) => z.strictObject({ ...shape, inside: opening });

export const freshDoor: FreshFitting<Door> = (newId) => ({
  kind: 'door',
  hung: 'left',
  front: 'inset',
  material: 'birch-ply-18',
  hinge: 'hinge-piano-32',
  latch: 'latch-slam',
  lock: null,
  opensDeg: 110,
  stay: null,
  inside: { id: newId('opening'), name: '', content: { kind: 'empty' } },
});
