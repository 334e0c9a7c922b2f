import { type Bound, boundOf } from './bounds/bound.ts';
import { offcutsFirst } from './engine/offcuts-first.ts';
import { placeable } from './engine/placeable.ts';
import type { Piece, Problem } from './engine/problem.ts';
import { Search, STRICTLY_LESS } from './engine/search.ts';
import type { PooledSheet } from './engine/sheet-pool.ts';
import type { Solution } from './engine/solution.ts';
import type { LayoutPart } from './job.ts';
import type { Prepared } from './prepare.ts';

/** Greedy first layouts: one for each order, fewer for long lists so that the first layout is there at once. */
const MOST_FIRST_LAYOUTS = 6;
const FIRST_LAYOUT_PAIRS = 4_000_000;

/** Turns without a cheaper layout after which one block in TIDY_SHARE goes to larger offcuts at the same price. */
const PATIENCE = 20_000;
const TIDY_SHARE = 8;
/** Turns of tidying after which a proven layout is called done. */
const TIDY_TURNS = 30_000;

/** Turns before sheets are first recombined, and how much later each further time. */
const RECOMBINE_FIRST = 60_000;
const RECOMBINE_GROWTH = 2;

/** Below this share of a sheet's short side a rest is not worth tidying up. */
const LEAST_REST_SHARE = 1 / 10;

const leastRestOf = ({ sheets }: Problem): number =>
  LEAST_REST_SHARE * Math.min(...sheets.map(({ length, width }) => Math.min(length, width)));

/** The search for one material: a layout at once, then better ones turn by turn. */
export class MaterialSearch {
  readonly prepared: Prepared;
  readonly problem: Problem;
  /** Numbers in `prepared` of the pieces that the saw's limits leave a place for. */
  readonly numbers: readonly number[];
  /** Pieces that no sheet takes within the limits. */
  readonly barred: readonly (readonly LayoutPart[])[];
  best: Solution;
  bound: Bound;
  /** Price that no layout of the asked kind (two stages) can beat; never below the bound's. */
  stagedPrice: number;
  turns = 0;
  /** Counts every change of layout or proof. */
  version = 0;
  private readonly goal: Search;
  private readonly tidy: Search;
  private readonly tidies: boolean;
  private tidyTurns = 0;
  private idle = 0;
  private recombineAt = RECOMBINE_FIRST;

  constructor(prepared: Prepared, seed: number, tidies: boolean) {
    this.prepared = prepared;
    const can = placeable(prepared.problem);
    this.numbers = [...can.keys()].filter((number) => can[number]);
    this.barred = prepared.partsOf.filter((_, number) => !can[number]);
    const pieces = this.numbers.map((number) => prepared.problem.pieces[number] as Piece);
    this.problem = { ...prepared.problem, pieces };
    this.goal = new Search(this.problem, seed);
    this.tidy = new Search(this.problem, seed + 1, leastRestOf(this.problem));
    this.tidies = tidies;
    const fills = Math.floor(FIRST_LAYOUT_PAIRS / Math.max(1, pieces.length) ** 2);
    for (let order = 0; order < Math.min(MOST_FIRST_LAYOUTS, Math.max(1, fills)); order++) this.goal.fill(order);
    this.best = offcutsFirst(this.problem, this.goal.best);
    const leftOut = new Set(this.best.leftOut);
    this.bound = boundOf(this.problem, leftOut.size === 0 ? pieces : []);
    this.stagedPrice = this.bound.price;
    this.goal.start(this.best);
    this.tidy.startTidying(this.best);
  }

  /** True when nothing cheaper exists. */
  get proven(): boolean {
    const { best, bound, stagedPrice } = this;
    if (best.leftOut.length > 0) return false;
    return best.cost <= Math.max(bound.price, stagedPrice) && (best.cost > 0 || best.sheets.length <= bound.sheets);
  }

  /** Good sheets that came by below the present price. */
  get pooled(): readonly PooledSheet[] {
    return this.goal.pool.sheets;
  }

  /** The highest price that is worth having: a whole sheet less where all cost the same. */
  get nextPrice(): number {
    const prices = new Set(this.problem.sheets.map(({ price }) => price));
    const [only = 0] = prices;
    return prices.size === 1 ? this.best.cost - only : this.best.cost * STRICTLY_LESS;
  }

  /** True at certain numbers of turns, each time for the owner to call `recombine`. */
  timeToRecombine(): boolean {
    if (this.turns < this.recombineAt) return false;
    this.recombineAt = this.turns * RECOMBINE_GROWTH;
    return true;
  }

  /** True when more turns would change nothing that is asked for. */
  get done(): boolean {
    return this.problem.pieces.length === 0 || (this.proven && (!this.tidies || this.tidyTurns >= TIDY_TURNS));
  }

  /** Works the given number of turns; true when the layout changed. */
  step(turns: number): boolean {
    let changed = false;
    for (let i = 0; i < turns && !this.done; i++) if (this.turn()) changed = true;
    return changed;
  }

  private turn(): boolean {
    this.turns++;
    const tidying = this.tidies && (this.proven || (this.idle > PATIENCE && this.turns % TIDY_SHARE === 0));
    return tidying ? this.tidyTurn() : this.goalTurn();
  }

  private goalTurn(): boolean {
    this.idle++;
    if (!this.goal.turn()) return false;
    this.take(this.goal.best);
    if (this.best !== this.goal.best) this.goal.start(this.best);
    this.tidy.startTidying(this.best);
    return true;
  }

  private tidyTurn(): boolean {
    this.tidyTurns++;
    const price = this.best.cost;
    if (!this.tidy.turn()) return false;
    const found = this.tidy.best;
    // A larger rest is no gain where an offcut in hand was left lying for it.
    if (found.cost >= price && offcutsFirst(this.problem, found) !== found) {
      this.tidy.startTidying(this.best);
      return false;
    }
    this.take(found);
    // Tidying came upon a cheaper layout.
    if (this.best.cost < price) this.goal.start(this.best);
    return true;
  }

  private take(solution: Solution): void {
    this.best = offcutsFirst(this.problem, solution);
    this.version++;
    this.idle = 0;
    // The bound speaks of all pieces: it can only be computed once all of them have a place.
    if (this.best.leftOut.length === 0 && this.bound.sheets === 0) {
      this.bound = boundOf(this.problem, this.problem.pieces);
      this.stagedPrice = Math.max(this.stagedPrice, this.bound.price);
    }
  }

  /** Takes a proof or a layout found elsewhere. */
  learn(stagedPrice: number, solution: Solution | null): void {
    this.stagedPrice = Math.max(this.stagedPrice, stagedPrice);
    this.version++;
    if (solution === null || solution.leftOut.length > 0 || solution.cost >= this.best.cost) return;
    this.take(solution);
    this.goal.start(this.best);
    this.tidy.startTidying(this.best);
  }
}
