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

/** Ways on the vehicle's axes: x forward, y left, z up. */
export const MOUNT_LOOKS = ['front', 'rear', 'left', 'right', 'up', 'down'] as const;

/** A device outside the cabinet: on the hatch, on the trim, on the side of a carcass. */
const mountSchema = z.strictObject({
  id: nodeIdSchema,
  name: nameSchema,
  device: catalogIdSchema,
  /** The closure or the carcass that carries it, or null for the vehicle itself. */
  on: nodeIdSchema.nullable(),
  /** Middle of the device; on a carcass from the low corner of its box on the vehicle's axes, so that it goes with it. */
  at: pointSchema,
  /** Which way its face looks, closures closed; it comes off that way. */
  looks: z.enum(MOUNT_LOOKS).default('front'),
  /** The width of its face stands upright, or lengthwise where it looks up or down. */
  onEnd: z.boolean().default(false),
  /** Let into what carries it, so that only its face stands out. */
  letIn: z.boolean().default(false),
  /** What it comes off with, between it and what carries it. */
  bracket: catalogIdSchema.nullable().default(null),
  /** How far it must come straight off before it is free; null takes its own depth with the plug. */
  offMm: notNegativeMmSchema.nullable().default(null),
});
export const mountsSchema = z.array(mountSchema).max(200);
export type Mount = DeepReadonly<z.infer<typeof mountSchema>>;
