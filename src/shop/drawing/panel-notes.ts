import {
  compareText,
  formatInches,
  formatMillimetres,
  type LengthUnits,
  sameLength,
  type Vec2,
} from '../../base/index.ts';
import type { CutoutOutline, Panel, PanelCut } from '../../fitout/index.ts';
import { BORE_FRACTION } from '../rounding.ts';
import { sizeText } from './paper-words.ts';
import type { TableColumn } from './table.ts';

/** A tag beside a cut and its line in a table. */
export interface Note {
  readonly tag: string;
  /** What it stands at, in panel coordinates, and how far that reaches from it. */
  readonly at: Vec2;
  readonly half: Vec2;
  readonly kind: 'hole' | 'recess' | 'cutout';
  readonly cells: readonly string[];
}

export interface NoteTable {
  readonly title: string;
  readonly columns: readonly TableColumn[];
  readonly notes: readonly Note[];
}

type Hole = Extract<PanelCut, { kind: 'hole' }>;
type Cutout = Extract<PanelCut, { kind: 'cutout' }>;
export type Recess = Exclude<PanelCut, { kind: 'hole' } | { kind: 'cutout' }>;

const byPlace = (a: Vec2, b: Vec2): number => a[0] - b[0] || a[1] - b[1];
const middleOf = (from: Vec2, to: Vec2): Vec2 => [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
const halfOf = (from: Vec2, to: Vec2): Vec2 => [(to[0] - from[0]) / 2, (to[1] - from[1]) / 2];

/** A place or a size that is bored, where a finer fraction is wanted. */
const boreText = (mm: number, units: LengthUnits): string =>
  units === 'in' ? formatInches(mm, BORE_FRACTION) : formatMillimetres(mm);

const column = (title: string, width: number, align: TableColumn['align'] = 'right'): TableColumn => ({
  title,
  width,
  align,
});

/** By face and bore, then line by line: along the columns where holes stand in few columns, along the rows otherwise. */
export const holesOf = (panel: Panel): readonly Hole[] => {
  const holes = panel.cuts.filter((cut): cut is Hole => cut.kind === 'hole');
  const lines = (axis: 0 | 1): number => new Set(holes.map(({ at }) => Math.round(at[axis]))).size;
  const [first, second] = lines(0) <= lines(1) ? ([0, 1] as const) : ([1, 0] as const);
  return holes.sort(
    (a, b) =>
      compareText(a.face, b.face) ||
      a.diameter - b.diameter ||
      a.at[first] - b.at[first] ||
      a.at[second] - b.at[second],
  );
};

export const recessesOf = (panel: Panel): readonly Recess[] =>
  panel.cuts
    .filter((cut): cut is Recess => cut.kind !== 'hole' && cut.kind !== 'cutout')
    .sort((a, b) => compareText(a.face, b.face) || compareText(a.kind, b.kind) || byPlace(a.from, b.from));

const holeTable = (panel: Panel, units: LengthUnits): NoteTable => ({
  title: 'Holes',
  columns: [
    column('tag', 7, 'left'),
    column('x', 12),
    column('y', 12),
    column('Ø', 9),
    column('deep', 11),
    column('face', 6),
    column('for', 21, 'left'),
  ],
  notes: holesOf(panel).map((hole, i): Note => {
    const tag = `h${i + 1}`;
    const [x, y, bore] = [hole.at[0], hole.at[1], hole.diameter].map((mm) => boreText(mm, units));
    const deep = hole.depth === null ? 'through' : sizeText(hole.depth, units);
    const face = hole.depth === null ? '–' : hole.face;
    const half: Vec2 = [hole.diameter / 2, hole.diameter / 2];
    return { tag, at: hole.at, half, kind: 'hole', cells: [tag, x ?? '', y ?? '', bore ?? '', deep, face, hole.why] };
  }),
});

const recessTable = (panel: Panel, sectionOf: (recess: Recess) => string, units: LengthUnits): NoteTable => ({
  title: 'Dados, grooves, rabbets, pockets',
  columns: [
    column('tag', 6, 'left'),
    column('x', 12),
    column('y', 12),
    column('along x', 13),
    column('along y', 13),
    column('deep', 8),
    column('face', 6),
    column('sec.', 6),
  ],
  notes: recessesOf(panel).map((recess, i): Note => {
    const tag = `r${i + 1}`;
    const { from, to } = recess;
    const sizes = [from[0], from[1], to[0] - from[0], to[1] - from[1], recess.depth].map((mm) => sizeText(mm, units));
    const cells = [tag, ...sizes, recess.face, sectionOf(recess)];
    return { tag, at: middleOf(from, to), half: halfOf(from, to), kind: 'recess', cells };
  }),
});

const cutoutBox = (outline: CutoutOutline): { readonly from: Vec2; readonly to: Vec2 } => {
  if (outline.shape === 'rectangle') return outline;
  if (outline.shape === 'circle') {
    const r = outline.diameter / 2;
    return { from: [outline.at[0] - r, outline.at[1] - r], to: [outline.at[0] + r, outline.at[1] + r] };
  }
  const xs = outline.corners.map(([x]) => x);
  const ys = outline.corners.map(([, y]) => y);
  return { from: [Math.min(...xs), Math.min(...ys)], to: [Math.max(...xs), Math.max(...ys)] };
};

const cutoutSize = (outline: CutoutOutline, units: LengthUnits): string => {
  const { from, to } = cutoutBox(outline);
  if (outline.shape === 'circle') return `Ø ${boreText(outline.diameter, units)}`;
  const size = `${sizeText(to[0] - from[0], units)} × ${sizeText(to[1] - from[1], units)}`;
  return outline.shape === 'rectangle' && !sameLength(outline.cornerRadius, 0)
    ? `${size} r ${sizeText(outline.cornerRadius, units)}`
    : size;
};

const cutoutTable = (panel: Panel, units: LengthUnits): NoteTable => ({
  title: 'Cut-outs: x, y of the middle',
  columns: [column('tag', 6, 'left'), column('x', 12), column('y', 12), column('size', 25), column('for', 21, 'left')],
  notes: panel.cuts
    .filter((cut): cut is Cutout => cut.kind === 'cutout')
    .map((cut) => ({ cut, box: cutoutBox(cut.outline) }))
    .map(({ cut, box }) => ({ cut, box, at: middleOf(box.from, box.to) }))
    .sort((a, b) => (sameLength(a.at[1], b.at[1]) ? a.at[0] - b.at[0] : a.at[1] - b.at[1]))
    .map(({ cut, box, at }, i): Note => {
      const tag = `c${i + 1}`;
      const cells = [tag, boreText(at[0], units), boreText(at[1], units), cutoutSize(cut.outline, units), cut.why];
      return { tag, at, half: halfOf(box.from, box.to), kind: 'cutout', cells };
    }),
});

/** Every cut of the part with its tag, in tables: recesses, then cut-outs, then holes. Empty tables are left out. */
export const noteTables = (
  panel: Panel,
  sectionOf: (recess: Recess) => string,
  units: LengthUnits,
): readonly NoteTable[] =>
  [recessTable(panel, sectionOf, units), cutoutTable(panel, units), holeTable(panel, units)].filter(
    ({ notes }) => notes.length > 0,
  );
