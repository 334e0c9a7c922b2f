import type { CutNode } from './cut-node.ts';
import type { Piece } from './problem.ts';
import { SideRanks } from './side-ranks.ts';

const FIRST_ROOM = 256;

/** Four numbers a rest, as they were before a turn wrote over them. */
const SAVED = 4;

/**
 * The rests that a piece could stand in, and beside each what the search reads most, in arrays without gaps. Takes a
 * whole turn back by itself. Hot: nothing is allocated once the arrays have grown.
 */
export class RestList {
  nodes: (CutNode | null)[] = [];
  lengths = new Float64Array(FIRST_ROOM);
  widths = new Float64Array(FIRST_ROOM);
  worths = new Float64Array(FIRST_ROOM);
  /** Ranks of both sides, see SideRanks. */
  codes = new Int32Array(FIRST_ROOM);
  /** The same, the longer side first. */
  sortedCodes = new Int32Array(FIRST_ROOM);
  count = 0;
  /** Sum of the worths. */
  worth = 0;
  readonly sides: SideRanks;
  /** A rest shorter or narrower than this holds no piece. */
  readonly leastLength: number;
  readonly leastWidth: number;
  readonly worthScale: number;

  private savedCount = 0;
  private savedWorth = 0;
  private readonly slots: number[] = [];
  private readonly slotNodes: (CutNode | null)[] = [];
  private readonly slotNumbers: number[] = [];
  private changes = 0;

  constructor(pieces: readonly Piece[], largestSheet: number, leastRest: number) {
    this.sides = new SideRanks(pieces);
    const lengths = pieces.flatMap((piece) => [
      ...(piece.straight ? [piece.length] : []),
      ...(piece.turned ? [piece.width] : []),
    ]);
    const widths = pieces.flatMap((piece) => [
      ...(piece.straight ? [piece.width] : []),
      ...(piece.turned ? [piece.length] : []),
    ]);
    this.leastLength = lengths.reduce((least, side) => Math.min(least, side), leastRest);
    this.leastWidth = widths.reduce((least, side) => Math.min(least, side), leastRest);
    this.worthScale = 1 / largestSheet;
  }

  /** Worth of a rest: more than proportional to its area, so that one large rest beats two small ones. */
  worthOf(length: number, width: number): number {
    if (length < this.leastLength || width < this.leastWidth) return 0;
    const share = length * width * this.worthScale;
    return share * Math.sqrt(share);
  }

  begin(): void {
    this.savedCount = this.count;
    this.savedWorth = this.worth;
    this.changes = 0;
  }

  /** Everything as at `begin`. */
  undo(): void {
    this.count = this.savedCount;
    this.worth = this.savedWorth;
    // Backwards, so that the oldest entry of a slot is written last.
    for (let i = this.changes - 1; i >= 0; i--) {
      const slot = this.slots[i] as number;
      this.nodes[slot] = this.slotNodes[i] as CutNode | null;
      this.lengths[slot] = this.slotNumbers[i * SAVED] as number;
      this.widths[slot] = this.slotNumbers[i * SAVED + 1] as number;
      this.worths[slot] = this.slotNumbers[i * SAVED + 2] as number;
      const code = this.slotNumbers[i * SAVED + 3] as number;
      this.codes[slot] = code;
      this.sortedCodes[slot] = this.sides.sortedCode(code);
    }
  }

  private save(slot: number): void {
    const i = this.changes++;
    this.slots[i] = slot;
    this.slotNodes[i] = this.nodes[slot] as CutNode | null;
    this.slotNumbers[i * SAVED] = this.lengths[slot] as number;
    this.slotNumbers[i * SAVED + 1] = this.widths[slot] as number;
    this.slotNumbers[i * SAVED + 2] = this.worths[slot] as number;
    this.slotNumbers[i * SAVED + 3] = this.codes[slot] as number;
  }

  /** Takes a rest of this worth in; gives its slot. */
  add(node: CutNode, worth: number): number {
    const slot = this.count++;
    if (slot >= this.lengths.length) this.grow();
    if (slot >= this.nodes.length) this.nodes.push(null);
    if (slot < this.savedCount) this.save(slot);
    this.nodes[slot] = node;
    this.lengths[slot] = node.length;
    this.widths[slot] = node.width;
    this.worths[slot] = worth;
    const code = this.sides.codeOfRest(node.length, node.width);
    this.codes[slot] = code;
    this.sortedCodes[slot] = this.sides.sortedCode(code);
    this.worth += worth;
    return slot;
  }

  /** Takes the rest of this slot out; gives the node that now stands there, or null if none does. */
  remove(slot: number): CutNode | null {
    this.worth -= this.worths[slot] as number;
    const last = --this.count;
    if (slot === last) return null;
    if (slot < this.savedCount) this.save(slot);
    const moved = this.nodes[last] as CutNode;
    this.nodes[slot] = moved;
    this.lengths[slot] = this.lengths[last] as number;
    this.widths[slot] = this.widths[last] as number;
    this.worths[slot] = this.worths[last] as number;
    this.codes[slot] = this.codes[last] as number;
    this.sortedCodes[slot] = this.sortedCodes[last] as number;
    return moved;
  }

  private grow(): void {
    const doubled = (from: Float64Array): Float64Array<ArrayBuffer> => {
      const to = new Float64Array(from.length * 2);
      to.set(from);
      return to;
    };
    this.lengths = doubled(this.lengths);
    this.widths = doubled(this.widths);
    this.worths = doubled(this.worths);
    const widened = (from: Int32Array): Int32Array<ArrayBuffer> => {
      const to = new Int32Array(from.length * 2);
      to.set(from);
      return to;
    };
    this.codes = widened(this.codes);
    this.sortedCodes = widened(this.sortedCodes);
  }
}
