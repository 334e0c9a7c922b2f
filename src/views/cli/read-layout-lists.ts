import type { Result } from '../../base/index.ts';
import type { Catalog } from '../../catalog/index.ts';
import type { StockRow } from '../../design/index.ts';
import { sayListProblem } from '../../says/index.ts';
import { type LayoutPart, readDesignStock, readPartsList, readStockList, type StockSheet } from '../../shop/index.ts';
import { BadInput, type Complaint } from './bad-input.ts';
import { readTextFile } from './read-text-file.ts';

export interface LayoutLists {
  readonly parts: readonly LayoutPart[];
  readonly stock: readonly StockSheet[];
}

const textOf = (path: string): string => readTextFile(path, 'a CSV file');

const complaintsOf = (file: string, read: Result<unknown>): readonly Complaint[] =>
  read.ok ? [] : read.error.map((problem) => ({ file, at: problem.at, says: sayListProblem(problem) }));

/** Reads a parts list and a stock list. Throws BadInput with every row that cannot be read, of both files. */
export const readLayoutLists = (partsPath: string, stockPath: string): LayoutLists => {
  const parts = readPartsList(textOf(partsPath));
  const sheets = readStockList(textOf(stockPath));
  if (!parts.ok || !sheets.ok)
    throw new BadInput([...complaintsOf(partsPath, parts), ...complaintsOf(stockPath, sheets)]);
  // A stock list without material and thickness serves every part.
  const plain = sheets.value.every(({ material }) => material === '');
  const materials = [...new Set(parts.value.map(({ material }) => material ?? ''))];
  const stock =
    plain && materials.length === 1
      ? sheets.value.map((sheet) => ({ ...sheet, material: materials[0] ?? '' }))
      : sheets.value;
  return { parts: parts.value, stock };
};

/** Reads a list of sheets and offcuts for a design. Throws BadInput with every cell that cannot be read. */
export const readStockFile = (path: string, catalog: Catalog): readonly Omit<StockRow, 'id'>[] => {
  const read = readDesignStock(textOf(path), catalog);
  if (!read.ok) throw new BadInput(complaintsOf(path, read));
  return read.value;
};
