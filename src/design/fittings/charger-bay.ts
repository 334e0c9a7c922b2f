import { z } from 'zod';
import { catalogIdSchema, type DeepReadonly, nodeIdSchema, notNegativeMmSchema } from '../parts.ts';
import type { FreshFitting } from './fresh.ts';

const placedDeviceSchema = z.strictObject({ id: nodeIdSchema, device: catalogIdSchema });

/** Chargers on the floor of a bay, with the air that they need. What they charge stands in and above them. */
export const chargerBaySchema = z.strictObject({
  kind: z.literal('charger-bay'),
  /** Chargers from the back row to the front, each row from the viewer's left to the right. */
  rows: z.array(z.array(placedDeviceSchema).max(20)).max(6).default([]),
  /** Vents low and high in the back, as many as the power of the chargers asks for; null for a bay that stays open. */
  vent: catalogIdSchema.nullable().default(null),
  /** A fan high in the back that draws the warm air out, in place of the high vents; null for none. */
  fan: placedDeviceSchema.nullable().default(null),
  /** Room above the chargers for what stands in them and for the hand. */
  aboveMm: notNegativeMmSchema.default(120),
});
export type ChargerBay = DeepReadonly<z.infer<typeof chargerBaySchema>>;

export const freshChargerBay: FreshFitting<ChargerBay> = (newId) => ({
  kind: 'charger-bay',
  rows: [
    [
      { id: newId('device'), device: 'charger-radio-1' },
      { id: newId('device'), device: 'charger-radio-1' },
    ],
  ],
  vent: 'vent-louvre-60',
  fan: null,
  aboveMm: 120,
});
