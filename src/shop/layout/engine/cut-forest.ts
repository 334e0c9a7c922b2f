import { CROSSCUT, type CutNode, PART, REST, RIPPED, SPARE } from './cut-node.ts';
import { stripFor } from './guard.ts';
import { Journal } from './journal.ts';
import type { Piece, Problem, SheetKind } from './problem.ts';
import { RestList } from './rest-list.ts';

/**
 * All opened sheets as cut trees, with the list of usable rests, and a journal that takes a whole turn back. Every
 * change of a turn goes through here. Hot: nodes are reused, nothing is allocated in a turn once the stores are filled.
 */
export class CutForest {
  readonly problem: Problem;
  /** Where each piece lies; null while it is left out. */
  readonly places: (CutNode | null)[];
  readonly leftOut: number[] = [];
  leftOutArea = 0;
  cost = 0;
  /** Opened sheets of each kind. */
  readonly opened: number[];
  readonly rests: RestList;

  private spare: CutNode | null = null;
  private readonly journal = new Journal();
  private savedSpare: CutNode | null = null;
  private savedCost = 0;
  private savedLeftOutArea = 0;
  private savedLeftOutLength = 0;
  private readonly savedLeftOut: number[] = [];
  private readonly savedOpened: number[];

  /** `leastRest`: rests with both sides this long count as usable even if no piece fits. */
  constructor(problem: Problem, leastRest = Number.POSITIVE_INFINITY) {
    this.problem = problem;
    this.places = problem.pieces.map(() => null);
    this.opened = problem.sheets.map(() => 0);
    this.savedOpened = problem.sheets.map(() => 0);
    this.rests = new RestList(problem.pieces, Math.max(...problem.sheets.map(({ area }) => area)), leastRest);
    problem.pieces.forEach((piece, number) => {
      this.leftOut.push(number);
      this.leftOutArea += piece.area;
    });
  }

  begin(): void {
    this.journal.begin();
    this.savedSpare = this.spare;
    this.rests.begin();
    this.savedCost = this.cost;
    this.savedLeftOutArea = this.leftOutArea;
    this.savedLeftOutLength = this.leftOut.length;
    for (let i = 0; i < this.leftOut.length; i++) this.savedLeftOut[i] = this.leftOut[i] as number;
    for (let i = 0; i < this.opened.length; i++) this.savedOpened[i] = this.opened[i] as number;
  }

  /** Takes back everything since `begin`. */
  undo(): void {
    this.journal.restoreNodes();
    this.spare = this.journal.spareCreated(this.savedSpare);
    this.rests.undo();
    this.journal.restorePlaces(this.places);
    this.cost = this.savedCost;
    this.leftOutArea = this.savedLeftOutArea;
    this.leftOut.length = this.savedLeftOutLength;
    for (let i = 0; i < this.savedLeftOutLength; i++) this.leftOut[i] = this.savedLeftOut[i] as number;
    for (let i = 0; i < this.opened.length; i++) this.opened[i] = this.savedOpened[i] as number;
  }

  private touch(node: CutNode): void {
    this.journal.touch(node);
  }

  /** A node out of the store; for builders of trees, which fill in every field. */
  take(): CutNode {
    const node = this.spare;
    if (node === null) return this.journal.create();
    this.touch(node);
    this.spare = node.next;
    // A node that came back by undo still remembers its last place.
    node.next = null;
    node.parent = null;
    node.first = null;
    node.previous = null;
    return node;
  }

  private give(node: CutNode): void {
    this.touch(node);
    node.kind = SPARE;
    node.parent = null;
    node.first = null;
    node.previous = null;
    node.next = this.spare;
    this.spare = node;
  }

  setPlace(piece: number, node: CutNode | null): void {
    this.journal.logPlace(piece, this.places[piece] as CutNode | null);
    this.places[piece] = node;
  }

  /** Lists a rest if a piece could stand in it. */
  list(node: CutNode): void {
    if (node.level > this.problem.stages) return;
    const worth = this.rests.worthOf(node.length, node.width);
    if (worth === 0) return;
    this.touch(node);
    node.slot = this.rests.add(node, worth);
  }

  private unlist(node: CutNode): void {
    const slot = node.slot;
    if (slot < 0) return;
    this.touch(node);
    node.slot = -1;
    const moved = this.rests.remove(slot);
    if (moved === null) return;
    this.touch(moved);
    moved.slot = slot;
  }

  /** Opens a sheet of this kind; gives its whole as one rest. */
  open(kind: number): CutNode {
    const sheet = this.problem.sheets[kind] as SheetKind;
    const node = this.take();
    node.kind = REST;
    node.length = sheet.length;
    node.width = sheet.width;
    node.level = 0;
    node.subject = kind;
    node.slot = -1;
    this.opened[kind] = (this.opened[kind] as number) + 1;
    this.cost += sheet.price;
    this.list(node);
    return node;
  }

  private close(root: CutNode): void {
    const kind = root.subject;
    this.opened[kind] = (this.opened[kind] as number) - 1;
    this.cost -= (this.problem.sheets[kind] as SheetKind).price;
    this.unlist(root);
    this.give(root);
  }

