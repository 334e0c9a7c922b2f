import { z } from 'zod';
import { catalogIdSchema, type DeepReadonly, type NodeId, nodeIdSchema, notNegativeMmSchema } from './parts.ts';

/** Measured from an end, as a tape is laid, so that it stays there when the carcass grows. */
const fromEnd = <Near extends string, Far extends string>(near: Near, far: Far) =>
  z.strictObject({ from: z.enum([near, far]), mm: notNegativeMmSchema });

/** What holds a carcass to the vehicle at one place, from the head inside to the nut outside. */
const hardware = {
  bolt: catalogIdSchema,
  /** A rivet nut in the sheet of the vehicle; null where the bolt goes through to a nut of its own. */
  insert: catalogIdSchema.nullable().default(null),
  /** Under the head, inside the carcass; counted as round. */
  washer: catalogIdSchema.nullable().default(null),
  /** Behind the sheet of the vehicle. */
  plate: catalogIdSchema.nullable().default(null),
  /** The plate is bonded to the sheet over its whole face, so that both bear on the bolt. */
  plateBonded: z.boolean().default(false),
};

const anchorSchema = z.discriminatedUnion('on', [
  z.strictObject({
    id: nodeIdSchema,
    on: z.literal('floor'),
    /** From the outside of the carcass, as the viewer stands before its open face. */
    across: fromEnd('left', 'right'),
    deep: fromEnd('face', 'back'),
    /** The head is let into the floor panel, so that nothing stands proud of it. */
    letIn: z.boolean().default(true),
    ...hardware,
  }),
  z.strictObject({
    id: nodeIdSchema,
    on: z.literal('wall'),
    side: z.enum(['left', 'right', 'back']),
    /** From the face for a side, from the viewer's left for the back. */
    along: fromEnd('start', 'end'),
    up: fromEnd('bottom', 'top'),
    /** What reaches from the panel to the wall of the vehicle. */
    bracket: catalogIdSchema,
    ...hardware,
  }),
]);
export type Anchor = DeepReadonly<z.infer<typeof anchorSchema>>;
export const anchorsSchema = z.array(anchorSchema).max(60).default([]);

/** Load sets of the house rules that a cabinet can be held to. */
export const HOLD_SETS = ['road', 'crew-area', 'ambulance', 'own'] as const;
export type HoldSet = (typeof HOLD_SETS)[number];
export const holdToSchema = z.array(z.enum(HOLD_SETS)).min(1).max(HOLD_SETS.length).default(['crew-area', 'ambulance']);

/** How far in from its ends a carcass of ordinary make is bolted down. */
const FRESH_IN_MM = 80;

/** One anchor of ordinary make in the floor: a bolt through to a nut behind a plate. */
export const freshFloorAnchor = (
  id: NodeId,
  left: 'left' | 'right',
  face: 'face' | 'back',
): Extract<Anchor, { readonly on: 'floor' }> => ({
  id,
  on: 'floor',
  across: { from: left, mm: FRESH_IN_MM },
  deep: { from: face, mm: FRESH_IN_MM },
  letIn: true,
  bolt: 'bolt-m8x40',
  insert: null,
  washer: 'washer-m8-30',
  plate: 'backing-plate-80',
  plateBonded: false,
});

/** One bracket of ordinary make from a side to the wall of the vehicle, half way up. */
export const freshWallAnchor = (id: NodeId, upMm: number): Extract<Anchor, { readonly on: 'wall' }> => ({
  id,
  on: 'wall',
  side: 'left',
  along: { from: 'end', mm: FRESH_IN_MM },
  up: { from: 'bottom', mm: upMm },
  bracket: 'bracket-angle-100',
  bolt: 'bolt-m8x40',
  insert: null,
  washer: 'washer-m8-30',
  plate: 'backing-plate-80',
  plateBonded: false,
});

/** The four corners of a carcass's floor. */
export const freshAnchors = (newId: (prefix: string) => NodeId): readonly Anchor[] =>
  (['left', 'right'] as const).flatMap((left) =>
    (['face', 'back'] as const).map((face) => freshFloorAnchor(newId('anchor'), left, face)),
  );
