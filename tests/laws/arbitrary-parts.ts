import type FastCheck from 'fast-check';
import type { Arbitrary } from 'fast-check';
import { standardCatalog } from '../../src/catalog/index.ts';

export type Fc = typeof FastCheck;
export type Any<T> = Arbitrary<T>;
export type Plain = Readonly<Record<string, unknown>>;

export const ids = (of: 'materials' | 'slides' | 'hardware' | 'devices' | 'gear'): readonly string[] => [
  ...standardCatalog()[of].keys(),
];

export const hardwareOf = (...kinds: readonly string[]): readonly string[] =>
  [...standardCatalog().hardware.values()].filter(({ kind }) => kinds.includes(kind)).map(({ id }) => id);

export const oneOrNone = (fc: Fc, list: readonly string[]): Any<string | null> => fc.constantFrom(null, ...list);

/** Whole millimetres, now and then a fraction. */
export const mm = (fc: Fc, min: number, max: number): Any<number> =>
  fc.integer({ min: min * 4, max: max * 4 }).map((quarters) => quarters / 4);
