import type { CutForest } from './cut-forest.ts';
import { CROSSCUT, type CutNode, PART, REST } from './cut-node.ts';

/** A layout in the units of the engine, as plain data that later turns do not change. */
export interface Solution {
  readonly sheets: readonly SolvedSheet[];
  /** Numbers of the pieces that found no place. */
  readonly leftOut: readonly number[];
  readonly cost: number;
}

export interface SolvedSheet {
  readonly kind: number;
  readonly tree: SolvedPiece;
}

export type SolvedPiece =
  | {
      readonly kind: 'part';
      readonly length: number;
      readonly width: number;
      readonly piece: number;
      readonly turned: boolean;
    }
  | { readonly kind: 'rest'; readonly length: number; readonly width: number }
  | {
      readonly kind: 'rip' | 'crosscut';
      readonly length: number;
      readonly width: number;
      readonly pieces: readonly SolvedPiece[];
    };

export const readTree = (node: CutNode): SolvedPiece => {
  const { length, width } = node;
  if (node.kind === PART) return { kind: 'part', length, width, piece: node.subject, turned: node.turned };
  if (node.kind === REST) return { kind: 'rest', length, width };
  const pieces: SolvedPiece[] = [];
  for (let child = node.first; child !== null; child = child.next) pieces.push(readTree(child));
  const only = pieces[0];
  if (pieces.length === 1 && only !== undefined) return only;
  return { kind: node.kind === CROSSCUT ? 'crosscut' : 'rip', length, width, pieces };
};

export const rootOf = (node: CutNode): CutNode => {
  let root = node;
  while (root.parent !== null) root = root.parent;
  return root;
};

/** Writes down what the forest holds, sheets in the order of their lowest piece. */
export const readSolution = (forest: CutForest): Solution => {
  const roots = new Set<CutNode>();
  for (const node of forest.places) if (node !== null) roots.add(rootOf(node));
  return {
    sheets: [...roots].map((root) => ({ kind: root.subject, tree: readTree(root) })),
    leftOut: [...forest.leftOut].sort((a, b) => a - b),
    cost: forest.cost,
  };
};
