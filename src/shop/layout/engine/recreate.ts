import type { CutForest } from './cut-forest.ts';
import { findPlace, type Place } from './place.ts';
import type { Piece, Problem, SheetKind } from './problem.ts';
import type { SearchRandom } from './search-random.ts';

/** The orders in which left-out pieces go back, largest key first. */
export const pieceOrders = ({ pieces }: Problem): readonly Float64Array[] => [
  Float64Array.from(pieces, ({ area }) => area),
  Float64Array.from(pieces, ({ length, width }) => Math.max(length, width)),
  Float64Array.from(pieces, ({ length, width }) => length + width),
  Float64Array.from(pieces, ({ length, width }) => Math.min(length, width)),
  Float64Array.from(pieces, ({ length }) => length),
  Float64Array.from(pieces, ({ width }) => width),
];

const SHORT_LIST = 64;

/** Sorts piece numbers by falling key; equal keys keep their order. Short lists, the usual case, by insertion. */
export const sortByKey = (list: number[], keys: Float64Array): void => {
  if (list.length > SHORT_LIST) {
    list.sort((a, b) => (keys[b] as number) - (keys[a] as number));
    return;
  }
  for (let i = 1; i < list.length; i++) {
    const piece = list[i] as number;
    const key = keys[piece] as number;
    let j = i - 1;
    while (j >= 0 && (keys[list[j] as number] as number) < key) {
      list[j + 1] = list[j] as number;
      j--;
    }
    list[j + 1] = piece;
  }
};

const holds = (sheet: SheetKind, piece: Piece): boolean =>
  (piece.straight && piece.length <= sheet.length && piece.width <= sheet.width) ||
  (piece.turned && piece.width <= sheet.length && piece.length <= sheet.width);

/** Chosen afresh around the true price, so that every size gets its turn. */
const LEAST_FACTOR = 0.7;
const FACTOR_SPAN = 0.6;

/** The kind of sheet to open for a piece: affordable, in stock, cheap for its area; -1 when there is none. */
export const kindFor = (forest: CutForest, piece: Piece, limit: number, random: SearchRandom): number => {
  const { sheets } = forest.problem;
  let best = -1;
  let least = Number.POSITIVE_INFINITY;
  for (let kind = 0; kind < sheets.length; kind++) {
    const sheet = sheets[kind] as SheetKind;
    if ((forest.opened[kind] as number) >= sheet.count || forest.cost + sheet.price >= limit) continue;
    if (!holds(sheet, piece)) continue;
    const factor = sheets.length === 1 ? 1 : LEAST_FACTOR + FACTOR_SPAN * random.next();
    const price = (sheet.price / sheet.area) * factor;
    // Of offcuts in hand, which cost nothing, the smallest.
    if (price < least || (price === 0 && least === 0 && sheet.area < (sheets[best] as SheetKind).area)) {
      least = price;
      best = kind;
    }
  }
  return best;
};

/**
 * Puts left-out pieces back in the order in which they stand; what finds no place below the price limit stays out. False,
 * and the forest half done, as soon as more area than `most` must stay out.
 */
export const recreate = (
  forest: CutForest,
  limit: number,
  blink: number,
  random: SearchRandom,
  place: Place,
  most: number,
): boolean => {
  const { leftOut, problem } = forest;
  let kept = 0;
  let keptArea = 0;
  for (let i = 0; i < leftOut.length; i++) {
    const number = leftOut[i] as number;
    const piece = problem.pieces[number] as Piece;
    findPlace(forest, number, blink, random, place);
    if (place.rest === null) {
      const kind = kindFor(forest, piece, limit, random);
      if (kind >= 0) {
        const root = forest.open(kind);
        findPlace(forest, number, blink, random, place);
        if (place.rest === null) findPlace(forest, number, 0, random, place);
        // A place overlooked before, or none within the saw's limits: the sheet is not needed.
        if (place.rest !== root) forest.clear(root);
      }
    }
    if (place.rest === null) {
      leftOut[kept++] = number;
      keptArea += piece.area;
      if (keptArea > most) return false;
    } else forest.insert(number, place.rest, place.turned, place.crosscutFirst);
  }
  leftOut.length = kept;
  // Areas of many large pieces add up past the whole numbers that a double holds exactly.
  if (kept === 0) forest.leftOutArea = 0;
  return true;
};
