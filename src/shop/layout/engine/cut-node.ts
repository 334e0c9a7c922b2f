/** What a node of the cut tree is. */
export const REST = 0;
export const PART = 1;
/** Divided by rips: its children lie side by side across the width. */
export const RIPPED = 2;
/** Divided by crosscuts: its children lie one after the other along the length. */
export const CROSSCUT = 3;
/** Not in use; waits in the store. */
export const SPARE = 4;

/**
 * A rectangle of one sheet: a part, a rest, or a rectangle divided by parallel cuts into its children. Rests of one
 * parent are kept as one. The order of children does not matter until the layout is written down.
 */
export class CutNode {
  kind = SPARE;
  length = 0;
  width = 0;
  /** Rounds of cuts from the whole sheet to this rectangle. */
  level = 0;
  /** PART: number of the piece; a whole sheet: number of its kind; else -1. */
  subject = -1;
  turned = false;
  /** Place in the list of usable rests, or -1. */
  slot = -1;
  parent: CutNode | null = null;
  first: CutNode | null = null;
  next: CutNode | null = null;
  previous: CutNode | null = null;
  /** The turn in which the node was last written to the journal. */
  stamp = 0;
}

/** Copies every field but the stamp. */
export const copyNode = (from: CutNode, to: CutNode): void => {
  to.kind = from.kind;
  to.length = from.length;
  to.width = from.width;
  to.level = from.level;
  to.subject = from.subject;
  to.turned = from.turned;
  to.slot = from.slot;
  to.parent = from.parent;
  to.first = from.first;
  to.next = from.next;
  to.previous = from.previous;
};
