import { groupBy } from '../../../base/index.ts';
import type { Problem } from './problem.ts';
import type { Solution, SolvedPiece, SolvedSheet } from './solution.ts';

const piecesIn = (piece: SolvedPiece): readonly number[] =>
  piece.kind === 'part' ? [piece.piece] : piece.kind === 'rest' ? [] : piece.pieces.flatMap(piecesIn);

const largestRest = (piece: SolvedPiece): number =>
  piece.kind === 'rest'
    ? piece.length * piece.width
    : piece.kind === 'part'
      ? 0
      : Math.max(0, ...piece.pieces.map(largestRest));

const cutLength = (piece: SolvedPiece): number =>
  piece.kind === 'part' || piece.kind === 'rest'
    ? 0
    : (piece.pieces.length - 1) * (piece.kind === 'rip' ? piece.length : piece.width) +
      piece.pieces.reduce((sum, inner) => sum + cutLength(inner), 0);

/** The same tree with other pieces of the same types in it. */
const refill = (tree: SolvedPiece, typeOf: (piece: number) => number, stores: Map<number, number[]>): SolvedPiece => {
  if (tree.kind === 'rest') return tree;
  if (tree.kind === 'part') return { ...tree, piece: stores.get(typeOf(tree.piece))?.pop() ?? tree.piece };
  return { ...tree, pieces: tree.pieces.map((inner) => refill(inner, typeOf, stores)) };
};

/**
 * Gives sheets that hold the same kinds of pieces the same tree, the tidiest among them: equal sheets are cut as a
 * stack. Price and pieces stay as they are.
 */
export const makeSheetsAlike = (problem: Problem, solution: Solution): Solution => {
  const typeOf = (piece: number): number => problem.pieces[piece]?.type ?? -1;
  const load = ({ kind, tree }: SolvedSheet): string =>
    `${kind}: ${piecesIn(tree)
      .map(typeOf)
      .sort((a, b) => a - b)
      .join(' ')}`;
  const groups = groupBy(solution.sheets, load);
  const sheets = solution.sheets.map((sheet): SolvedSheet => {
    const model = [...(groups.get(load(sheet)) ?? [sheet])].sort(
      (a, b) => largestRest(b.tree) - largestRest(a.tree) || cutLength(a.tree) - cutLength(b.tree),
    )[0];
    if (model === undefined || model === sheet) return sheet;
    const stores = groupBy(piecesIn(sheet.tree), typeOf);
    const copies = new Map([...stores].map(([type, pieces]) => [type, [...pieces].reverse()]));
    return { kind: sheet.kind, tree: refill(model.tree, typeOf, copies) };
  });
  return { ...solution, sheets };
};
