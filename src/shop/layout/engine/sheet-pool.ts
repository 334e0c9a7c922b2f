import type { CutForest } from './cut-forest.ts';
import type { CutNode } from './cut-node.ts';
import type { Piece, SheetKind } from './problem.ts';
import { SearchRandom } from './search-random.ts';
import { readTree, rootOf, type SolvedPiece } from './solution.ts';

/** One sheet as it once lay in the search. */
export interface PooledSheet {
  readonly kind: number;
  readonly tree: SolvedPiece;
  readonly pieces: readonly number[];
  /** Area of its pieces for its price. */
  readonly yield: number;
}

/** Past this many the poorer half goes. */
const MOST_SHEETS = 40_000;

/** A sheet worth less of its price than this share of what the whole layout needs on average is not kept. */
const LEAST_YIELD_SHARE = 0.87;

/** Numbers from which a set of pieces gets its key: two halves, as a whole number that a double holds exactly. */
const HIGH = 2 ** 30;
const LOW = 2 ** 22;
const KEY_SEED = 20_221;

const collectPieces = (tree: SolvedPiece, into: number[]): void => {
  if (tree.kind === 'part') into.push(tree.piece);
  else if (tree.kind !== 'rest') for (const piece of tree.pieces) collectPieces(piece, into);
};

/**
 * Good sheets that came by, each set of pieces once. A layout nobody came upon as a whole may stand in them piecemeal:
 * see linear/recombine.ts.
 */
export class SheetPool {
  private readonly found = new Map<number, PooledSheet>();
  private readonly highs: Float64Array;
  private readonly lows: Float64Array;
  /** Of the sheets of one look: which they are, and for each the sums of keys and areas of its pieces. */
  private readonly slots = new Map<CutNode, number>();
  private readonly roots: CutNode[] = [];
  private readonly rootHighs: Float64Array;
  private readonly rootLows: Float64Array;
  private readonly rootAreas: Float64Array;
  private least = 0;

  constructor(pieces: readonly Piece[]) {
    const random = new SearchRandom(KEY_SEED);
    const keys = new Map<number, readonly [number, number]>();
    for (const { type } of pieces)
      if (!keys.has(type)) keys.set(type, [Math.floor(random.next() * HIGH), Math.floor(random.next() * LOW)]);
    this.highs = Float64Array.from(pieces, ({ type }) => keys.get(type)?.[0] ?? 0);
    this.lows = Float64Array.from(pieces, ({ type }) => keys.get(type)?.[1] ?? 0);
    this.rootHighs = new Float64Array(pieces.length);
    this.rootLows = new Float64Array(pieces.length);
    this.rootAreas = new Float64Array(pieces.length);
  }

  /** `needed`: area for its price that a sheet of a cheaper layout must hold on average. Drops what is too poor. */
  raise(needed: number): void {
    this.least = LEAST_YIELD_SHARE * needed;
    for (const [key, sheet] of this.found) if (sheet.yield < this.least) this.found.delete(key);
  }

  get sheets(): readonly PooledSheet[] {
    return [...this.found.values()];
  }

  /** Looks at the sheets as they lie now and keeps the good ones that are new. Nothing is allocated for the others. */
  look(forest: CutForest): void {
    const { roots, rootHighs, rootLows, rootAreas, slots } = this;
    const { places, problem } = forest;
    slots.clear();
    let count = 0;
    for (let number = 0; number < places.length; number++) {
      const node = places[number] as CutNode | null;
      if (node === null) continue;
      const root = rootOf(node);
      let slot = slots.get(root);
      if (slot === undefined) {
        slot = count++;
        slots.set(root, slot);
        roots[slot] = root;
        rootHighs[slot] = root.subject;
        rootLows[slot] = 0;
        rootAreas[slot] = 0;
      }
      rootHighs[slot] = (rootHighs[slot] as number) + (this.highs[number] as number);
      rootLows[slot] = (rootLows[slot] as number) + (this.lows[number] as number);
      rootAreas[slot] = (rootAreas[slot] as number) + (problem.pieces[number] as Piece).area;
    }
    for (let slot = 0; slot < count; slot++) {
      const root = roots[slot] as CutNode;
      const { price } = problem.sheets[root.subject] as SheetKind;
      const worth = price > 0 ? (rootAreas[slot] as number) / price : Number.POSITIVE_INFINITY;
      if (worth < this.least) continue;
      const key = ((rootHighs[slot] as number) % HIGH) * LOW + ((rootLows[slot] as number) % LOW);
      if (!this.found.has(key)) this.found.set(key, this.sheetOf(root, worth));
    }
    if (this.found.size > MOST_SHEETS) this.thin();
  }

  private sheetOf(root: CutNode, worth: number): PooledSheet {
    const tree = readTree(root);
    const pieces: number[] = [];
    collectPieces(tree, pieces);
    return { kind: root.subject, tree, pieces, yield: worth };
  }

  private thin(): void {
    const best = [...this.found].sort(([, a], [, b]) => b.yield - a.yield).slice(0, MOST_SHEETS / 2);
    this.found.clear();
    for (const [key, sheet] of best) this.found.set(key, sheet);
    this.least = best[best.length - 1]?.[1].yield ?? this.least;
  }
}
