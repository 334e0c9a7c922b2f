import { z } from 'zod';
import { catalogIdSchema, type DeepReadonly } from '../parts.ts';
import type { FreshFitting } from './fresh.ts';

/** A screen on an arm that is stowed flat behind the face, swings out, and turns back to whoever reads it. */
export const tabletMountSchema = z.strictObject({
  kind: z.literal('tablet-mount'),
  arm: catalogIdSchema,
  /** The tablet in its dock, or another screen: a device. */
  tablet: catalogIdSchema,
  /** The side of the opening that the arm is bolted to. */
  side: z.enum(['left', 'right']).default('left'),
  /** How far the arm swings out of the face, and how far the screen turns on it, in degrees. */
  swingDeg: z.number().min(1).max(180).default(90),
  turnDeg: z.number().min(1).max(180).default(90),
  /** What holds it stowed, behind the screen; null for nothing. */
  latch: catalogIdSchema.nullable().default(null),
});
export type TabletMount = DeepReadonly<z.infer<typeof tabletMountSchema>>;

export const freshTabletMount: FreshFitting<TabletMount> = () => ({
  kind: 'tablet-mount',
  arm: 'arm-tablet-tilt',
  tablet: 'tablet-dock',
  side: 'left',
  swingDeg: 90,
  turnDeg: 90,
  latch: 'latch-draw',
});
