/**
 * What the proof needs of a linear solver: minimise cost · x, rows at least their demand or at most their stock, x ≥ 0.
 * Passed in as a value, so that this room loads nothing by itself.
 */
export interface LinearSolver {
  /** `seconds`: of the solver's clock, for all linear optima of this master together; without, as long as they take. */
  readonly open: (rows: readonly Row[], seconds?: number) => Master;
}

/** One row of the master: Σ column · x between the two. */
export interface Row {
  readonly least: number;
  readonly most: number;
}

export interface Master {
  /** `rows` and `counts` belong together; the number of the column is the number of columns before it. */
  readonly addColumn: (cost: number, rows: readonly number[], counts: readonly number[]) => void;
  /** The linear optimum with the price of each row; null when there is none, or no time for it. */
  readonly solve: () => { readonly value: number; readonly duals: Float64Array } | null;
  /** A good whole-number solution after at most this many nodes and seconds by the solver's clock; null when none was found. */
  readonly solveWhole: (
    nodes: number,
    seconds?: number,
  ) => { readonly value: number; readonly counts: Float64Array } | null;
  /** Seconds of the solver's clock that the linear optima have taken so far. */
  readonly spent: () => number;
  /** The solver's memory is not collected by itself. */
  readonly close: () => void;
}
