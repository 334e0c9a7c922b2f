import type { CutForest } from './cut-forest.ts';
import { CROSSCUT, type CutNode, PART, REST, RIPPED } from './cut-node.ts';
import type { Piece, SheetKind } from './problem.ts';
import { rootOf, type Solution, type SolvedPiece } from './solution.ts';

const fill = (forest: CutForest, node: CutNode, piece: SolvedPiece): void => {
  node.length = piece.length;
  node.width = piece.width;
  node.slot = -1;
  node.first = null;
  node.turned = false;
  if (piece.kind === 'part') {
    node.kind = PART;
    node.subject = piece.piece;
    node.turned = piece.turned;
    forest.setPlace(piece.piece, node);
    return;
  }
  node.kind = piece.kind === 'rest' ? REST : piece.kind === 'crosscut' ? CROSSCUT : RIPPED;
  if (piece.kind === 'rest') {
    forest.list(node);
    return;
  }
  for (const inner of piece.pieces) {
    const child = forest.take();
    child.level = node.level + 1;
    child.subject = -1;
    forest.link(child, node);
    fill(forest, child, inner);
  }
};

/** Replaces what the forest holds by a layout of the same problem. */
export const loadSolution = (forest: CutForest, solution: Solution): void => {
  const { pieces, sheets } = forest.problem;
  forest.begin();
  for (const node of forest.places) if (node !== null) forest.clear(rootOf(node));
  for (const { kind, tree } of solution.sheets) {
    const root = forest.take();
    root.level = 0;
    root.parent = null;
    root.next = null;
    root.previous = null;
    if (tree.kind === 'part') {
      // The part is the whole sheet; the sheet keeps a node of its own.
      fill(forest, root, { kind: 'rip', length: tree.length, width: tree.width, pieces: [tree] });
      if (root.first !== null) root.first.level = 0;
    } else fill(forest, root, tree);
    root.subject = kind;
    forest.opened[kind] = (forest.opened[kind] as number) + 1;
    forest.cost += (sheets[kind] as SheetKind).price;
  }
  forest.leftOut.length = 0;
  forest.leftOut.push(...solution.leftOut);
  forest.leftOutArea = solution.leftOut.reduce((sum, number) => sum + (pieces[number] as Piece).area, 0);
};
