import { type Problem, pathText } from '../base/index.ts';
import type { Catalog, Material } from '../catalog/index.ts';
import type { NodeId } from './parts.ts';
import type { StockRow } from './stock.ts';

/** A size in which a material can be had. Lengths mm, the length along the grain; price in the shop's currency. */
export interface StockPiece {
  readonly name: string;
  readonly lengthMm: number;
  readonly widthMm: number;
  /** How many there are; null: as many as wanted. */
  readonly quantity: number | null;
  readonly price: number;
  readonly offcut: boolean;
  /** The row of the design; null for a sheet of the catalog. */
  readonly id: NodeId | null;
}

const CENTS = 100;
const areaOf = ({ lengthMm, widthMm }: { readonly lengthMm: number; readonly widthMm: number }): number =>
  lengthMm * widthMm;

/** By area, at the price of the catalog's sheet that is nearest in area: the same size costs what it costs there. */
const priceByArea = (row: StockRow, { sheets }: Material): number => {
  const area = areaOf(row);
  const [nearest] = sheets.toSorted((a, b) => Math.abs(areaOf(a) - area) - Math.abs(areaOf(b) - area));
  return nearest === undefined ? 0 : Math.round((CENTS * nearest.price * area) / areaOf(nearest)) / CENTS;
};

/** Equal names get a number behind them, so that each can be told from the others at the rack. */
const namedApart = (pieces: readonly StockPiece[]): readonly StockPiece[] => {
  const taken = new Set<string>();
  return pieces.map((piece) => {
    let name = piece.name;
    for (let n = 2; taken.has(name); n++) name = `${piece.name} no. ${n}`;
    taken.add(name);
    return name === piece.name ? piece : { ...piece, name };
  });
};

/**
 * What there is of a material: the rows of the design where any of them is a sheet, else the sheets of the catalog;
 * offcuts in hand always besides, and first.
 */
export const stockOfMaterial = (rows: readonly StockRow[], material: Material): readonly StockPiece[] => {
  const own = rows
    .filter((row) => row.material === material.id)
    .map(
      (row): StockPiece => ({
        name: row.name,
        lengthMm: row.lengthMm,
        widthMm: row.widthMm,
        quantity: row.quantity,
        price: row.price ?? (row.offcut ? 0 : priceByArea(row, material)),
        offcut: row.offcut,
        id: row.id,
      }),
    );
  const offcuts = own.filter(({ offcut }) => offcut);
  const sheets = own.filter(({ offcut }) => !offcut);
  const bought = material.sheets.map((sheet): StockPiece => ({ ...sheet, quantity: null, offcut: false, id: null }));
  return namedApart([...offcuts, ...(sheets.length > 0 ? sheets : bought)]);
};

/** Rows of a material that the catalog does not have: they serve no part. */
export const stockProblems = (rows: readonly StockRow[], catalog: Catalog): readonly Problem[] =>
  rows.flatMap(({ material }, i) =>
    catalog.materials.has(material)
      ? []
      : [{ at: pathText(['stock', i, 'material']), code: 'unknown-material', got: material }],
  );
