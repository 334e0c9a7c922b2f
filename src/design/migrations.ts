import { DESIGN_VERSION } from './design.ts';

/**
 * One step from a version to the next. Never edited after release; each is exercised by a kept file in
 * `tests/design/kept`. It takes the raw document and gives the raw document of the next version.
 */
export interface Migration {
  readonly from: number;
  /** What changed, in a few words, for the docs. */
  readonly name: string;
  readonly up: (document: Readonly<Record<string, unknown>>) => Record<string, unknown>;
}

/** In order, numbered by one: the migration at index i leads from version i + 1 to version i + 2. */
export const MIGRATIONS: readonly Migration[] = [];

/** Brings a document of an older version to the present one. Throws on a version that no migration starts from. */
export const migrated = (
  document: Readonly<Record<string, unknown>>,
  version: number,
  steps: readonly Migration[] = MIGRATIONS,
  target: number = DESIGN_VERSION,
): Readonly<Record<string, unknown>> => {
  let current = document;
  for (let at = version; at < target; at++) {
    const step = steps.find((candidate) => candidate.from === at);
    if (!step) throw new RangeError(`migrated: nothing leads on from version ${at}`);
    current = { ...step.up(current), version: at + 1 };
  }
  return current;
};
