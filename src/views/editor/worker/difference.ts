/** Plain values with names; anything else, a typed array say, crosses as a whole. */
type Plain = Readonly<Record<string, unknown>>;

/**
 * What makes one plain value another, so that between page and worker only what changed has to cross. Null where
 * nothing changed; lists and groups are told by their items and fields, the rest as a whole.
 */
export type Difference =
  | null
  | { readonly whole: unknown }
  | { readonly length: number; readonly items: readonly (readonly [at: number, difference: Difference])[] }
  | { readonly fields: readonly (readonly [name: string, difference: Difference])[] };

const isPlain = (value: unknown): value is Plain => {
  if (typeof value !== 'object' || value === null) return false;
  const made: unknown = Object.getPrototypeOf(value);
  return made === Object.prototype || made === null;
};

/** Past this share of changed items or fields, telling them one by one is longer than saying the whole. */
const MOST_CHANGED = 0.7;

const ofLists = (before: readonly unknown[], after: readonly unknown[]): Difference => {
  const items: (readonly [number, Difference])[] = [];
  for (let i = 0; i < after.length; i++) {
    const item = i < before.length ? difference(before[i], after[i]) : { whole: after[i] };
    if (item !== null) items.push([i, item]);
  }
  if (items.length === 0 && before.length === after.length) return null;
  return items.length > MOST_CHANGED * after.length && items.every(([, item]) => item !== null && 'whole' in item)
    ? { whole: after }
    : { length: after.length, items };
};

const ofGroups = (before: Plain, after: Plain): Difference => {
  const names = Object.keys(after);
  const known = Object.keys(before);
  // A field that went, came or moved makes it another group.
  if (names.length !== known.length || names.some((name, i) => name !== known[i])) return { whole: after };
  const fields: (readonly [string, Difference])[] = [];
  for (const name of names) {
    const field = difference(before[name], after[name]);
    if (field !== null) fields.push([name, field]);
  }
  if (fields.length === 0) return null;
  return fields.length > MOST_CHANGED * names.length && fields.every(([, field]) => field !== null && 'whole' in field)
    ? { whole: after }
    : { fields };
};

/** What changed from `before` to `after`. Where both are the very same object nothing is looked into. */
export const difference = (before: unknown, after: unknown): Difference => {
  if (Object.is(before, after)) return null;
  if (Array.isArray(before) && Array.isArray(after)) return ofLists(before, after);
  if (isPlain(before) && isPlain(after)) return ofGroups(before, after);
  return { whole: after };
};

/**
 * The value that `change` makes of `before`. Every part that did not change is the very same object as in `before`:
 * by that, whoever looks at it next knows that it need not look again.
 */
export const changedBy = (before: unknown, change: Difference): unknown => {
  if (change === null) return before;
  if ('whole' in change) return change.whole;
  if ('items' in change) {
    const list = (before as readonly unknown[]).slice(0, change.length);
    for (const [i, item] of change.items) list[i] = changedBy(list[i], item);
    return list;
  }
  const fields = new Map(change.fields);
  return Object.fromEntries(
    Object.entries(before as Plain).map(([name, value]) => [name, changedBy(value, fields.get(name) ?? null)]),
  );
};

/** One end of a line along which values of one kind cross, each told by what changed since the one before. */
export interface Sender<T> {
  readonly tell: (value: T) => Difference;
}
export interface Receiver<T> {
  readonly hear: (change: Difference) => T;
}

export const createSender = <T>(): Sender<T> => {
  let told: T | undefined;
  return {
    tell: (value) => {
      const change = difference(told, value);
      told = value;
      return change;
    },
  };
};

/** Must hear everything that its sender told, in that order. */
export const createReceiver = <T>(): Receiver<T> => {
  let heard: unknown;
  return {
    hear: (change) => {
      heard = changedBy(heard, change);
      return heard as T;
    },
  };
};
