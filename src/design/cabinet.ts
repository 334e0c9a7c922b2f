import { z } from 'zod';
import { anchorsSchema } from './anchors.ts';
import type { Fitting } from './fittings/index.ts';
import { fittingSchema } from './fittings/index.ts';
import {
  catalogIdSchema,
  type DeepReadonly,
  mmSchema,
  type NodeId,
  nameSchema,
  nodeIdSchema,
  notNegativeMmSchema,
  sizeMmSchema,
} from './parts.ts';
import { type Brace, bracesSchema, chamfersSchema, chasesSchema, standSchema, wheelhousesSchema } from './structure.ts';

/** How big a part of a divided opening is: a stated size, a share of what is left, or as big as its content needs. */
const sizeRuleSchema = z.discriminatedUnion('rule', [
  z.strictObject({ rule: z.literal('fixed'), mm: sizeMmSchema }),
  z.strictObject({ rule: z.literal('share'), weight: z.number().positive().max(1000) }),
  z.strictObject({ rule: z.literal('hug') }),
]);
export type SizeRule = DeepReadonly<z.infer<typeof sizeRuleSchema>>;

/**
 * Columns run from the viewer's left to the right, rows from the top down, layers from the face to the back. The
 * viewer stands before the open face of the carcass.
 */
export const DIVISIONS = ['columns', 'rows', 'layers'] as const;
export type Division = (typeof DIVISIONS)[number];

export interface DividedPart {
  readonly size: SizeRule;
  readonly opening: Opening;
}

export type OpeningContent =
  | { readonly kind: 'empty' }
  | {
      readonly kind: 'divided';
      readonly along: Division;
      /** What parts the rooms: a panel of the carcass material, or nothing but the line. */
      readonly divider: 'panel' | 'none';
      readonly parts: readonly DividedPart[];
    }
  | { readonly kind: 'fitted'; readonly fitting: Fitting };

/** A rectangular room inside a carcass or inside something that moves. */
export interface Opening {
  readonly id: NodeId;
  readonly name: string;
  readonly content: OpeningContent;
}

export const openingSchema: z.ZodType<Opening> = z.lazy(() => openingShape);

const openingShape = z.strictObject({
  id: nodeIdSchema,
  name: nameSchema.default(''),
  content: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('empty') }),
    z.strictObject({
      kind: z.literal('divided'),
      along: z.enum(DIVISIONS),
      divider: z.enum(['panel', 'none']).default('panel'),
      parts: z
        .array(z.strictObject({ size: sizeRuleSchema, opening: openingSchema }))
        .min(2)
        .max(40),
    }),
    z.strictObject({ kind: z.literal('fitted'), fitting: fittingSchema(openingSchema) }),
  ]),
}) as unknown as z.ZodType<Opening>;

/**
 * Where the carcass's low corner stands on one axis of the vehicle: at a stated coordinate, or beside another
 * carcass with a gap (`plus`: on the side of greater coordinates; x forward, y left, z up).
 */
const axisPlaceSchema = z.discriminatedUnion('rule', [
  z.strictObject({ rule: z.literal('at'), mm: mmSchema }),
  z.strictObject({
    rule: z.literal('beside'),
    carcass: nodeIdSchema,
    side: z.enum(['plus', 'minus']),
    gapMm: notNegativeMmSchema,
  }),
]);
export type AxisPlace = DeepReadonly<z.infer<typeof axisPlaceSchema>>;

const jointsSchema = z.strictObject({
  /** How top and bottom meet the sides, and dividers and shelves meet what they stand in. */
  corner: z.enum(['dado', 'rabbet', 'butt']),
  dadoDepthMm: notNegativeMmSchema,
  back: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('groove'), grooveDepthMm: sizeMmSchema, setbackMm: notNegativeMmSchema }),
    z.strictObject({ kind: z.literal('rabbet'), depthMm: sizeMmSchema }),
    z.strictObject({ kind: z.literal('none') }),
  ]),
});

const carcassSchema = z.strictObject({
  id: nodeIdSchema,
  name: nameSchema,
  place: z.strictObject({ x: axisPlaceSchema, y: axisPlaceSchema, z: axisPlaceSchema }),
  /** Which way the open face looks. */
  facing: z.enum(['rear', 'left', 'right', 'front']),
  /** Outside, seen from the face: width across, height, depth from the face to the back. */
  size: z.strictObject({ width: sizeMmSchema, height: sizeMmSchema, depth: sizeMmSchema }),
  material: catalogIdSchema,
  backMaterial: catalogIdSchema,
  joints: jointsSchema,
  /** Edge band on the front edges, or null for a bare edge. */
  edgeBand: catalogIdSchema.nullable().default(null),
  /** What holds it to the vehicle, or to the carcass that it stands on. */
  anchors: anchorsSchema,
  chamfers: chamfersSchema,
  chases: chasesSchema,
  wheelhouses: wheelhousesSchema,
  stand: standSchema,
  opening: openingSchema,
});
export type Carcass = DeepReadonly<Omit<z.infer<typeof carcassSchema>, 'opening'>> & { readonly opening: Opening };
export type Joints = Carcass['joints'];

export const cabinetSchema = z.strictObject({ carcasses: z.array(carcassSchema).max(60), braces: bracesSchema });
export interface Cabinet {
  readonly carcasses: readonly Carcass[];
  /** Bars between carcasses. */
  readonly braces: readonly Brace[];
}
