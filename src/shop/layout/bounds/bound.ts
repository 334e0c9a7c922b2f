import type { Piece, Problem, SheetKind } from '../engine/problem.ts';
import type { BoundKind } from '../layout.ts';
import { dualFeasibleBound, roundUp } from './dual-feasible.ts';

/** What no layout can beat, whatever its cuts. */
export interface Bound {
  readonly sheets: number;
  readonly price: number;
  readonly by: BoundKind;
}

/** Least of `worth` needed to cover an area, the sheets with the least worth for their area first. */
const cover = (area: number, sheets: readonly SheetKind[], worth: (sheet: SheetKind) => number): number => {
  let left = area;
  let sum = 0;
  for (const sheet of [...sheets].sort((a, b) => worth(a) / a.area - worth(b) / b.area)) {
    const there = sheet.count * sheet.area;
    const taken = Math.min(left, there);
    sum += (taken / sheet.area) * worth(sheet);
    left -= taken;
    if (left <= 0) break;
  }
  return sum;
};

/** Prices that only come in whole multiples of one price, as with one size of sheet, round up. */
const roundPrice = (price: number, sheets: readonly SheetKind[]): number => {
  const priced = [...new Set(sheets.map((sheet) => sheet.price).filter((each) => each > 0))];
  const only = priced[0];
  return priced.length === 1 && only !== undefined ? roundUp(price / only) * only : price;
};

/**
 * Lower bounds on sheets and price. One kind of sheet: pairs of dual feasible functions (the area bound is one of
 * them). Several kinds: area covered by the largest, and by the cheapest for their area.
 */
export const boundOf = ({ sheets }: Problem, pieces: readonly Piece[]): Bound => {
  const area = pieces.reduce((sum, piece) => sum + piece.area, 0);
  const only = sheets[0];
  if (pieces.length === 0 || only === undefined) return { sheets: 0, price: 0, by: 'area' };
  const bySheets = roundUp(cover(area, sheets, () => 1));
  if (sheets.length > 1) {
    return {
      sheets: bySheets,
      price: roundPrice(
        cover(area, sheets, (sheet) => sheet.price),
        sheets,
      ),
      by: 'area',
    };
  }
  const dual = dualFeasibleBound(pieces, only);
  const least = Math.max(bySheets, dual);
  return { sheets: least, price: least * only.price, by: dual > bySheets ? 'dual-feasible' : 'area' };
};
