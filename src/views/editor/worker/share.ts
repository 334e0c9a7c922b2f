type Plain = Readonly<Record<string, unknown>>;

const isPlain = (value: unknown): value is Plain =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const sharedList = (before: readonly unknown[], after: readonly unknown[]): readonly unknown[] => {
  const joined = after.map((item, i) => shareUnchanged(before[i], item));
  return joined.length === before.length && joined.every((item, i) => item === before[i]) ? before : joined;
};

const sharedGroup = (before: Plain, after: Plain): Plain => {
  const keys = Object.keys(after);
  const joined = Object.fromEntries(keys.map((key) => [key, shareUnchanged(before[key], after[key])]));
  const same = keys.length === Object.keys(before).length && keys.every((key) => joined[key] === before[key]);
  return same ? before : joined;
};

/**
 * `after` with every part that equals the same part of `before` taken from `before`. A design that crossed into the
 * worker is a copy throughout; this gives it back the identity by which later stages tell what did not change.
 */
export const shareUnchanged = <T>(before: unknown, after: T): T => {
  if (Object.is(before, after)) return after;
  if (Array.isArray(before) && Array.isArray(after)) return sharedList(before, after) as T;
  if (isPlain(before) && isPlain(after)) return sharedGroup(before, after) as T;
  return after;
};
