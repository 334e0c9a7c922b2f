import { z } from 'zod';
import {
  catalogIdSchema,
  type DeepReadonly,
  mmSchema,
  nodeIdSchema,
  notNegativeMmSchema,
  sizeMmSchema,
} from '../parts.ts';
import type { FreshFitting } from './fresh.ts';

const placedDeviceSchema = z.strictObject({
  id: nodeIdSchema,
  device: catalogIdSchema,
  /** A speaker behind the plate, which is drilled before it; left out for one whose own face is seen. */
  grille: z.literal(true).optional(),
});

/** A plate across the opening that carries devices in cut-outs, its top leaning back by the tilt. */
export const faceplateSchema = z.strictObject({
  kind: z.literal('faceplate'),
  material: catalogIdSchema,
  /** Lean of the plate from upright: positive brings the upper edge back into the carcass, so that it faces up. */
  tiltDeg: z.number().min(-45).max(60).default(0),
  /**
   * The eye that reads the plate, from the middle of the opening's face: how far above it and how far out. The plate
   * then looks at the eye whatever `tiltDeg` says; null leaves the lean as stated.
   */
  eye: z.strictObject({ aboveMm: mmSchema, outMm: sizeMmSchema }).nullable().default(null),
  /** Flat plate on cleats, or sheet metal whose upper and lower edges are bent back as flanges of this outside length. */
  flangeMm: sizeMmSchema.nullable().default(null),
  /** Slots for air in a row along the upper edge and as many along the lower. */
  airSlots: z.number().int().min(0).max(30).default(0),
  /** How far the foremost edge of the plate stands behind the face of the carcass. */
  setbackMm: notNegativeMmSchema.default(0),
  /** Devices from the top row down, each row from the viewer's left to the right. */
  rows: z.array(z.array(placedDeviceSchema).max(20)).max(10).default([]),
});
export type Faceplate = DeepReadonly<z.infer<typeof faceplateSchema>>;

export const freshFaceplate: FreshFitting<Faceplate> = () => ({
  kind: 'faceplate',
  material: 'aluminium-32',
  tiltDeg: 12,
  eye: null,
  flangeMm: null,
  airSlots: 0,
  setbackMm: 0,
  rows: [],
});
