import type { Layout, LayoutNote, Proof, Unplaced, UnplacedReason } from './layout.ts';

/** Writes a length for people: in inches or millimetres, as they chose. */
export type LengthText = (mm: number) => string;

const size = (length: LengthText, of: { readonly length: number; readonly width: number }): string =>
  `${length(of.length)} × ${length(of.width)}`;

const WHY: Readonly<Record<UnplacedReason, (one: Unplaced, length: LengthText) => string>> = {
  'no-stock-of-material': ({ material }) =>
    `no sheet of ${material === '' ? 'its material' : material} is in the stock list`,
  'larger-than-every-sheet': ({ largest }, length) =>
    `it is larger than every sheet${largest === null ? '' : `; the largest offers ${size(length, largest)} after trimming`}`,
  'fits-only-turned': ({ largest }, length) =>
    `it fits only turned, and its grain forbids that${largest === null ? '' : `; the largest sheet offers ${size(length, largest)} after trimming`}`,
  'breaks-saw-limits': () => 'no cuts within the limits of the saw free it from any sheet',
  'stock-used-up': () => 'the sheets in stock are used up',
  'bad-size': () => 'its length, width or quantity is not a number above zero',
  'too-many-parts': () => 'there are more parts than can be laid out at once; make a second job of the rest',
};

/** Why these parts are not in the layout, in one sentence. */
export const sayUnplaced = (one: Unplaced, length: LengthText): string =>
  `${one.count} of ${one.mark} (${size(length, one)}) ${one.count === 1 ? 'is' : 'are'} missing: ${WHY[one.reason](one, length)}.`;

const NOTES: Readonly<Record<LayoutNote['code'], (about: string) => string>> = {
  'matched-group-split': (about) => `The matched parts ${about} do not fit in one strip and were split over several.`,
  'stock-left-out': (about) =>
    `The sheet ${about} was left out: its size, quantity or price is not usable, or trimming leaves nothing of it.`,
  'setting-replaced': (about) => `The setting ${about} is not a length of zero or more and was not used.`,
};

/** A remark on the layout in one sentence. */
export const sayNote = ({ code, about }: LayoutNote): string => NOTES[code](about);

/** How good the layout is, in one sentence. */
export const sayProof = ({ verdict, sheetsAbove }: Proof): string => {
  if (verdict === 'optimal') return 'Optimal: no possible layout is cheaper.';
  if (verdict === 'optimal-2-stage') return 'Optimal for 2-stage cutting: no two-stage layout is cheaper.';
  if (sheetsAbove === 0) return 'No possible layout has fewer sheets; a cheaper mix of sheets is not ruled out.';
  return `Within ${sheetsAbove} ${sheetsAbove === 1 ? 'sheet' : 'sheets'} of any possible layout.`;
};

/** All that must be said beside the drawings: the proof, what is missing and why, remarks. */
export const sayLayout = (layout: Layout, length: LengthText): readonly string[] => [
  sayProof(layout.proof),
  ...layout.unplaced.map((one) => sayUnplaced(one, length)),
  ...layout.notes.map(sayNote),
];
