import { compareText, groupBy, ROUNDING_MM } from '../base/index.ts';
import type { Catalog, HouseRules, Material } from '../catalog/index.ts';
import { type StockPiece, type StockRow, stockOfMaterial } from '../design/index.ts';
import type { CutListRow } from './cut-list.ts';
import { type KeepRule, type LayoutJob, type LayoutPart, type StockSheet, trimAll } from './layout/index.ts';

/** What is cut from one board: one material in one thickness. Plain data, so that a worker can have it. */
export interface Board {
  /** Made of the material's id: starts the names of files. No two boards of one design share it. */
  readonly key: string;
  readonly material: string;
  readonly materialName: string;
  readonly thickness: number;
  readonly parts: readonly BoardPart[];
  readonly job: LayoutJob;
}

/** What a drawing or a table says of a mark. */
export interface BoardPart {
  readonly mark: string;
  readonly name: string;
  readonly grain: CutListRow['grain'];
}

const isMetal = (material: Material | undefined): boolean => material?.kind === 'aluminium';

const keepRule = (metal: boolean, rules: HouseRules): KeepRule => ({
  minSide: rules.value('offcut-min-side'),
  minAreaMm2: rules.value(metal ? 'offcut-min-area-metal' : 'offcut-min-area'),
  valueShare: rules.value('offcut-value-share'),
});

/** Rounds of cuts that the engine knows: two, three, or as many as it takes. */
const stagesOf = (most: number): LayoutJob['stages'] => (most < 3 ? 2 : most < 4 ? 3 : 'any');

const partOf = (row: CutListRow, material: string): LayoutPart => ({
  mark: row.mark,
  length: row.cutLength,
  width: row.cutWidth,
  quantity: row.quantity,
  grain: row.grain,
  material,
});

const sheetOf = ({ name, lengthMm, widthMm, quantity, price, offcut }: StockPiece, material: string): StockSheet => ({
  name,
  length: lengthMm,
  width: widthMm,
  quantity,
  price,
  material,
  offcut,
});

interface Making {
  readonly rows: readonly CutListRow[];
  readonly material: Material | undefined;
  /** What the board is called. */
  readonly name: string;
  /** Of the design; those of other materials are left alone. */
  readonly stock: readonly StockRow[];
  readonly rules: HouseRules;
}

/** Stock is as thick as the catalog says: parts of another thickness are cut from what the catalog sells. */
const stockOf = ({ rows, material, name, stock }: Making): readonly StockSheet[] => {
  if (material === undefined) return [];
  const thickness = rows[0]?.thickness ?? material.thicknessMm;
  const same = Math.abs(thickness - material.thicknessMm) <= ROUNDING_MM;
  return stockOfMaterial(same ? stock : [], material).map((piece) => sheetOf(piece, name));
};

const jobOf = (making: Making): LayoutJob => {
  const { rows, material, name, rules } = making;
  const metal = isMetal(material);
  return {
    parts: rows.map((row) => partOf(row, name)),
    stock: stockOf(making),
    cut: metal ? 'shear' : 'saw',
    kerf: rules.value('saw-kerf'),
    trim: trimAll(rules.value(metal ? 'sheet-trim-metal' : 'sheet-trim')),
    stages: stagesOf(rules.value('cut-stages-max')),
    ripLimit: rules.value('first-cut-max'),
    longestCut: rules.value('cut-length-max'),
    // A strip narrower than some of its own thicknesses twists in the shear.
    minStrip: metal ? rules.value('min-strip-metal-share') * (material?.thicknessMm ?? 0) : rules.value('min-strip'),
    keep: keepRule(metal, rules),
  };
};

/**
 * One job a board, in the order of the cut list, from its cut sizes. A row with grain lies along the sheet's length,
 * one without may be turned. Wood and plastic are sawn, aluminium is sheared, which takes nothing away. Kerf, trim,
 * limits of the saw and what is kept come from the house rules, sheets and offcuts from the design and the catalog; a
 * material that the catalog does not have gets no sheets, and its parts come back as not placed.
 */
export const sheetJobs = (
  rows: readonly CutListRow[],
  catalog: Catalog,
  rules: HouseRules,
  stock: readonly StockRow[],
): readonly Board[] => {
  const boards = [...groupBy(rows, ({ material, thickness }) => `${material} ${thickness}`).values()];
  const keys = new Set<string>();
  return boards.flatMap((members) => {
    const [first] = members;
    if (first === undefined) return [];
    const record = catalog.materials.get(first.material);
    // Ids of the catalog can stand in a file name as they are; any other text cannot.
    const stem = first.material.replace(/[^A-Za-z0-9]+/g, '-').replace(/^-+|-+$/g, '') || 'board';
    let key = stem;
    for (let n = 2; keys.has(key); n++) key = `${stem}-no${n}`;
    keys.add(key);
    return [
      {
        key,
        material: first.material,
        materialName: first.materialName,
        thickness: first.thickness,
        parts: members
          .map(({ mark, name, grain }) => ({ mark, name, grain }))
          .sort((a, b) => compareText(a.mark, b.mark)),
        job: jobOf({ rows: members, material: record, name: first.materialName, stock, rules }),
      },
    ];
  });
};
