/** Orders text by code unit, so that the order is the same on every machine and in every locale. */
export const compareText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** Orders marks as a person would: L2 before L10. Digits compare by value, the rest by code unit. */
export const compareMarks = (a: string, b: string): number => {
  const parts = (text: string): readonly string[] => text.match(/\d+|\D+/g) ?? [];
  const left = parts(a);
  const right = parts(b);
  for (let i = 0; i < Math.min(left.length, right.length); i++) {
    const [p, q] = [left[i] ?? '', right[i] ?? ''];
    const numbers = /^\d/.test(p) && /^\d/.test(q);
    const order = numbers ? Number(p) - Number(q) : compareText(p, q);
    if (order !== 0) return order;
  }
  // 'L2' and 'L02' read alike; the text itself keeps their order fixed.
  return left.length - right.length || compareText(a, b);
};

/** Items grouped by key, groups in the order in which their first item stands. */
export const groupBy = <T, K>(items: readonly T[], keyOf: (item: T) => K): ReadonlyMap<K, readonly T[]> => {
  const groups = new Map<K, T[]>();
  for (const item of items) {
    const key = keyOf(item);
    const group = groups.get(key);
    if (group) group.push(item);
    else groups.set(key, [item]);
  }
  return groups;
};
