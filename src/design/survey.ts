import { z } from 'zod';
import {
  type DeepReadonly,
  mmSchema,
  nameSchema,
  nodeIdSchema,
  notNegativeMmSchema,
  planePointSchema,
  pointSchema,
  sizeMmSchema,
  textSchema,
} from './parts.ts';

/** A section point: [out from the centre line, up from the floor plane]. Out is positive on both sides. */
const sectionPointSchema = z.tuple([mmSchema, mmSchema]);

const stationSchema = z.strictObject({
  id: nodeIdSchema,
  /** Forward of the hatch sill. */
  xMm: mmSchema,
  /** From the floor up to the roof. At least three points a side, checked when the cargo space is made. */
  left: z.array(sectionPointSchema).max(200),
  right: z.array(sectionPointSchema).max(200),
});

export const solidSchema = z.discriminatedUnion('shape', [
  z.strictObject({ shape: z.literal('box'), min: pointSchema, max: pointSchema }),
  z.strictObject({ shape: z.literal('capsule'), from: pointSchema, to: pointSchema, radiusMm: sizeMmSchema }),
  /** A convex outline in the side view, as [x, z], drawn out from `fromY` to `toY`. */
  z.strictObject({
    shape: z.literal('side-prism'),
    outline: z.array(planePointSchema).min(3).max(60),
    fromY: mmSchema,
    toY: mmSchema,
  }),
]);

const obstacleSchema = z.strictObject({
  id: nodeIdSchema,
  name: nameSchema,
  kind: z.enum(['latch', 'striker', 'strut', 'tie-down', 'trim', 'lamp', 'seat-back', 'wheelhouse', 'other']),
  solid: solidSchema,
  /** The closure that carries it, or null when it stays with the vehicle. */
  movesWith: nodeIdSchema.nullable().default(null),
});

export const CLOSURE_KINDS = ['lift-hatch', 'hatch-glass', 'barn-door', 'tailgate', 'cap-door', 'side-door'] as const;

const closureSchema = z.strictObject({
  id: nodeIdSchema,
  name: nameSchema,
  kind: z.enum(CLOSURE_KINDS),
  hinge: z.strictObject({ from: pointSchema, to: pointSchema }),
  /** Which way the closed closure looks out of the vehicle. */
  outward: z.enum(['rear', 'left', 'right']),
  /** From the hinge line towards the free edge, closed. */
  hangs: z.enum(['down', 'up', 'left', 'right', 'forward', 'rearward']),
  /**
   * Inner trim when closed, seen along the hinge line, from the hinge to the free edge: [away from the hinge line
   * along `hangs`, into the cargo space from the plane through the hinge line].
   */
  innerProfile: z.array(planePointSchema).min(2).max(60),
  thicknessMm: sizeMmSchema,
  opensDeg: z.number().positive().max(270),
  /** A closure that is part of another one (opening glass in a hatch). */
  carriedBy: nodeIdSchema.nullable().default(null),
});

const zoneSchema = z.strictObject({
  id: nodeIdSchema,
  name: nameSchema,
  rule: z.enum(['nothing-stands', 'no-hole', 'sight-line', 'seat-travel']),
  solid: solidSchema,
});

export const surveySchema = z.strictObject({
  measuredBy: nameSchema.default(''),
  measuredOn: nameSchema.default(''),
  /** True while the numbers are start values of a class, never to be cut from. */
  startValues: z.boolean().default(false),
  stations: z.array(stationSchema).max(200),
  obstacles: z.array(obstacleSchema).max(500),
  closures: z.array(closureSchema).max(40),
  zones: z.array(zoneSchema).max(200),
  /** The clear opening that everything passes through, as [across to the left, up], or null. */
  aperture: z.array(planePointSchema).max(60).nullable().default(null),
  /** How well a taped coordinate of the sections is known, one standard deviation. */
  sigmaMm: notNegativeMmSchema.default(1.5),
  notes: textSchema.default(''),
});
export type Survey = DeepReadonly<z.infer<typeof surveySchema>>;
export type Station = Survey['stations'][number];
export type Obstacle = Survey['obstacles'][number];
export type Closure = Survey['closures'][number];
export type Zone = Survey['zones'][number];
export type Solid = Obstacle['solid'];
