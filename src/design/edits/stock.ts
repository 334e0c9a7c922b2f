import type { Material } from '../../catalog/index.ts';
import type { Design } from '../design.ts';
import { freshIds } from '../nodes.ts';
import type { NodeId } from '../parts.ts';
import type { StockRow } from '../stock.ts';
import { itemOf } from './change.ts';

const FRESH_OFFCUT_MM = [800, 400] as const;

/** A name that no row has yet: `Offcut 3`, `Sheet 2`. */
const freeName = (rows: readonly StockRow[], word: string): string => {
  const taken = new Set(rows.map(({ name }) => name));
  let n = 1;
  while (taken.has(`${word} ${n}`)) n++;
  return `${word} ${n}`;
};

/** One offcut of the material, to be given its true size and name. */
export const freshOffcut = (design: Design, material: Material): Omit<StockRow, 'id'> => ({
  material: material.id,
  name: freeName(design.stock, 'Offcut'),
  lengthMm: FRESH_OFFCUT_MM[0],
  widthMm: FRESH_OFFCUT_MM[1],
  quantity: 1,
  price: null,
  offcut: true,
});

/** As many sheets as wanted, of the first size in which the catalog has the material, at its price. */
export const freshSheet = (design: Design, material: Material): Omit<StockRow, 'id'> => {
  const [first] = material.sheets;
  return {
    ...freshOffcut(design, material),
    name: freeName(design.stock, 'Sheet'),
    lengthMm: first?.lengthMm ?? FRESH_OFFCUT_MM[0],
    widthMm: first?.widthMm ?? FRESH_OFFCUT_MM[1],
    quantity: null,
    offcut: false,
  };
};

/** Puts rows behind those that are there. */
export const addStock = (
  design: Design,
  rows: readonly Omit<StockRow, 'id'>[],
): { readonly design: Design; readonly ids: readonly NodeId[] } => {
  const newId = freshIds(design);
  const added = rows.map((row) => ({ ...row, id: newId('stock') }));
  return { design: { ...design, stock: [...design.stock, ...added] }, ids: added.map(({ id }) => id) };
};

/** A list that takes the place of the present one. */
export const replaceStock = (design: Design, rows: readonly Omit<StockRow, 'id'>[]): Design =>
  addStock({ ...design, stock: [] }, rows).design;

/** A sheet of which there are as many as wanted becomes one offcut. */
export const changeStock = (design: Design, id: NodeId, change: Partial<Omit<StockRow, 'id'>>): Design => {
  const row = { ...itemOf(design.stock, id, 'row of stock'), ...change };
  const next = row.offcut && row.quantity === null ? { ...row, quantity: 1 } : row;
  return { ...design, stock: design.stock.map((each) => (each.id === id ? next : each)) };
};

export const removeStock = (design: Design, id: NodeId): Design => {
  itemOf(design.stock, id, 'row of stock');
  return { ...design, stock: design.stock.filter((row) => row.id !== id) };
};