  /** Puts the piece into the rest, the two cuts in the order asked for. */
  insert(piece: number, rest: CutNode, turned: boolean, crosscutFirst: boolean): void {
    const { length, width, area } = this.problem.pieces[piece] as Piece;
    const along = turned ? width : length;
    const across = turned ? length : width;
    this.unlist(rest);
    let node = crosscutFirst ? this.part(rest, CROSSCUT, along) : this.part(rest, RIPPED, across);
    node = crosscutFirst ? this.part(node, RIPPED, across) : this.part(node, CROSSCUT, along);
    // Out of a strip that had to be wider than the piece, one more cut.
    if (along < node.length) node = this.split(node, CROSSCUT, along);
    if (across < node.width) node = this.split(node, RIPPED, across);
    this.touch(node);
    node.kind = PART;
    // A part as large as its sheet still has to say which sheet it is: a sheet always keeps a node of its own.
    if (node.parent === null) node = this.child(node);
    node.subject = piece;
    node.turned = turned;
    this.setPlace(piece, node);
    this.leftOutArea -= area;
  }

  /** Cuts off the strip that this piece needs; the rest itself where it is no larger. */
  private part(rest: CutNode, kind: number, size: number): CutNode {
    const strip = stripFor(this.problem.limits, rest, kind, size);
    return strip < (kind === CROSSCUT ? rest.length : rest.width) ? this.split(rest, kind, strip) : rest;
  }

  /** Gives the whole sheet one child of its own size. */
  private child(root: CutNode): CutNode {
    const node = this.take();
    root.kind = RIPPED;
    node.kind = PART;
    node.length = root.length;
    node.width = root.width;
    node.level = 0;
    node.slot = -1;
    node.parent = root;
    node.first = null;
    node.previous = null;
    node.next = null;
    root.first = node;
    return node;
  }

  /** Cuts a strip of this size off an unlisted rest; gives the strip, lists what remains. */
  private split(rest: CutNode, kind: number, size: number): CutNode {
    this.touch(rest);
    const strip = this.take();
    strip.kind = REST;
    strip.subject = -1;
    strip.slot = -1;
    strip.first = null;
    const parent = rest.parent;
    let remaining = rest;
    if (parent !== null && parent.kind === kind) {
      strip.level = rest.level;
      this.touch(parent);
      this.link(strip, parent);
    } else {
      remaining = this.take();
      remaining.kind = REST;
      remaining.subject = -1;
      remaining.slot = -1;
      remaining.first = null;
      remaining.length = rest.length;
      remaining.width = rest.width;
      remaining.level = strip.level = rest.level + 1;
      rest.kind = kind;
      rest.first = null;
      this.link(remaining, rest);
      this.link(strip, rest);
    }
    if (kind === CROSSCUT) {
      strip.length = size;
      strip.width = remaining.width;
      remaining.length -= size;
    } else {
      strip.width = size;
      strip.length = remaining.length;
      remaining.width -= size;
    }
    this.list(remaining);
    return strip;
  }

  link(node: CutNode, parent: CutNode): void {
    const first = parent.first;
    node.parent = parent;
    node.previous = null;
    node.next = first;
    if (first !== null) {
      this.touch(first);
      first.previous = node;
    }
    parent.first = node;
  }

  private unlink(node: CutNode): void {
    const { parent, previous, next } = node;
    if (previous !== null) {
      this.touch(previous);
      previous.next = next;
    } else if (parent !== null) {
      this.touch(parent);
      parent.first = next;
    }
    if (next !== null) {
      this.touch(next);
      next.previous = previous;
    }
  }

  /** Empties the rectangle: all its pieces are left out, it becomes a rest and joins the rest beside it. */
  clear(node: CutNode): void {
    this.unlist(node);
    this.empty(node);
    this.settle(node);
  }

  private empty(node: CutNode): void {
    if (node.kind === PART) {
      const piece = node.subject;
      this.setPlace(piece, null);
      this.leftOut.push(piece);
      this.leftOutArea += (this.problem.pieces[piece] as Piece).area;
      this.touch(node);
      node.subject = -1;
    } else {
      this.unlist(node);
      let child = node.first;
      while (child !== null) {
        const next: CutNode | null = child.next;
        this.empty(child);
        this.give(child);
        child = next;
      }
      this.touch(node);
      node.first = null;
    }
    node.kind = REST;
  }

  private settle(cleared: CutNode): void {
    let node = cleared;
    for (;;) {
      const parent = node.parent;
      if (parent === null) {
        this.close(node);
        return;
      }
      let other = parent.first;
      let beside: CutNode | null = null;
      let children = 0;
      while (other !== null) {
        children++;
        if (other !== node && other.kind === REST) beside = other;
        other = other.next;
      }
      if (beside !== null) {
        this.unlist(beside);
        if (parent.kind === CROSSCUT) node.length += beside.length;
        else node.width += beside.width;
        this.unlink(beside);
        this.give(beside);
        children--;
      }
      if (children > 1) break;
      this.give(node);
      this.touch(parent);
      parent.first = null;
      parent.kind = REST;
      node = parent;
    }
    this.list(node);
  }
}
