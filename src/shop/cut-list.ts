import { compareText } from '../base/index.ts';
import type { Catalog, HouseRules } from '../catalog/index.ts';
import type { EdgeBands, FitOut, Panel } from '../fitout/index.ts';
import { cutSize } from './cut-size.ts';
import { edgeWork } from './edge-work.ts';
import type { MarkedPart, Marks } from './marks.ts';
import { type Operation, operationsOf } from './operations.ts';
import { counted, type NameOf, placesOf, sharedName } from './places.ts';

/** One line of the cut list: a distinct part, how many, and all that the saw and the bench must know of it. */
export interface CutListRow {
  readonly mark: string;
  readonly quantity: number;
  readonly name: string;
  /** Carcass and opening of every piece. */
  readonly where: string;
  readonly carcass: string;
  readonly material: string;
  readonly materialName: string;
  /** As measured. */
  readonly thickness: number;
  /** Length first, along the grain. */
  readonly finishedLength: number;
  readonly finishedWidth: number;
  readonly cutLength: number;
  readonly cutWidth: number;
  readonly grain: Panel['grain'];
  readonly bands: EdgeBands;
  readonly hand: Panel['hand'];
  readonly operations: readonly Operation[];
  /** Drawings carry the number of their part. */
  readonly drawing: string;
  readonly massEachKg: number;
  readonly massTotalKg: number;
  readonly note: string;
}

export interface CutListInput {
  readonly fitout: FitOut;
  readonly marks: Marks;
  readonly catalog: Catalog;
  readonly rules: HouseRules;
  /** What people call carcasses and openings; without it, the names in the fit-out. */
  readonly names?: NameOf;
}

/** Materials together, thick before thin, large before small, then by mark. */
const byStack = (a: CutListRow, b: CutListRow): number =>
  compareText(a.materialName, b.materialName) ||
  compareText(a.material, b.material) ||
  b.thickness - a.thickness ||
  b.cutLength * b.cutWidth - a.cutLength * a.cutWidth;

const noteOf = (part: MarkedPart, unknownBands: readonly string[], materialKnown: boolean): string =>
  [
    ...(materialKnown ? [] : ['material is not in the catalog']),
    ...unknownBands.map((band) => `band ${band} has no thickness in the catalog: cut size not reduced for it`),
    ...(part.panel.outline === null ? [] : ['shaped: see drawing']),
    ...edgeWork(part.panel),
  ].join('; ');

/**
 * The cut list: one row a mark. Quantities over all rows are the number of panels, and masses over all rows are the
 * mass of all panels. Sorted for the stack of sheets: by material, then thickness, then size.
 */
export const cutList = ({ fitout, marks, catalog, rules, names }: CutListInput): readonly CutListRow[] => {
  const places = placesOf(fitout, names);
  const rowOf = (part: MarkedPart): CutListRow => {
    const { panel, panels, mark } = part;
    const material = catalog.materials.get(panel.material);
    const cut = cutSize(panel, catalog, rules);
    return {
      mark,
      quantity: panels.length,
      name: sharedName(panels, places),
      where: counted(panels.map((each) => places.of(each))),
      carcass: part.carcass,
      material: panel.material,
      materialName: material?.name ?? panel.material,
      thickness: panel.thickness,
      finishedLength: panel.length,
      finishedWidth: panel.width,
      cutLength: cut.length,
      cutWidth: cut.width,
      grain: panel.grain,
      bands: panel.bands,
      hand: panel.hand,
      operations: operationsOf(panel),
      drawing: mark,
      massEachKg: panel.massKg,
      massTotalKg: panels.reduce((sum, { massKg }) => sum + massKg, 0),
      note: noteOf(part, cut.unknownBands, material !== undefined),
    };
  };
  return marks.parts.map(rowOf).sort(byStack);
};
