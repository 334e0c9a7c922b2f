import { CutForest } from './cut-forest.ts';
import { loadSolution } from './load.ts';
import { findPlace, Place } from './place.ts';
import type { Piece, Problem, SheetKind } from './problem.ts';
import { SearchRandom } from './search-random.ts';
import { readSolution, type Solution, type SolvedPiece } from './solution.ts';

const piecesIn = (piece: SolvedPiece): readonly number[] => {
  if (piece.kind === 'part') return [piece.piece];
  return piece.kind === 'rest' ? [] : piece.pieces.flatMap(piecesIn);
};

/** Puts the piece on what is open, else on the smallest offcut that takes it. */
const putOn = (forest: CutForest, number: number, kinds: readonly number[], place: Place): boolean => {
  // Nothing is overlooked, so that no chance is asked for.
  const random = new SearchRandom(0);
  findPlace(forest, number, 0, random, place);
  for (const kind of kinds) {
    if (place.rest !== null) break;
    const { count, length, width } = forest.problem.sheets[kind] as SheetKind;
    const piece = forest.problem.pieces[number] as Piece;
    if ((forest.opened[kind] as number) >= count || length * width < piece.area) continue;
    const root = forest.open(kind);
    findPlace(forest, number, 0, random, place);
    if (place.rest === null) forest.clear(root);
  }
  if (place.rest === null) return false;
  forest.insert(number, place.rest, place.turned, place.crosscutFirst);
  return true;
};

/**
 * The same layout with offcuts in hand used first: whatever lies on another sheet or nowhere and fits on an offcut, large
 * pieces before small ones, goes there. It costs no more; sheets that come out empty are saved. The very same layout where
 * nothing moves.
 */
export const offcutsFirst = (problem: Problem, solution: Solution): Solution => {
  const { sheets, pieces } = problem;
  const isFirst = (kind: number): boolean => (sheets[kind] as SheetKind).first;
  const kinds = [...sheets.keys()].filter(isFirst).sort((a, b) => (sheets[a]?.area ?? 0) - (sheets[b]?.area ?? 0));
  if (kinds.length === 0) return solution;
  const others = solution.sheets.filter(({ kind }) => !isFirst(kind));
  const waiting = [...others.flatMap(({ tree }) => piecesIn(tree)), ...solution.leftOut];
  const inHand = new CutForest(problem);
  loadSolution(inHand, { sheets: solution.sheets.filter(({ kind }) => isFirst(kind)), leftOut: [], cost: 0 });
  const place = new Place();
  const moved = new Set(
    waiting
      .toSorted((a, b) => (pieces[b] as Piece).area - (pieces[a] as Piece).area || a - b)
      .filter((number) => putOn(inHand, number, kinds, place)),
  );
  if (moved.size === 0) return solution;
  const bought = new CutForest(problem);
  loadSolution(bought, { sheets: others, leftOut: [], cost: 0 });
  for (const number of moved) {
    const node = bought.places[number];
    if (node) bought.clear(node);
  }
  const [used, rest] = [readSolution(inHand), readSolution(bought)];
  return {
    sheets: [...used.sheets, ...rest.sheets],
    leftOut: solution.leftOut.filter((number) => !moved.has(number)),
    cost: used.cost + rest.cost,
  };
};
