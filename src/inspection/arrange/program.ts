/** One column of a linear program: what it costs, and how small and large it may be. */
export interface Column {
  readonly cost: number;
  readonly least: number;
  readonly most: number;
  readonly whole: boolean;
}

/** One row: least ≤ Σ weight · column ≤ most. */
export interface ProgramRow {
  readonly least: number;
  readonly most: number;
  readonly at: readonly number[];
  readonly weights: readonly number[];
}

/** Minimise the cost of the columns under the rows. */
export interface Program {
  readonly columns: readonly Column[];
  readonly rows: readonly ProgramRow[];
}

export interface ProgramAnswer {
  readonly values: readonly number[];
  readonly cost: number;
  /** No answer costs less than this; the cost itself where it is proved best. */
  readonly bound: number;
}

/** Solves a program; null where it has no answer, or none was found within what the solver allows itself. */
export type ProgramSolver = (program: Program) => ProgramAnswer | null;

/** The same program with every column free to be a fraction: its cost bounds that of the whole one. */
export const relaxed = ({ columns, rows }: Program): Program => ({
  columns: columns.map((column) => ({ ...column, whole: false })),
  rows,
});
