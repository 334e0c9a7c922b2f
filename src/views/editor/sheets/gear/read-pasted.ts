import { type LengthUnits, parseLength } from '../../../../base/index.ts';
import type { GearKind } from '../../../../catalog/index.ts';
import type { Gear } from '../../../../design/index.ts';
import { readMassKg } from './read-mass.ts';
import { splitRows } from './split-rows.ts';

/** A row of the pasted list: what it becomes and how many of it, or why it cannot be read. */
export type PastedRow =
  | { readonly line: number; readonly ok: true; readonly gear: Omit<Gear, 'id'>; readonly count: number }
  | { readonly line: number; readonly ok: false; readonly name: string; readonly says: string };

type Column = 'name' | 'length' | 'width' | 'height' | 'mass' | 'count';
const ORDER: readonly Column[] = ['name', 'length', 'width', 'height', 'mass', 'count'];

const HEADER_WORDS: Readonly<Record<Column, RegExp>> = {
  name: /^(?:name|item|gear|description|what)/,
  length: /^(?:length|long|l\b)/,
  width: /^(?:width|wide|w\b)/,
  height: /^(?:height|high|h\b)/,
  mass: /^(?:mass|weight|kg|lb)/,
  count: /^(?:qty|quantity|count|how many|number|no\.?|pcs|pieces)/,
};

const MOST_OF_ONE = 100;

interface Header {
  readonly at: Readonly<Partial<Record<Column, number>>>;
  /** A unit named in the head of the column, as in `length (mm)`. */
  readonly unit: Readonly<Partial<Record<Column, string>>>;
}

const PLAIN_ORDER: Header = { at: Object.fromEntries(ORDER.map((column, i) => [column, i])), unit: {} };

const UNIT_IN_HEAD = /[([]\s*(mm|cm|m|in|inch|inches|ft|kg|g|lb|lbs|oz)\s*[)\]]/;

const headerOf = (cells: readonly string[]): Header | null => {
  const words = cells.map((cell) => cell.toLowerCase());
  const found = ORDER.flatMap((column) => {
    const at = words.findIndex((word) => HEADER_WORDS[column].test(word));
    return at < 0 ? [] : [{ column, at, unit: UNIT_IN_HEAD.exec(words[at] ?? '')?.[1] }];
  });
  if (found.length < 2 || !found.some(({ column }) => column === 'name')) return null;
  return {
    at: Object.fromEntries(found.map(({ column, at }) => [column, at])),
    unit: Object.fromEntries(found.flatMap(({ column, unit }) => (unit ? [[column, unit]] : []))),
  };
};

const withUnit = (text: string, unit: string | undefined): string =>
  unit && /^[\d\s./,-]+$/.test(text) ? `${text} ${unit}` : text;

interface Reader {
  readonly cell: (column: Column) => string;
  readonly units: LengthUnits;
}

const readSide = ({ cell, units }: Reader, column: 'length' | 'width' | 'height'): number | string => {
  const text = cell(column);
  const read = parseLength(text, units);
  if (!read.ok || !(read.value > 0)) return text === '' ? `The ${column} is missing.` : `“${text}” is no ${column}.`;
  return read.value;
};

const readCount = ({ cell }: Reader): number | string => {
  const text = cell('count');
  if (text === '') return 1;
  const count = Number(text);
  return Number.isInteger(count) && count >= 1 && count <= MOST_OF_ONE
    ? count
    : `“${text}” is no count from 1 to ${MOST_OF_ONE}.`;
};

const fromCatalogue = (name: string, kind: GearKind): Omit<Gear, 'id'> => ({
  name,
  kind: kind.id,
  sizeMm: kind.sizeMm,
  massKg: kind.massKg,
  massFrom: 'catalogue',
  massSigmaKg: kind.massSigmaKg,
  needs: kind.needs,
  firstDue: false,
  user: '',
  note: '',
  place: null,
});

const SIDES = ['length', 'width', 'height'] as const;

/** The row's own size, the catalogue's where the row has none, or why neither will do. */
const readSize = (reader: Reader, kind: GearKind | undefined): Gear['sizeMm'] | string => {
  if (kind && SIDES.every((side) => reader.cell(side) === '')) return kind.sizeMm;
  const [length, width, height] = SIDES.map((side) => readSide(reader, side));
  if (typeof length === 'number' && typeof width === 'number' && typeof height === 'number')
    return [length, width, height];
  return [length, width, height].find((side) => typeof side === 'string') ?? '';
};

const readRow = (line: number, reader: Reader, kinds: ReadonlyMap<string, GearKind>): PastedRow => {
  const name = reader.cell('name');
  const refused = (says: string): PastedRow => ({ line, ok: false, name, says });
  if (name === '') return refused('The name is missing.');
  const kind = kinds.get(name.toLowerCase());
  const count = readCount(reader);
  if (typeof count === 'string') return refused(count);
  const sizeMm = readSize(reader, kind);
  if (typeof sizeMm === 'string') return refused(sizeMm);
  const massText = reader.cell('mass');
  const written = readMassKg(massText, reader.units);
  if (massText !== '' && written === null) return refused(`“${massText}” is no mass.`);
  const massKg = written ?? kind?.massKg ?? null;
  if (massKg === null) return refused('The mass is missing.');
  const base = kind ? fromCatalogue(name, kind) : null;
  const own = written !== null && base !== null;
  const gear: Omit<Gear, 'id'> = base
    ? { ...base, sizeMm, massKg, massFrom: own ? 'measured' : 'catalogue', massSigmaKg: own ? 0 : base.massSigmaKg }
    : {
        name,
        kind: null,
        sizeMm,
        massKg,
        massFrom: 'measured',
        massSigmaKg: 0,
        needs: [],
        firstDue: false,
        user: '',
        note: '',
        place: null,
      };
  return { line, ok: true, gear, count };
};

/**
 * Reads rows copied from a spreadsheet: name, length, width, height, mass, count, in that order or named by a first
 * row of heads, which may also name units. A row with a name of the catalogue may leave sizes and mass out.
 */
export const readPasted = (
  text: string,
  units: LengthUnits,
  catalogue: ReadonlyMap<string, GearKind>,
): readonly PastedRow[] => {
  const rows = splitRows(text);
  const header = rows[0] ? headerOf(rows[0].cells) : null;
  const { at, unit } = header ?? PLAIN_ORDER;
  const kinds = new Map([...catalogue.values()].map((kind) => [kind.name.toLowerCase(), kind]));
  return rows.slice(header ? 1 : 0).map(({ line, cells }) => {
    const cell = (column: Column): string => {
      const place = at[column];
      return place === undefined ? '' : withUnit(cells[place] ?? '', unit[column]);
    };
    return readRow(line, { cell, units }, kinds);
  });
};
