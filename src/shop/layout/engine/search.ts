import { Annealing } from './annealing.ts';
import { CutForest } from './cut-forest.ts';
import type { CutNode } from './cut-node.ts';
import { LateAcceptance } from './late-acceptance.ts';
import { loadSolution } from './load.ts';
import { Place } from './place.ts';
import type { Piece, Problem, SheetKind } from './problem.ts';
import { pieceOrders, recreate, sortByKey } from './recreate.ts';
import { ruin } from './ruin.ts';
import { SearchRandom } from './search-random.ts';
import { SETTINGS, type SearchSettings } from './settings.ts';
import { SheetPool } from './sheet-pool.ts';
import { readSolution, rootOf, type Solution } from './solution.ts';
import { isTidier, type Tidiness, tidinessOf } from './tidiness.ts';

/** Prices differ by more than rounding: a cheaper layout costs less by at least this share. */
export const STRICTLY_LESS = 1 - 2 ** -40;
const STRICTLY_MORE = 1 + 2 ** -40;

/** Turns between two looks at the sheets for the pool. */
const POOL_EVERY = 20;

/** Where more pieces than this share a sheet, two whole sheets are more than one turn can lay anew for the better. */
const FEW_A_SHEET = 8;

/**
 * Goal-driven ruin and recreate: with the best layout in hand, every turn works under a limit just below its price.
 * What does not fit stays out, and the area left out, then the worth of the rests, decides whether a turn is kept: by
 * late acceptance at first, by annealing once that stands still.
 * When nothing is left out any more, a cheaper layout is found and the limit falls.
 */
export class Search {
  readonly forest: CutForest;
  best: Solution;
  turns = 0;
  private bestLeftOutArea = Number.POSITIVE_INFINITY;
  private limit = Number.POSITIVE_INFINITY;
  /** Of the best layout, while tidying. */
  private tidiness: Tidiness | null = null;
  private current = 0;
  private idle = 0;
  /** Chance that a turn takes out whole sheets. */
  private wholeSheets = 0;
  private readonly settings: SearchSettings;
  private readonly random: SearchRandom;
  private readonly orders: readonly Float64Array[];
  private readonly orderSum: number;
  private readonly late: LateAcceptance;
  private readonly annealing: Annealing;
  private readonly smallest: number;
  private readonly area: number;
  private readonly place = new Place();
  /** Good sheets that came by. */
  readonly pool: SheetPool;

  constructor(
    problem: Problem,
    seed: number,
    leastRest = Number.POSITIVE_INFINITY,
    settings: SearchSettings = SETTINGS,
  ) {
    this.forest = new CutForest(problem, leastRest);
    this.settings = settings;
    this.random = new SearchRandom(seed);
    this.orders = pieceOrders(problem);
    this.orderSum = settings.orders.reduce((sum, share) => sum + share, 0);
    this.late = new LateAcceptance(settings.memory);
    const area = problem.pieces.reduce((sum, piece) => sum + piece.area, 0);
    this.annealing = new Annealing(area / Math.max(1, problem.pieces.length), settings.annealing);
    this.smallest = problem.pieces.reduce((least, { area }) => Math.min(least, area), Number.POSITIVE_INFINITY);
    this.best = readSolution(this.forest);
    this.area = area;
    this.pool = new SheetPool(problem.pieces);
  }

  /** Fills an empty forest by one greedy run in the numbered order; gives the layout. */
  fill(order: number): Solution {
    const { forest } = this;
    forest.begin();
    for (const node of forest.places) if (node !== null) forest.clear(rootOf(node));
    sortByKey(forest.leftOut, this.orders[order] as Float64Array);
    recreate(forest, Number.POSITIVE_INFINITY, 0, this.random, this.place, Number.POSITIVE_INFINITY);
    this.keepIfBetter();
    return this.best;
  }

  /** Goes on from a layout, below its price. */
  start(solution: Solution): void {
    loadSolution(this.forest, solution);
    this.best = solution;
    this.bestLeftOutArea = this.forest.leftOutArea;
    this.tighten();
  }

  /** Goes on from a layout at its price, for larger rests and shorter cuts. */
  startTidying(solution: Solution): void {
    loadSolution(this.forest, solution);
    this.best = solution;
    this.bestLeftOutArea = this.forest.leftOutArea;
    this.tidiness = tidinessOf(this.forest);
    this.limit = this.best.cost * STRICTLY_MORE;
    this.remember();
  }

