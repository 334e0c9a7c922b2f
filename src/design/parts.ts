import { z } from 'zod';

/** Pieces of schema that the whole document shares. Lengths mm, masses kg, angles degrees in the file. */

/** The name of one node of a design, unique in its document: `carcass-1`, `opening-12`, `gear-7`. */
export const nodeIdSchema = z
  .string()
  .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'lower-case words and digits joined by hyphens')
  .max(60)
  .brand<'NodeId'>();
export type NodeId = z.infer<typeof nodeIdSchema>;

/** The name of a record of the catalog; whether it exists is checked when the design is solved, not when it is read. */
export const catalogIdSchema = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'the id of a catalog record');

/** Far beyond any road vehicle, so that a slipped decimal point is caught at the door. */
const LONGEST_MM = 20_000;

export const mmSchema = z.number().min(-LONGEST_MM).max(LONGEST_MM);
export const sizeMmSchema = z.number().positive().max(LONGEST_MM);
export const notNegativeMmSchema = z.number().nonnegative().max(LONGEST_MM);
export const kgSchema = z.number().nonnegative().max(100_000);
export const nameSchema = z.string().max(200);
export const textSchema = z.string().max(20_000);
export const pointSchema = z.tuple([mmSchema, mmSchema, mmSchema]);
export const planePointSchema = z.tuple([mmSchema, mmSchema]);

/** A read-only view of whatever a schema yields. */
export type DeepReadonly<T> = T extends string | number | boolean | null | undefined
  ? T
  : T extends readonly (infer _Item)[]
    ? { readonly [Index in keyof T]: DeepReadonly<T[Index]> }
    : T extends object
      ? { readonly [Key in keyof T]: DeepReadonly<T[Key]> }
      : T;
