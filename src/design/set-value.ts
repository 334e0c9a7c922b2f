import { bad, good, type LengthUnits, parseLength, type Result } from '../base/index.ts';

/** Why a value cannot be set: nothing stands there; `there` lists what does. */
export interface NoSuchPlace {
  readonly at: string;
  readonly there: readonly string[];
}

export interface ValueSet {
  readonly document: unknown;
  readonly before: unknown;
  readonly after: unknown;
}

type Group = Record<string, unknown>;

const isGroup = (value: unknown): value is Group =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** `a.b[0].c` and `a[opening-3].b` as keys; a number stays text and is read by the list it stands in. */
const keysOf = (path: string): readonly string[] =>
  path
    .replaceAll(/\[([^\]]*)\]/g, '.$1')
    .split('.')
    .filter((key) => key !== '');

/** The place of an item in a list, by number or by its id; −1 where there is none. */
const indexIn = (list: readonly unknown[], key: string): number =>
  /^\d+$/.test(key)
    ? Number(key) < list.length
      ? Number(key)
      : -1
    : list.findIndex((item) => isGroup(item) && item.id === key);

const keysThere = (value: unknown): readonly string[] => {
  if (Array.isArray(value))
    return value.map((item, i) => (isGroup(item) && typeof item.id === 'string' ? item.id : String(i)));
  return isGroup(value) ? Object.keys(value) : [];
};

const asJson = (text: string): Result<unknown, null> => {
  try {
    return good(JSON.parse(text) as unknown);
  } catch {
    return bad(null);
  }
};

/**
 * A value as a person types it: what is text stays text; else JSON (a bare number counts in the file's own units: mm,
 * kg, degrees); else a length with its unit (`23 5/8 in`), in mm; else the text itself.
 */
export const typedValue = (text: string, before: unknown, units: LengthUnits): unknown => {
  if (typeof before === 'string') return text;
  const json = asJson(text);
  if (json.ok) return json.value;
  const length = parseLength(text, units);
  // Feet and fractions would leave a tail of rounding in the file.
  return length.ok ? Math.round(length.value * 1e6) / 1e6 : text;
};

/**
 * A copy of a JSON document with one value set. The groups and lists on the way must be there, the last key of a group
 * need not be: whether it may stand there is for the schema to say.
 */
export const setValue = (
  document: unknown,
  path: string,
  text: string,
  units: LengthUnits,
): Result<ValueSet, NoSuchPlace> => {
  const copy: unknown = JSON.parse(JSON.stringify(document));
  const keys = keysOf(path);
  const last = keys.at(-1);
  let place: unknown = copy;
  let at = '';
  const missing = (): Result<ValueSet, NoSuchPlace> => bad({ at, there: keysThere(place) });
  const within = (key: string): string | number | null => {
    if (Array.isArray(place)) return indexIn(place, key) < 0 ? null : indexIn(place, key);
    return isGroup(place) ? key : null;
  };
  for (const key of keys.slice(0, -1)) {
    const inside = within(key);
    if (inside === null || !Object.hasOwn(place as object, inside)) return missing();
    place = (place as Group)[inside];
    at = typeof inside === 'number' ? `${at}[${inside}]` : at === '' ? inside : `${at}.${inside}`;
  }
  const inside = last === undefined ? null : within(last);
  if (inside === null) return missing();
  const before = Object.hasOwn(place as object, inside) ? (place as Group)[inside] : undefined;
  const after = typedValue(text, before, units);
  Object.defineProperty(place, inside, { value: after, enumerable: true, configurable: true, writable: true });
  return good({ document: copy, before, after });
};
