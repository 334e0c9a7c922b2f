import { z } from 'zod';
import { NEEDS } from '../catalog/index.ts';
import {
  catalogIdSchema,
  type DeepReadonly,
  kgSchema,
  nameSchema,
  nodeIdSchema,
  notNegativeMmSchema,
  pointSchema,
  sizeMmSchema,
  textSchema,
} from './parts.ts';

/** How the item lies: on its base, on its long side, or on its back. */
export const STANCES = ['upright', 'on-side', 'on-back'] as const;

const gearPlaceSchema = z.strictObject({
  opening: nodeIdSchema,
  /** Which room of the opening, counted from the bottom; 0 where the fitting has a single room. */
  level: z.number().int().min(0).max(40).default(0),
  /** From the room's near low left corner: across, deep, up. */
  at: z.tuple([notNegativeMmSchema, notNegativeMmSchema, notNegativeMmSchema]),
  stance: z.enum(STANCES).default('upright'),
  /** Turn about the upright axis; 0 puts the item's length along the depth. */
  turnDeg: z.union([z.literal(0), z.literal(90), z.literal(180), z.literal(270)]).default(0),
});

const gearSchema = z.strictObject({
  id: nodeIdSchema,
  name: nameSchema,
  /** The kind of the catalog that it was taken from, or null for the department's own. */
  kind: catalogIdSchema.nullable().default(null),
  /** Length × width × height as it stands upright. */
  sizeMm: z.tuple([sizeMmSchema, sizeMmSchema, sizeMmSchema]),
  massKg: kgSchema,
  massFrom: z.enum(['measured', 'catalogue', 'estimated']),
  massSigmaKg: kgSchema.default(0),
  needs: z.array(z.enum(NEEDS)).default([]),
  /** Wanted in the first minute: few motions from the closed vehicle to the hand. */
  firstDue: z.boolean().default(false),
  /** Who reaches for it. */
  user: nameSchema.default(''),
  note: textSchema.default(''),
  place: gearPlaceSchema.nullable().default(null),
});
export const gearListSchema = z.array(gearSchema).max(2000);
export type Gear = DeepReadonly<z.infer<typeof gearSchema>>;
export type GearPlace = NonNullable<Gear['place']>;

const mountSchema = z.strictObject({
  id: nodeIdSchema,
  name: nameSchema,
  device: catalogIdSchema,
  /** The closure that carries it, or null for the vehicle itself. */
  on: nodeIdSchema.nullable(),
  at: pointSchema,
});
export const mountsSchema = z.array(mountSchema).max(200);
export type Mount = DeepReadonly<z.infer<typeof mountSchema>>;
