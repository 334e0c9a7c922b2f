import { z } from 'zod';
import {
  catalogIdSchema,
  type DeepReadonly,
  nameSchema,
  nodeIdSchema,
  notNegativeMmSchema,
  pointSchema,
  sizeMmSchema,
} from './parts.ts';

/** What makes a carcass other than a plain box: corners cut off, holes for wiring, and what it stands on. */

/**
 * A corner of the carcass cut off along one of its edges, so that it follows the side of the vehicle: the legs are
 * what the cut takes of the outside on each of the two axes. Left and right as the viewer stands before the open face.
 */
const chamferSchema = z.discriminatedUnion('along', [
  z.strictObject({
    id: nodeIdSchema,
    along: z.literal('deep'),
    corner: z.enum(['top-left', 'top-right', 'bottom-left', 'bottom-right']),
    acrossMm: sizeMmSchema,
    upMm: sizeMmSchema,
  }),
  z.strictObject({
    id: nodeIdSchema,
    along: z.literal('up'),
    corner: z.enum(['back-left', 'back-right']),
    acrossMm: sizeMmSchema,
    deepMm: sizeMmSchema,
  }),
  z.strictObject({
    id: nodeIdSchema,
    along: z.literal('across'),
    corner: z.enum(['top-back', 'bottom-back']),
    deepMm: sizeMmSchema,
    upMm: sizeMmSchema,
  }),
]);
export type Chamfer = DeepReadonly<z.infer<typeof chamferSchema>>;
/** The edges of a carcass that can be cut off, in the order in which they are offered. */
export const CHAMFER_EDGES = [
  'top-left',
  'top-right',
  'bottom-left',
  'bottom-right',
  'back-left',
  'back-right',
  'top-back',
  'bottom-back',
] as const satisfies readonly Chamfer['corner'][];
export type ChamferEdge = (typeof CHAMFER_EDGES)[number];
export const chamfersSchema = z.array(chamferSchema).max(4).default([]);

export const CHASE_PANELS = ['left', 'right', 'top', 'bottom', 'back'] as const;

/** An opening right through a panel of the carcass for wiring, measured from the outside of the carcass to its middle. */
const chaseSchema = z.strictObject({
  id: nodeIdSchema,
  name: nameSchema.default(''),
  panel: z.enum(CHASE_PANELS),
  /** From the face for a side, from the viewer's left for top, bottom and back. */
  alongMm: notNegativeMmSchema,
  /** From the bottom for a side and the back, from the face for top and bottom. */
  acrossMm: notNegativeMmSchema,
  /** Along and across as above. */
  sizeMm: z.tuple([sizeMmSchema, sizeMmSchema]),
  cornerRadiusMm: notNegativeMmSchema.default(10),
  /** Trim round its edge on both faces, or null for a bare edge. */
  edgeTrim: catalogIdSchema.nullable().default(null),
});
export type Chase = DeepReadonly<z.infer<typeof chaseSchema>>;
export const chasesSchema = z.array(chaseSchema).max(40).default([]);

export const WHEELHOUSE_SIDES = ['left', 'right', 'back'] as const;

/**
 * A corner of the carcass taken out beside its floor, so that it stands over a wheelhouse: clear room measured from the
 * outside, left and right as the viewer stands before the open face. The wood that lines it lies inside the carcass.
 */
const wheelhouseSchema = z.strictObject({
  id: nodeIdSchema,
  side: z.enum(WHEELHOUSE_SIDES),
  /** Where it begins: from the face for a side, from the viewer's left for the back. */
  fromMm: notNegativeMmSchema,
  lengthMm: sizeMmSchema,
  /** How far it reaches in from that side. */
  inMm: sizeMmSchema,
  /** How far up from the underside of the carcass. */
  upMm: sizeMmSchema,
});
export type Wheelhouse = DeepReadonly<z.infer<typeof wheelhouseSchema>>;
export const wheelhousesSchema = z.array(wheelhouseSchema).max(4).default([]);

export const BRACE_FACES = ['top', 'rear', 'front', 'left', 'right'] as const;

/** Where a brace is bolted to a carcass: from the low corner of its box on the vehicle's axes. */
const braceEndSchema = z.strictObject({ carcass: nodeIdSchema, at: pointSchema });

/** A bar bolted flat to the outside of two carcasses, so that neither racks or leans on its own. */
const braceSchema = z.strictObject({
  id: nodeIdSchema,
  name: nameSchema.default(''),
  /** Bar stock by the metre. */
  item: catalogIdSchema,
  /** The faces of both carcasses that it lies on, as the vehicle has them; they must be flush. */
  lies: z.enum(BRACE_FACES).default('top'),
  from: braceEndSchema,
  to: braceEndSchema,
});
export type Brace = DeepReadonly<z.infer<typeof braceSchema>>;
export const bracesSchema = z.array(braceSchema).max(60).default([]);

/** What the carcass stands on; its height is part of the carcass's outside height. */
export const standSchema = z
  .discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('none') }),
    /** A sheet under the whole carcass, through which the anchors of the floor go. */
    z.strictObject({ kind: z.literal('sub-floor'), material: catalogIdSchema }),
    /** Runners on edge under the bottom, from the face to the back, shared out from side to side. */
    z.strictObject({
      kind: z.literal('riser'),
      heightMm: sizeMmSchema,
      runners: z.number().int().min(2).max(12),
    }),
  ])
  .default({ kind: 'none' });
export type Stand = DeepReadonly<z.infer<typeof standSchema>>;
