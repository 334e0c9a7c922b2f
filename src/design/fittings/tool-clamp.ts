import { z } from 'zod';
import { catalogIdSchema, type DeepReadonly } from '../parts.ts';
import type { FreshFitting } from './fresh.ts';
import { lyingSchema } from './lying.ts';

/** Clamps along the shaft of one long tool, with a pocket over its head where it has an edge. */
export const toolClampSchema = z.strictObject({
  kind: z.literal('tool-clamp'),
  clamp: catalogIdSchema,
  clamps: z.number().int().min(1).max(4).default(2),
  lies: lyingSchema.default('across-back'),
  /** What covers the edge at the far end of the tool, or null. */
  headCover: catalogIdSchema.nullable().default(null),
});
export type ToolClamp = DeepReadonly<z.infer<typeof toolClampSchema>>;

export const freshToolClamp: FreshFitting<ToolClamp> = () => ({
  kind: 'tool-clamp',
  clamp: 'clamp-tool-38',
  clamps: 2,
  lies: 'across-back',
  headCover: 'clamp-axe-head',
});
