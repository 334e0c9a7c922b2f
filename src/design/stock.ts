import { z } from 'zod';
import { catalogIdSchema, type DeepReadonly, nameSchema, nodeIdSchema, sizeMmSchema } from './parts.ts';

/** More of one size than any shop has in its rack. */
export const MOST_OF_ONE_STOCK = 10_000;
const DEAREST = 1_000_000;

const stockRowSchema = z
  .strictObject({
    id: nodeIdSchema,
    /** The material of the catalog, whose thickness is also that of this row. */
    material: catalogIdSchema,
    /** What is written on it, so that the person at the saw finds it. */
    name: nameSchema.min(1),
    /** Along the grain, which for an offcut may be its shorter side. */
    lengthMm: sizeMmSchema,
    widthMm: sizeMmSchema,
    /** How many there are; null: as many as wanted. An offcut is always counted. */
    quantity: z.number().int().min(0).max(MOST_OF_ONE_STOCK).nullable().default(null),
    /** Of one; null: by its area at the catalog's price, and nothing for an offcut. */
    price: z.number().nonnegative().max(DEAREST).nullable().default(null),
    /** Left over from an earlier job: used before a sheet is bought, and not trimmed. */
    offcut: z.boolean().default(false),
  })
  .refine(({ offcut, quantity }) => !offcut || quantity !== null, {
    path: ['quantity'],
    message: 'a whole number: an offcut is there so many times',
  });

/** Sheets that the shop can have and offcuts that it has, for the sheet layouts. */
export const stockSchema = z.array(stockRowSchema).max(2000);
export type StockRow = DeepReadonly<z.infer<typeof stockRowSchema>>;
