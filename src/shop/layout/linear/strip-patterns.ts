import type { Problem } from '../engine/problem.ts';
import { bestPattern, type Frame, type Pattern } from './pricing.ts';
import { type Raster, rasterOf } from './raster.ts';
import type { LinearSolver, Master, Row } from './solver.ts';
import { framesOf, type PieceType, typesOf } from './types-of.ts';

/** What column generation over strip patterns found. */
export interface StripProof {
  /** No two-stage layout costs less: the linear optimum, rounded up where prices allow. */
  readonly price: number;
  /** How often each pattern is used in a good whole-number solution; null where there is none to cut. */
  readonly used: readonly { readonly pattern: Pattern; readonly times: number }[] | null;
  readonly types: readonly PieceType[];
}

/** Rounds of pricing after which the bound is taken as it stands. */
const MOST_ROUNDS = 400;
/** A pattern pays when it saves more than this share of its price. */
const PAYS = 2 ** -30;

const countsOf = (pattern: Pattern): ReadonlyMap<number, number> => {
  const counts = new Map<number, number>();
  for (const { lies } of pattern.strips) for (const { type } of lies) counts.set(type, (counts.get(type) ?? 0) + 1);
  return counts;
};

class Generation {
  readonly patterns: Pattern[] = [];
  private readonly seen = new Set<string>();
  private readonly problem: Problem;
  private readonly master: Master;
  private readonly types: readonly PieceType[];
  readonly frames: readonly Frame[];

  constructor(problem: Problem, types: readonly PieceType[], raster: Raster, solver: LinearSolver) {
    this.problem = problem;
    this.types = types;
    this.frames = framesOf(problem, types, raster);
    const demands = types.map(({ numbers }): Row => ({ least: numbers.length, most: Number.POSITIVE_INFINITY }));
    const stock = problem.sheets.map(({ count }): Row => ({ least: Number.NEGATIVE_INFINITY, most: count }));
    this.master = solver.open([...demands, ...stock]);
  }

  /** A column for the pattern; false when it is there already. */
  private add(pattern: Pattern): boolean {
    const counts = [...countsOf(pattern)].sort(([a], [b]) => a - b);
    const key = `${pattern.kind}:${counts.join(';')}`;
    if (counts.length === 0 || this.seen.has(key)) return false;
    this.seen.add(key);
    this.patterns.push(pattern);
    const rows = [...counts.map(([type]) => type), this.types.length + pattern.kind];
    const price = this.problem.sheets[pattern.kind]?.price ?? 0;
    this.master.addColumn(price, rows, [...counts.map(([, count]) => count), 1]);
    return true;
  }

  /** For every type the pattern with the most of it, so that there is a first solution. */
  begin(): void {
    this.types.forEach((_, type) => {
      const worth = new Float64Array(this.types.length);
      worth[type] = 1;
      for (const frame of this.frames) this.add(bestPattern(frame, worth));
    });
  }

  /** Adds every pattern that pays at these prices; gives the largest overshoot of worth over price. */
  private price(duals: Float64Array): number {
    const worth = duals.map((dual) => Math.max(0, dual)).subarray(0, this.types.length);
    let overshoot = 1;
    for (const frame of this.frames) {
      const stock = duals[this.types.length + frame.kind] ?? 0;
      const price = (this.problem.sheets[frame.kind]?.price ?? 0) - Math.min(0, stock);
      const pattern = bestPattern(frame, worth);
      if (pattern.value <= price * (1 + PAYS)) continue;
      overshoot = Math.max(overshoot, price > 0 ? pattern.value / price : Number.POSITIVE_INFINITY);
      this.add(pattern);
    }
    return overshoot;
  }

  /**
   * Linear optimum over all patterns; where rounds run out, the optimum so far divided by the largest overshoot, which
   * is a bound as well (Farley 1990). 0 when nothing can be said.
   */
  run(): number {
    let bound = 0;
    for (let round = 0; round < MOST_ROUNDS; round++) {
      const before = this.patterns.length;
      const solved = this.master.solve();
      if (solved === null) return 0;
      const overshoot = this.price(solved.duals);
      bound = Math.max(bound, solved.value / overshoot);
      if (overshoot === 1 || this.patterns.length === before) break;
    }
    return bound;
  }

  whole(nodes: number): StripProof['used'] {
    const solved = this.master.solveWhole(nodes);
    if (solved === null) return null;
    return this.patterns
      .map((pattern, i) => ({ pattern, times: solved.counts[i] ?? 0 }))
      .filter(({ times }) => times > 0);
  }

  close(): void {
    this.master.close();
  }
}

/**
 * Column generation over two-stage patterns of every kind of sheet and both directions. `nodes` limits the search for
 * whole numbers; 0 asks for the bound alone.
 */
export const stripPatterns = (problem: Problem, solver: LinearSolver, nodes: number): StripProof => {
  const types = typesOf(problem);
  const raster = rasterOf(problem);
  const generation = new Generation(problem, types, raster, solver);
  try {
    generation.begin();
    const price = generation.run();
    return { price, used: nodes > 0 && raster.exact ? generation.whole(nodes) : null, types };
  } finally {
    generation.close();
  }
};
