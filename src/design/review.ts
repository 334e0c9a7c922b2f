import { z } from 'zod';
import { type DeepReadonly, kgSchema, nameSchema, nodeIdSchema, textSchema } from './parts.ts';

/** A frozen design may be as large as a design file itself. */
const MOST_FROZEN_CHARACTERS = 20_000_000;

const letterSchema = z.string().regex(/^[A-Z]{1,3}$/, 'a revision letter: A, B, C …');
const sha256Schema = z.string().regex(/^[0-9a-f]{64}$/, '64 hexadecimal digits');

/** Who did something, and on which day as a person writes it. */
const byWhom = { who: nameSchema.min(1), on: nameSchema.default('') };

const revisionSchema = z.strictObject({
  letter: letterSchema,
  ...byWhom,
  why: textSchema.min(1),
  /** The whole design as it was released, as text: what the hash is of, and what nobody edits. */
  text: z.string().min(2).max(MOST_FROZEN_CHARACTERS),
  /** SHA-256 of `text` in UTF-8. */
  sha256: sha256Schema,
  /** Days on which sheets were cut from this letter. */
  cut: z
    .array(z.strictObject({ ...byWhom, note: textSchema.default('') }))
    .max(500)
    .default([]),
});
export const revisionsSchema = z.array(revisionSchema).max(200);
export type Revision = DeepReadonly<z.infer<typeof revisionSchema>>;

const approvalSchema = z.strictObject({ letter: letterSchema, sha256: sha256Schema, ...byWhom });
export const approvalsSchema = z.array(approvalSchema).max(2000);
export type Approval = DeepReadonly<z.infer<typeof approvalSchema>>;

const questionSchema = z.strictObject({
  id: nodeIdSchema,
  text: textSchema.min(1),
  /** The part or gear that it is about, or null. */
  about: nameSchema.nullable().default(null),
});
export const questionsSchema = z.array(questionSchema).max(500);
/** A question from the shop to whoever reviews the design. */
export type Question = DeepReadonly<z.infer<typeof questionSchema>>;

/** A part or an item of gear as the reader of the copy saw it: its id, and its name for the day on which it is gone. */
const onPart = { part: nameSchema.min(1), name: nameSchema.default('') };

export const remarkSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('note'), ...onPart, text: textSchema }),
  z.strictObject({
    kind: z.literal('swap'),
    ...onPart,
    with: nameSchema.min(1),
    withName: nameSchema.default(''),
    text: textSchema.default(''),
  }),
  z.strictObject({
    kind: z.literal('move'),
    ...onPart,
    to: nameSchema.min(1),
    toName: nameSchema.default(''),
    text: textSchema.default(''),
  }),
  z.strictObject({
    kind: z.literal('answer'),
    question: nodeIdSchema,
    asked: textSchema.default(''),
    text: textSchema.min(1),
  }),
]);
export type Remark = DeepReadonly<z.infer<typeof remarkSchema>>;

/** What a remark led to. */
const outcomeSchema = z.discriminatedUnion('state', [
  z.strictObject({ state: z.literal('open') }),
  z.strictObject({ state: z.literal('done'), ...byWhom }),
  z.strictObject({ state: z.literal('not-done'), ...byWhom, because: textSchema.min(1) }),
]);
export type RemarkOutcome = DeepReadonly<z.infer<typeof outcomeSchema>>;

const keptReplySchema = z.strictObject({
  /** SHA-256 of what was sent, so that the same reply is never kept twice. */
  id: sha256Schema,
  /** The letter that was reviewed; empty for a draft. */
  letter: z.union([letterSchema, z.literal('')]),
  sha256: sha256Schema,
  ...byWhom,
  remarks: z.array(z.strictObject({ remark: remarkSchema, outcome: outcomeSchema })).max(2000),
});
export const keptRepliesSchema = z.array(keptReplySchema).max(500);
export type KeptReply = DeepReadonly<z.infer<typeof keptReplySchema>>;

export const recordSchema = z.strictObject({
  /** What was built otherwise than drawn. */
  asBuilt: z
    .array(z.strictObject({ ...byWhom, part: nameSchema.nullable().default(null), text: textSchema.min(1) }))
    .max(2000)
    .default([]),
  /** Axle scales after the build, newest last. */
  weighed: z
    .array(z.strictObject({ ...byWhom, frontKg: kgSchema, rearKg: kgSchema, note: textSchema.default('') }))
    .max(500)
    .default([]),
  /** When the anchors are due to be tightened again, and when that was done. */
  torqueChecks: z
    .array(z.strictObject({ due: nameSchema.min(1), doneOn: nameSchema.default(''), who: nameSchema.default('') }))
    .max(500)
    .default([]),
});
/** What stays with the vehicle after delivery. */
export type VehicleRecord = DeepReadonly<z.infer<typeof recordSchema>>;