  private keepIfBetter(): boolean {
    const { leftOutArea, cost } = this.forest;
    const more = leftOutArea < this.bestLeftOutArea;
    const cheaper = leftOutArea === this.bestLeftOutArea && cost < this.best.cost * STRICTLY_LESS;
    if (!more && !cheaper && !(this.tidiness !== null && this.foundTidier())) return false;
    this.bestLeftOutArea = leftOutArea;
    this.best = readSolution(this.forest);
    return true;
  }

  /** Sets the limit below the best price and closes the emptiest sheets until it holds. */
  private tighten(): void {
    const { forest } = this;
    // While stock is short, fitting more in comes before the price.
    this.limit = this.bestLeftOutArea > 0 ? Number.POSITIVE_INFINITY : this.best.cost * STRICTLY_LESS;
    forest.begin();
    while (forest.cost > this.limit) {
      const emptiest = this.emptiestSheet();
      if (emptiest === null) break;
      forest.clear(emptiest);
    }
    this.pool.raise(this.area / this.best.cost);
    this.remember();
  }

  private remember(): void {
    const few = this.forest.problem.pieces.length <= FEW_A_SHEET * this.best.sheets.length;
    this.wholeSheets = few ? this.settings.wholeSheets : 0;
    this.current = this.measure();
    this.late.restart(this.current);
    this.annealing.restart();
    this.idle = 0;
  }

  private foundTidier(): boolean {
    const { forest } = this;
    if (forest.leftOutArea > this.bestLeftOutArea || forest.cost > this.best.cost * STRICTLY_MORE) return false;
    const tidiness = tidinessOf(forest);
    if (this.tidiness === null || !isTidier(tidiness, this.tidiness)) return false;
    this.tidiness = tidiness;
    return true;
  }

  /** The priced sheet with the least parts for its price. */
  private emptiestSheet(): CutNode | null {
    const { forest } = this;
    const areas = new Map<CutNode, number>();
    forest.places.forEach((node, number) => {
      if (node === null) return;
      const root = rootOf(node);
      areas.set(root, (areas.get(root) ?? 0) + (forest.problem.pieces[number] as Piece).area);
    });
    let emptiest: CutNode | null = null;
    let least = Number.POSITIVE_INFINITY;
    for (const [root, area] of areas) {
      const { price } = forest.problem.sheets[root.subject] as SheetKind;
      if (price > 0 && area / price < least) {
        least = area / price;
        emptiest = root;
      }
    }
    return emptiest;
  }

  private measure(): number {
    const { leftOutArea, rests } = this.forest;
    // The worth of the rests only ever decides between layouts that leave the same area out.
    return leftOutArea - (this.smallest * rests.worth) / (rests.worth + 1);
  }

  private pickOrder(): Float64Array {
    let ticket = this.random.next() * this.orderSum;
    let order = 0;
    for (; order < this.orders.length - 1; order++) {
      ticket -= this.settings.orders[order] as number;
      if (ticket < 0) break;
    }
    return this.orders[order] as Float64Array;
  }

  /** Offcuts are tidied by small steps alone: annealing would undo them. */
  private get anneals(): boolean {
    return this.tidiness === null && this.idle >= this.settings.patience;
  }

  /** The highest measure at which this turn is kept. */
  private highestAccepted(): number {
    if (!this.anneals) return Math.max(this.current, this.late.threshold);
    return this.current + this.annealing.slack(this.random);
  }

  /** One turn; true when it found a better layout. */
  turn(): boolean {
    const { forest } = this;
    this.turns++;
    forest.begin();
    ruin(forest, this.settings, this.wholeSheets, this.random);
    sortByKey(forest.leftOut, this.pickOrder());
    // The rests are worth less than the smallest piece: more than this left out is taken back, whatever else comes.
    const most = this.highestAccepted();
    const whole = recreate(forest, this.limit, this.settings.blink, this.random, this.place, most + this.smallest);
    const found = whole && forest.leftOutArea <= this.bestLeftOutArea && this.keepIfBetter();
    const measured = whole ? this.measure() : Number.POSITIVE_INFINITY;
    if (found || measured <= most) this.current = measured;
    else forest.undo();
    this.late.remember(this.current);
    this.idle++;
    // Under late acceptance the sheets hardly change.
    if (this.anneals && this.turns % POOL_EVERY === 0) this.pool.look(forest);
    if (found && this.tidiness === null) this.tighten();
    return found;
  }
}
