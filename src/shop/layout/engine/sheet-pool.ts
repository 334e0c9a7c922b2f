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

/**
 * Good sheets that came by, each set of pieces once. A layout nobody came upon as a whole may stand in them piecemeal:
 * see linear/recombine.ts.
 */
export class SheetPool {
  private readonly found = new Map<number, PooledSheet>();
  private readonly highs: Float64Array;
  private readonly lows: Float64Array;
  private readonly groups = new Map<CutNode, number[]>();
  private least = 0;

  constructor(pieces: readonly Piece[]) {
    const random = new SearchRandom(KEY_SEED);
    const keys = new Map<number, readonly [number, number]>();
    for (const { type } of pieces)
      if (!keys.has(type)) keys.set(type, [Math.floor(random.next() * HIGH), Math.floor(random.next() * LOW)]);
    this.highs = Float64Array.from(pieces, ({ type }) => keys.get(type)?.[0] ?? 0);
    this.lows = Float64Array.from(pieces, ({ type }) => keys.get(type)?.[1] ?? 0);
  }

  /** `needed`: area for its price that a sheet of a cheaper layout must hold on average. Drops what is too poor. */
  raise(needed: number): void {
    this.least = LEAST_YIELD_SHARE * needed;
    for (const [key, sheet] of this.found) if (sheet.yield < this.least) this.found.delete(key);
  }

  get sheets(): readonly PooledSheet[] {
    return [...this.found.values()];
  }

  /** Looks at the sheets as they lie now and keeps the good ones that are new. */
  look(forest: CutForest): void {
    const { groups } = this;
    groups.clear();
    forest.places.forEach((node, number) => {
      if (node === null) return;
      const root = rootOf(node);
      const group = groups.get(root);
      if (group === undefined) groups.set(root, [number]);
      else group.push(number);
    });
    for (const [root, pieces] of groups) this.keep(forest, root, pieces);
    if (this.found.size > MOST_SHEETS) this.thin();
  }

  private keep(forest: CutForest, root: CutNode, pieces: readonly number[]): void {
    const { problem } = forest;
    let high = root.subject;
    let low = 0;
    let area = 0;
    for (const number of pieces) {
      high += this.highs[number] as number;
      low += this.lows[number] as number;
      area += (problem.pieces[number] as Piece).area;
    }
    const { price } = problem.sheets[root.subject] as SheetKind;
    const worth = price > 0 ? area / price : Number.POSITIVE_INFINITY;
    if (worth < this.least) return;
    const key = (high % HIGH) * LOW + (low % LOW);
    if (!this.found.has(key)) this.found.set(key, { kind: root.subject, tree: readTree(root), pieces, yield: worth });
  }

  private thin(): void {
    const best = [...this.found].sort(([, a], [, b]) => b.yield - a.yield).slice(0, MOST_SHEETS / 2);
    this.found.clear();
    for (const [key, sheet] of best) this.found.set(key, sheet);
    this.least = best[best.length - 1]?.[1].yield ?? this.least;
  }
}
