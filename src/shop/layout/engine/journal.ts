import { CutNode, copyNode, SPARE } from './cut-node.ts';

/**
 * What a turn changed, so that it can be taken back: nodes as they were when first touched, the
 * places of pieces entry by entry. Stores grow once and are used again.
 */
export class Journal {
  private turn = 0;
  private readonly before: CutNode[] = [];
  private readonly nodes: CutNode[] = [];
  private nodeCount = 0;
  private readonly pieces: number[] = [];
  private readonly pieceNodes: (CutNode | null)[] = [];
  private pieceCount = 0;
  private readonly created: CutNode[] = [];

  begin(): void {
    this.turn++;
    this.nodeCount = 0;
    this.pieceCount = 0;
    this.created.length = 0;
  }

  /** Call before the first change of a node in a turn; later calls cost a comparison. */
  touch(node: CutNode): void {
    if (node.stamp === this.turn) return;
    node.stamp = this.turn;
    let entry = this.before[this.nodeCount];
    if (entry === undefined) {
      entry = new CutNode();
      this.before.push(entry);
    }
    copyNode(node, entry);
    this.nodes[this.nodeCount++] = node;
  }

  /** A node that did not exist before this turn. */
  create(): CutNode {
    const fresh = new CutNode();
    fresh.stamp = this.turn;
    this.created.push(fresh);
    return fresh;
  }

  logPlace(piece: number, node: CutNode | null): void {
    this.pieces[this.pieceCount] = piece;
    this.pieceNodes[this.pieceCount++] = node;
  }

  /** Gives every touched node its former fields. */
  restoreNodes(): void {
    for (let i = 0; i < this.nodeCount; i++) copyNode(this.before[i] as CutNode, this.nodes[i] as CutNode);
  }

  /** Puts the nodes of this turn in front of the spare ones; gives the new first. */
  spareCreated(spare: CutNode | null): CutNode | null {
    let first = spare;
    for (const node of this.created) {
      node.kind = SPARE;
      node.next = first;
      first = node;
    }
    return first;
  }

  restorePlaces(places: (CutNode | null)[]): void {
    for (let i = this.pieceCount - 1; i >= 0; i--) {
      places[this.pieces[i] as number] = this.pieceNodes[i] as CutNode | null;
    }
  }
}
