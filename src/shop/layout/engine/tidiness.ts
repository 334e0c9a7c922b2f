import type { CutForest } from './cut-forest.ts';
import { CROSSCUT, type CutNode, PART, REST } from './cut-node.ts';
import { rootOf } from './solution.ts';

/** What decides between layouts of one price: the largest single rest, then the least length of cuts. */
export interface Tidiness {
  readonly largestRest: number;
  readonly cutLength: number;
}

const cutLengthIn = (node: CutNode): number => {
  if (node.kind === PART || node.kind === REST) return 0;
  let cuts = -1;
  let inside = 0;
  for (let child = node.first; child !== null; child = child.next) {
    cuts++;
    inside += cutLengthIn(child);
  }
  return inside + cuts * (node.kind === CROSSCUT ? node.width : node.length);
};

/** Tidiness of what the forest holds. Only rests that the forest lists as usable count. */
export const tidinessOf = (forest: CutForest): Tidiness => {
  let largestRest = 0;
  for (let i = 0; i < forest.rests.count; i++) {
    largestRest = Math.max(largestRest, (forest.rests.lengths[i] as number) * (forest.rests.widths[i] as number));
  }
  const roots = new Set<CutNode>();
  for (const node of forest.places) if (node !== null) roots.add(rootOf(node));
  let cutLength = 0;
  for (const root of roots) cutLength += cutLengthIn(root);
  return { largestRest, cutLength };
};

export const isTidier = (a: Tidiness, b: Tidiness): boolean =>
  a.largestRest > b.largestRest || (a.largestRest === b.largestRest && a.cutLength < b.cutLength);
