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
  /** The mark behind each point of `left`, in step with it, or null for a point that was typed. Its adjusted place then holds. */
  leftMarks: z.array(nodeIdSchema.nullable()).max(200).optional(),
  rightMarks: z.array(nodeIdSchema.nullable()).max(200).optional(),
  /** True while its typed points are start values of a vehicle class, never to be cut from. */
  startValues: z.boolean().optional(),
  /** Where its typed points come from: the tape when left out. */
  source: z.enum(['tape', 'scan']).optional(),
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
  startValues: z.boolean().optional(),
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
  /** Marks whose adjusted places hold instead of the hinge line and the angle above; null where there is none. */
  marks: z
    .strictObject({
      hingeFrom: nodeIdSchema.nullable().default(null),
      hingeTo: nodeIdSchema.nullable().default(null),
      edgeClosed: nodeIdSchema.nullable().default(null),
      edgeOpen: nodeIdSchema.nullable().default(null),
    })
    .optional(),
  /** The lowest edge above ground, fully open, as taped; a check of hinge, profile and angle. */
  lowestEdgeAboveGroundMm: sizeMmSchema.optional(),
  startValues: z.boolean().optional(),
});

const zoneSchema = z.strictObject({
  id: nodeIdSchema,
  name: nameSchema,
  rule: z.enum(['nothing-stands', 'no-hole', 'sight-line', 'seat-travel']),
  solid: solidSchema,
  /** Its outline from above, as [x, y], any line that does not cross itself; it then stands between the heights of `solid`. */
  outlineFromAbove: z.array(planePointSchema).min(3).max(200).optional(),
});

/** What a mark may be read with. Each has its spread in the house rules, as `<instrument>-sigma`. */
export const INSTRUMENTS = ['tape', 'laser', 'stick', 'level', 'angle-gauge', 'scan'] as const;
export type Instrument = (typeof INSTRUMENTS)[number];

const markSchema = z.strictObject({
  id: nodeIdSchema,
  name: nameSchema.default(''),
  /** Where it is thought to be; readings improve it. */
  at: pointSchema,
  /** Coordinates that stay as they are: they make the frame, or the depth at which a station was set up. */
  fixed: z.tuple([z.boolean(), z.boolean(), z.boolean()]).default([false, false, false]),
});

/** Lengths: distance along the tape, depth, width, height, offset from the centre line. Angles: level, angle. */
export const READING_KINDS = ['distance', 'along', 'across', 'height', 'offset', 'level', 'angle'] as const;
export type ReadingKind = (typeof READING_KINDS)[number];

const readingSchema = z.strictObject({
  id: nodeIdSchema,
  /**
   * - distance: straight from mark to mark (a diagonal is one);
   * - along, across, height: how far `to` lies forward, to the left, above `from`;
   * - offset: how far `from` lies to the left of the centre line, negative on the right;
   * - level: rise of the line from `from` to `to` above the floor plane, degrees;
   * - angle: at the mark `at`, between `from` and `to`, degrees.
   */
  kind: z.enum(READING_KINDS),
  from: nodeIdSchema,
  to: nodeIdSchema.nullable().default(null),
  at: nodeIdSchema.nullable().default(null),
  /** Millimetres, or degrees for level and angle. */
  value: mmSchema,
  instrument: z.enum(INSTRUMENTS).default('tape'),
  /** Its own standard deviation in its unit, or null to take that of the instrument. */
  sigma: z.number().positive().max(1000).nullable().default(null),
  note: textSchema.default(''),
  /** A reading that a named person has put aside; it stays listed. */
  leftOut: z
    .strictObject({ who: nameSchema.min(1), why: textSchema.min(1) })
    .nullable()
    .default(null),
});

const scanSchema = z.strictObject({
  name: nameSchema,
  /** Length of one unit of the file. */
  unitMm: z.number().positive().max(2000),
  triangles: z.number().int().nonnegative(),
  /** Root mean square distance of the taped sections from the scan, where they agree. */
  rmsMm: notNegativeMmSchema,
});

export const surveySchema = z.strictObject({
  measuredBy: nameSchema.default(''),
  measuredOn: nameSchema.default(''),
  /** True while the numbers are start values of a class, never to be cut from. */
  startValues: z.boolean().default(false),
  marks: z.array(markSchema).max(1000).default([]),
  readings: z.array(readingSchema).max(2000).default([]),
  /** The scan that was laid beside the tape, or null. The mesh itself is not kept in the design. */
  scan: scanSchema.nullable().default(null),
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
export type Mark = Survey['marks'][number];
export type Reading = Survey['readings'][number];
export type Solid = Obstacle['solid'];
