import type { LengthUnits } from '../base/index.ts';
import type { Change, FieldChange, FigureChange } from '../revision/index.ts';
import { sayAmount, sayLength } from './amounts.ts';
import { sayCase } from './say-case.ts';
import { sayFieldName } from './say-problem.ts';
import { sentence } from './words.ts';

/** How a reader of changes is spoken to: units, and what parts are called in the earlier and the later design. */
export interface ChangeSpeech {
  readonly units: LengthUnits;
  readonly before: (id: string) => string;
  readonly after: (id: string) => string;
}

/** Keys that only group others, and say nothing to a person. */
const SILENT: ReadonlySet<string> = new Set([
  'content',
  'fitting',
  'rule',
  'cabinet',
  'survey',
  'vehicle',
  'parts',
  'size',
  'place',
]);

/** Keys whose figure is a length though their name does not say so. */
const LENGTHS: ReadonlySet<string> = new Set(['width', 'height', 'depth', 'at', 'mm', 'min', 'max', 'from', 'to']);

const MOST_LISTED = 6;
const MOST_QUOTED = 60;

const figure = (value: number, key: string, units: LengthUnits): string => {
  if (key.endsWith('Mm') || LENGTHS.has(key)) return sayLength(value, units);
  if (key.endsWith('Kg')) return sayAmount(value, 'kg', units);
  return key.endsWith('Deg') ? `${value}°` : String(value);
};

const valueText = (value: unknown, key: string, units: LengthUnits, name: (id: string) => string): string => {
  if (typeof value === 'number') return figure(value, key, units);
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (value === null || value === undefined || value === '') return 'nothing';
  if (typeof value === 'string') {
    const known = name(value);
    return known.length > MOST_QUOTED ? `${known.slice(0, MOST_QUOTED - 1)}…` : known;
  }
  if (Array.isArray(value) && value.length <= MOST_LISTED && value.every((each) => typeof each !== 'object'))
    return value.length === 0 ? 'nothing' : value.map((each) => valueText(each, key, units, name)).join(' × ');
  return 'another list';
};

const fieldName = (field: string): string => {
  const keys = field.split('.').filter((key) => !SILENT.has(key));
  return sayFieldName(keys.length === 0 ? field : keys.join('.'));
};

const fieldText = ({ field, before, after }: FieldChange, speech: ChangeSpeech): string => {
  const key = field.split('.').at(-1) ?? field;
  if (field === 'order') return 'order';
  const [from, to] = [
    valueText(before, key, speech.units, speech.before),
    valueText(after, key, speech.units, speech.after),
  ];
  return from === to ? fieldName(field) : `${fieldName(field)} ${from} → ${to}`;
};

/** Where gear stood and stands: the one field that people ask for, the rest follows from it. */
const rehousedText = (change: Change, speech: ChangeSpeech): string => {
  const opening = change.fields.find(({ field }) => field === 'place.opening');
  const from = typeof opening?.before === 'string' ? speech.before(opening.before) : null;
  const to = typeof opening?.after === 'string' ? speech.after(opening.after) : null;
  if (from === null) return to === null ? 'another place' : `now in ${to}, was without a place`;
  return to === null ? `was in ${from}, now without a place` : `from ${from} to ${to}`;
};

const MOST_FIELDS = 5;

const fieldsText = ({ fields }: Change, speech: ChangeSpeech): string => {
  // Another kind of fitting brings other fields: the kind says it all.
  const kind = fields.find(({ field }) => field === 'content.fitting.kind' || field === 'content.kind');
  const shown = kind ? [kind] : fields.slice(0, MOST_FIELDS);
  const rest = kind ? 0 : fields.length - shown.length;
  return [...shown.map((field) => fieldText(field, speech)), ...(rest > 0 ? [`and ${rest} more`] : [])].join('; ');
};

const KIND_WORDS: { readonly [Kind in Change['kind']]: string } = {
  added: 'added',
  removed: 'removed',
  rehoused: 'stowed elsewhere',
  moved: 'moved',
  resized: 'another size',
  renamed: 'another name',
  reordered: 'another order',
  changed: 'changed',
};

const nameIn = (change: Change, speech: ChangeSpeech): string => {
  if (change.id === '') return 'the design';
  return change.kind === 'removed' ? speech.before(change.id) : speech.after(change.id);
};

/** One change in a line: `Thermal camera: stowed elsewhere, from drawer 2 to tray 1`. */
export const sayChange = (change: Change, speech: ChangeSpeech): string => {
  const name = nameIn(change, speech);
  const head = `${sentence(name)}: ${KIND_WORDS[change.kind]}`;
  if (change.kind === 'added' || change.kind === 'removed' || change.kind === 'reordered') return head;
  const detail = change.kind === 'rehoused' ? rehousedText(change, speech) : fieldsText(change, speech);
  return `${head}, ${detail}`;
};

const FIGURES: Readonly<Record<string, string>> = {
  'cabinet-mass': 'cabinet with its hardware',
  'gear-mass': 'gear',
  panels: 'panels to cut',
  sheets: 'sheets',
  price: 'price',
  stops: 'stops',
};

const AXLES: Readonly<Record<string, string>> = {
  'front-axle': 'front axle',
  'rear-axle': 'rear axle',
  total: 'all up',
};

/** What a figure is of: `rear axle, full crew`, `least margin, gap`. */
const sayFigureName = (id: string): string => {
  const [head = '', ...rest] = id.split(' ');
  const tail = rest.join(' ');
  if (head === 'margin') return `least margin, ${tail}`;
  const axle = AXLES[head];
  return axle === undefined ? (FIGURES[id] ?? id) : `${axle}, ${sayCase(tail)}`;
};

const MONEY = 'money';

const figureText = (value: number | null, unit: string, units: LengthUnits): string => {
  if (value === null) return 'not known';
  return unit === MONEY ? value.toFixed(2) : sayAmount(value, unit, units);
};

/** One figure for a row of a table: its name, what it was, what it is, and by how much it went up or down. */
export interface SaidFigure {
  readonly name: string;
  readonly before: string;
  readonly after: string;
  /** Empty where it stayed, or where one of the two is not known. */
  readonly change: string;
}

export const sayFigureRow = ({ id, unit, before, after }: FigureChange, units: LengthUnits): SaidFigure => {
  const step = before === null || after === null ? 0 : after - before;
  const sign = step > 0 ? '+' : '−';
  return {
    name: sentence(sayFigureName(id)),
    before: figureText(before, unit, units),
    after: figureText(after, unit, units),
    change: step === 0 ? '' : `${sign}${figureText(Math.abs(step), unit, units)}`,
  };
};

/** One figure in a line: `rear axle, full crew: 2,310 lb → 2,354 lb`. */
export const sayFigureChange = (change: FigureChange, units: LengthUnits): string => {
  const { name, before, after } = sayFigureRow(change, units);
  return `${name}: ${before} → ${after}`;
};
