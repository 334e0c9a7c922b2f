import { z } from 'zod';
import {
  type DeepReadonly,
  kgSchema,
  mmSchema,
  nameSchema,
  nodeIdSchema,
  notNegativeMmSchema,
  pointSchema,
  sizeMmSchema,
  textSchema,
} from './parts.ts';

export const VEHICLE_CLASSES = ['large-utility', 'mid-utility', 'pickup-cap', 'van'] as const;

const seatSchema = z.strictObject({
  id: nodeIdSchema,
  name: nameSchema,
  /** Hip point, cargo axes: origin at the floor in the middle of the hatch sill. */
  at: pointSchema,
  occupant: z.enum(['driver', 'crew']),
  /** Null takes the house rule for a rider in gear. */
  occupantKg: kgSchema.nullable(),
});

const slipSchema = z.strictObject({
  frontKg: kgSchema,
  rearKg: kgSchema,
  /** The whole left side and the whole right side, when the scale gives them. */
  leftKg: kgSchema.nullable().default(null),
  rightKg: kgSchema.nullable().default(null),
  note: textSchema.default(''),
});

const builtSlipSchema = z.strictObject({
  case: nameSchema.min(1),
  frontKg: kgSchema,
  rearKg: kgSchema,
  /** The whole left side and the whole right side, when the scale gives them. */
  leftKg: kgSchema.nullable().default(null),
  rightKg: kgSchema.nullable().default(null),
  note: textSchema.default(''),
});

/** What the driver sees through the inside mirror: the rear glass as a window across the vehicle. */
const rearViewSchema = z.strictObject({
  /** Middle of the inside mirror, cargo axes. */
  mirror: pointSchema,
  /** How far forward of the sill the glass stands. */
  glassForwardMm: mmSchema,
  /** Lower and upper edge of what is clear, above the cargo floor. */
  glassLowMm: mmSchema,
  glassHighMm: mmSchema,
  glassWidthMm: sizeMmSchema,
});

const antennaSchema = z.strictObject({
  id: nodeIdSchema,
  name: nameSchema,
  at: pointSchema,
  /** Of the radio that feeds it, at full power. */
  watts: z.number().positive().max(1000),
});

const ownCaseSchema = z.strictObject({
  id: nodeIdSchema,
  name: nameSchema.min(1),
  /** Seats that are taken. */
  seats: z.array(nodeIdSchema).max(60).default([]),
  /** How full the tank is; null as when the vehicle was weighed. */
  fuelShare: z.number().min(0).max(1).nullable().default(null),
  /** Drawers and trays stand all the way out. */
  traysOut: z.boolean().default(false),
  /** What else is aboard: a trailer's tongue, a dog, the week's water. */
  extras: z
    .array(z.strictObject({ name: nameSchema, kg: kgSchema, sigmaKg: kgSchema.default(0), at: pointSchema }))
    .max(40)
    .default([]),
});

export const vehicleSchema = z.strictObject({
  class: z.enum(VEHICLE_CLASSES),
  description: nameSchema,
  /** Null wherever nobody has read the label or the tape yet; checks then say what is needed. */
  ratings: z.strictObject({
    grossKg: kgSchema.nullable(),
    frontAxleKg: kgSchema.nullable(),
    rearAxleKg: kgSchema.nullable(),
  }),
  wheelbaseMm: sizeMmSchema.nullable(),
  trackMm: sizeMmSchema.nullable(),
  /** How far the hatch sill lies behind the rear axle. */
  sillBehindRearAxleMm: mmSchema.nullable(),
  floorAboveGroundMm: sizeMmSchema.nullable(),
  /** Height of the centre of gravity above ground, as received. */
  cgHeightAsReceivedMm: sizeMmSchema.nullable(),
  /** Axle weights as received: empty of people, with the equipment already fitted. */
  slip: slipSchema.nullable(),
  /** The tank, for the case with full fuel; null where unknown. */
  fuel: z
    .strictObject({
      tankLitres: z.number().positive().max(2000),
      atSlipShare: z.number().min(0).max(1),
      kgPerLitre: z.number().positive().max(2),
      at: pointSchema,
    })
    .nullable()
    .default(null),
  seats: z.array(seatSchema).max(60),
  /** The scale after the build, and the loading case that stood on it; null until then. */
  built: builtSlipSchema.nullable().default(null),
  /** Masses of single parts of the cabinet that the scale or a person put right, by the id of the mass. */
  knownMasses: z
    .array(z.strictObject({ of: nameSchema.min(1), kg: kgSchema, sigmaKg: kgSchema }))
    .max(500)
    .default([]),
  /** New and not yet titled, or already in service: which rules ask for a label. Null until somebody has said. */
  sale: z.enum(['new-untitled', 'in-service']).nullable().default(null),
  /** Whose rules on load labels count; null until somebody has said. */
  region: z.enum(['us', 'eu', 'other']).nullable().default(null),
  /** What feeds the devices; null wherever nobody has read the label or the tape. */
  power: z
    .strictObject({
      batteryAh: z.number().positive().max(5000).nullable().default(null),
      /** What the alternator has to spare at idle, everything of the vehicle running. */
      alternatorSpareA: z.number().nonnegative().max(2000).nullable().default(null),
      /** Wire from source to cabinet and back, in metres. */
      feedLoopM: z.number().positive().max(200).nullable().default(null),
    })
    .default({ batteryAh: null, alternatorSpareA: null, feedLoopM: null }),
  /** Loading cases of the shop's own beside the usual ones. */
  ownCases: z.array(ownCaseSchema).max(20).default([]),
  /** Inside mirror and rear glass; null until somebody has measured them. */
  rearView: rearViewSchema.nullable().default(null),
  /** Antennas that send, on roof, glass or bumper. */
  antennas: z.array(antennaSchema).max(40).default([]),
  /** How far the bumper stands behind the sill: a person leans over it. */
  bumperBehindSillMm: notNegativeMmSchema.default(0),
});
export type Vehicle = DeepReadonly<z.infer<typeof vehicleSchema>>;
export type Seat = Vehicle['seats'][number];
export type WeighSlip = NonNullable<Vehicle['slip']>;
export type OwnCase = Vehicle['ownCases'][number];
export type RearView = NonNullable<Vehicle['rearView']>;
export type Antenna = Vehicle['antennas'][number];
export type BuiltSlip = NonNullable<Vehicle['built']>;
