/**
 * Something wrong in what came from outside (a file, a row, a reading), as a record with its place. Words for people
 * are made from it in the room `says`; `expected` and `got` are short phrases, not sentences.
 */
export interface Problem {
  /** Where, as a path into the document: `cabinet.carcasses[0].size.width`; empty for the document itself. */
  readonly at: string;
  /** What kind of fault, a stable lower-case word group: `negative`, `unknown-fitting`, `self-crossing`. */
  readonly code: string;
  readonly expected?: string;
  readonly got?: string;
}

export type Result<T, E = readonly Problem[]> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly error: E };

export const good = <T>(value: T): { readonly ok: true; readonly value: T } => ({ ok: true, value });
export const bad = <E>(error: E): { readonly ok: false; readonly error: E } => ({ ok: false, error });

/** The document path of a list of keys: ['a', 0, 'b'] → `a[0].b`. */
export const pathText = (keys: readonly PropertyKey[]): string =>
  keys.reduce<string>(
    (text, key) => (typeof key === 'number' ? `${text}[${key}]` : text === '' ? String(key) : `${text}.${String(key)}`),
    '',
  );
