import type { Catalog } from '../../catalog/index.ts';
import { type Design, type StockRow, stockOfMaterial } from '../../design/index.ts';
import { type ListColumn, listCsv } from '../list-columns.ts';
import { toCent } from '../rounding.ts';
import type { BoardLayout, SheetLayouts } from '../sheet-layouts.ts';

type Row = Omit<StockRow, 'id'>;

const MOST_NAME = 200;
const LETTERS = 'abcdefghijklmnopqrstuvwxyz';
const TENTHS = 10;

/** Never more than there is: the saw leaves no hundredths. */
const downToTenth = (mm: number): number => Math.floor(mm * TENTHS) / TENTHS;

/** How many of each row of the design the layouts use, by its id; a row that they do not know is not in it. */
export const stockUsed = (design: Design, { boards }: SheetLayouts, catalog: Catalog): ReadonlyMap<string, number> => {
  const used = new Map<string, number>();
  for (const { board, layout } of boards) {
    const material = catalog.materials.get(board.material);
    if (material === undefined) continue;
    for (const { id, name } of stockOfMaterial(design.stock, material)) {
      const count = layout.sheets.filter(({ stock }) => stock === name).length;
      if (id !== null) used.set(id, (used.get(id) ?? 0) + count);
    }
  }
  return used;
};

/** What is kept of one board: each named after the sheet that it comes from, to be written on it. */
const keptOf = ({ title }: Design, { board, layout }: BoardLayout): readonly Row[] =>
  layout.sheets.flatMap(({ offcuts }, at) =>
    offcuts.map(({ length, width }, i): Row => {
      const letter = offcuts.length === 1 ? '' : (LETTERS[i] ?? `-${i + 1}`);
      return {
        material: board.material,
        name: `${title.slice(0, MOST_NAME / 2)}, ${board.key} ${at + 1}${letter}`.slice(0, MOST_NAME),
        lengthMm: downToTenth(length),
        widthMm: downToTenth(width),
        quantity: 1,
        price: null,
        offcut: true,
      };
    }),
  );

/**
 * What the shop has once this design is cut: its rows less what the layouts use, and the offcuts that they leave. Rows
 * without a count stay as they are: they say what can be bought. For the next design: of this one they are not cut.
 */
export const stockLeft = (design: Design, layouts: SheetLayouts, catalog: Catalog): readonly Row[] => {
  const used = stockUsed(design, layouts, catalog);
  const rows = design.stock.flatMap(({ id, ...row }): readonly Row[] => {
    const quantity = row.quantity === null ? null : Math.max(0, row.quantity - (used.get(id) ?? 0));
    // An offcut that is gone is gone; a sheet that is used up keeps the catalog's from coming back.
    return row.offcut && quantity === 0 ? [] : [{ ...row, quantity }];
  });
  return [...rows, ...layouts.boards.flatMap((laid) => keptOf(design, laid))];
};

const columns = (catalog: Catalog): readonly ListColumn<Row>[] => [
  { title: 'name', cell: ({ name }) => name },
  { title: 'length', cell: ({ lengthMm }) => downToTenth(lengthMm) },
  { title: 'width', cell: ({ widthMm }) => downToTenth(widthMm) },
  { title: 'qty', cell: ({ quantity }) => quantity },
  { title: 'price', cell: ({ price }) => (price === null ? null : toCent(price)) },
  { title: 'material', cell: ({ material }) => material },
  { title: 'thickness', cell: ({ material }) => catalog.materials.get(material)?.thicknessMm ?? null },
  { title: 'offcut', cell: ({ offcut }) => (offcut ? 'yes' : 'no') },
];

/** What is left as a file that the next design reads; lengths in millimetres. */
export const stockLeftCsv = (left: readonly Row[], catalog: Catalog): string => listCsv(columns(catalog), left);
