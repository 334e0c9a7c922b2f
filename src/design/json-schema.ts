import { z } from 'zod';
import { designSchema } from './design.ts';

/** The schema of a design file as JSON Schema (draft 2020-12), for other programs and for the page in `docs`. */
export const designJsonSchema = (): Readonly<Record<string, unknown>> =>
  z.toJSONSchema(designSchema, { io: 'input', unrepresentable: 'throw' }) as Readonly<Record<string, unknown>>;
