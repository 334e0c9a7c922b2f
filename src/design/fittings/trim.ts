import { z } from 'zod';
import { catalogIdSchema, type DeepReadonly, notNegativeMmSchema, sizeMmSchema } from '../parts.ts';
import type { FreshFitting } from './fresh.ts';

/** A ledge with round holes that keep drinks upright, and behind it a slot with a clip for boards. */
export const trimSchema = z.strictObject({
  kind: z.literal('trim'),
  material: catalogIdSchema,
  /** Holes for drinks side by side; zero for none. */
  cups: z.number().int().min(0).max(6).default(2),
  cupDiameterMm: sizeMmSchema.default(85),
  /** Upper face of the ledge above the floor that the drinks stand on. */
  ledgeUpMm: sizeMmSchema.default(70),
  /** Slot for clip-boards behind the ledge, from front to back; zero for none. */
  slotMm: notNegativeMmSchema.default(60),
  /** What holds the boards in the slot, or null. */
  clip: catalogIdSchema.nullable().default(null),
});
export type Trim = DeepReadonly<z.infer<typeof trimSchema>>;

export const freshTrim: FreshFitting<Trim> = () => ({
  kind: 'trim',
  material: 'hdpe-10',
  cups: 2,
  cupDiameterMm: 85,
  ledgeUpMm: 70,
  slotMm: 60,
  clip: 'clip-board-spring',
});
