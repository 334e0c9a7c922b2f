import { z } from 'zod';
import { type HoldSet, holdToSchema } from './anchors.ts';
import { type Cabinet, cabinetSchema } from './cabinet.ts';
import { type Gear, gearListSchema, type Mount, mountsSchema } from './gear.ts';
import { type DeepReadonly, nameSchema, textSchema } from './parts.ts';
import {
  type Approval,
  approvalsSchema,
  type KeptReply,
  keptRepliesSchema,
  type Question,
  questionsSchema,
  type Revision,
  recordSchema,
  revisionsSchema,
  type VehicleRecord,
} from './review.ts';
import { type StockRow, stockSchema } from './stock.ts';
import { type Survey, surveySchema } from './survey.ts';
import { type Vehicle, vehicleSchema } from './vehicle.ts';

export const DESIGN_FORMAT = 'hatchwright-design';
/** Raised by one with every migration. */
export const DESIGN_VERSION = 1;

const houseRuleChangeSchema = z.strictObject({
  rule: nameSchema.min(1),
  value: z.number(),
  who: nameSchema,
  why: textSchema,
});
export type HouseRuleChange = DeepReadonly<z.infer<typeof houseRuleChangeSchema>>;

const acceptedSchema = z.strictObject({
  /** The rule and the parts of the finding that is let stand. */
  rule: nameSchema.min(1),
  parts: z.array(nameSchema).max(20),
  who: nameSchema.min(1),
  why: textSchema.min(1),
  on: nameSchema.default(''),
});
export type Accepted = DeepReadonly<z.infer<typeof acceptedSchema>>;

export const designSchema = z.strictObject({
  format: z.literal(DESIGN_FORMAT),
  version: z.literal(DESIGN_VERSION),
  title: nameSchema.min(1),
  customer: nameSchema.default(''),
  /** How lengths are shown; the file holds millimetres whatever this says. */
  units: z.enum(['in', 'mm']),
  /** How drawings turn their views: third angle puts a view beside what it shows, first angle beyond it. */
  projection: z.enum(['third', 'first']).default('third'),
  vehicle: vehicleSchema,
  survey: surveySchema,
  cabinet: cabinetSchema,
  gear: gearListSchema,
  mounts: mountsSchema.default([]),
  /** Sheets that the shop can have and offcuts in its rack; empty: the sheets of the catalog. */
  stock: stockSchema.default([]),
  /** The load sets that everything fastened is held against. */
  holdTo: holdToSchema,
  houseRules: z.array(houseRuleChangeSchema).max(500).default([]),
  accepted: z.array(acceptedSchema).max(2000).default([]),
  notes: textSchema.default(''),
  /** What the shop asks whoever reviews the design. */
  questions: questionsSchema.default([]),
  /** Frozen states, oldest first. */
  revisions: revisionsSchema.default([]),
  approvals: approvalsSchema.default([]),
  replies: keptRepliesSchema.default([]),
  record: recordSchema.default({ asBuilt: [], weighed: [], torqueChecks: [] }),
});

/** The document that a user opens and saves: the only thing that is saved and undone. */
export interface Design {
  readonly format: typeof DESIGN_FORMAT;
  readonly version: typeof DESIGN_VERSION;
  readonly title: string;
  readonly customer: string;
  readonly units: 'in' | 'mm';
  readonly projection: 'third' | 'first';
  readonly vehicle: Vehicle;
  readonly survey: Survey;
  readonly cabinet: Cabinet;
  readonly gear: readonly Gear[];
  readonly mounts: readonly Mount[];
  readonly stock: readonly StockRow[];
  readonly holdTo: readonly HoldSet[];
  readonly houseRules: readonly HouseRuleChange[];
  readonly accepted: readonly Accepted[];
  readonly notes: string;
  readonly questions: readonly Question[];
  readonly revisions: readonly Revision[];
  readonly approvals: readonly Approval[];
  readonly replies: readonly KeptReply[];
  readonly record: VehicleRecord;
}
