import type { z } from 'zod';
import { bad, good, type Problem, pathText, type Result } from '../base/index.ts';
import {
  catalogSchema,
  type Device,
  type GearKind,
  type Hardware,
  type HouseRule,
  type Material,
  type Slide,
} from './records.ts';

/** Everything that can be bought or stowed, and every limit, looked up by id. */
export interface Catalog {
  readonly materials: ReadonlyMap<string, Material>;
  readonly slides: ReadonlyMap<string, Slide>;
  readonly hardware: ReadonlyMap<string, Hardware>;
  readonly gear: ReadonlyMap<string, GearKind>;
  readonly devices: ReadonlyMap<string, Device>;
  readonly rules: ReadonlyMap<string, HouseRule>;
}

const table = <T extends { readonly id: string }>(
  records: readonly T[],
  place: string,
  problems: Problem[],
): ReadonlyMap<string, T> => {
  const byId = new Map<string, T>();
  records.forEach((record, row) => {
    if (byId.has(record.id)) problems.push({ at: `${place}[${row}].id`, code: 'duplicate-id', got: record.id });
    byId.set(record.id, record);
  });
  return byId;
};

const problemOf = (issue: z.core.$ZodIssue): Problem => ({
  at: pathText(issue.path),
  code: 'bad-record',
  expected: issue.message,
});

/** Checks raw catalog data and makes it a catalog; every fault comes with its place. */
export const readCatalog = (data: unknown): Result<Catalog> => {
  const read = catalogSchema.safeParse(data);
  if (!read.success) return bad(read.error.issues.map(problemOf));
  const problems: Problem[] = [];
  const catalog: Catalog = {
    materials: table(read.data.materials, 'materials', problems),
    slides: table(read.data.slides, 'slides', problems),
    hardware: table(read.data.hardware, 'hardware', problems),
    gear: table(read.data.gear, 'gear', problems),
    devices: table(read.data.devices, 'devices', problems),
    rules: table(read.data.rules, 'rules', problems),
  };
  return problems.length > 0 ? bad(problems) : good(catalog);
};
