import type { Highs } from 'highs';
import type { ProgramSolver } from './program.ts';

/** A stop for programs that branch for ever; counted in nodes, so that the same design gives the same answer. */
const MOST_NODES = 4000;

/** What the solver says of an answer that keeps every row. */
const FEASIBLE = 2;

/** The solver of programs from the loaded HiGHS runtime. */
export const highsProgram =
  (highs: Highs): ProgramSolver =>
  ({ columns, rows }) => {
    const model = highs.createModel();
    try {
      model.options.set({ output_flag: false, mip_max_nodes: MOST_NODES, mip_rel_gap: 0, mip_abs_gap: 0 });
      const bound = (value: number): number =>
        value === Number.POSITIVE_INFINITY
          ? highs.infinity
          : value === Number.NEGATIVE_INFINITY
            ? -highs.infinity
            : value;
      for (const { least, most } of rows) model.addRow(bound(least), bound(most), { indices: [], values: [] });
      const entries = columns.map(() => ({ indices: [] as number[], values: [] as number[] }));
      rows.forEach(({ at, weights }, row) => {
        at.forEach((column, i) => {
          entries[column]?.indices.push(row);
          entries[column]?.values.push(weights[i] ?? 0);
        });
      });
      columns.forEach(({ cost, least, most, whole }, i) => {
        model.addCol(cost, bound(least), bound(most), entries[i] ?? { indices: [], values: [] });
        if (whole) model.changeColIntegrality(i, highs.constants.variableType.integer);
      });
      model.run();
      const values = model.getSolution().colValue;
      const optimal = model.getModelStatus() === highs.constants.modelStatus.optimal;
      // Stopped at its node limit, the solver still has the best answer it came upon.
      const anyWhole = columns.some(({ whole }) => whole);
      const feasible = Number(model.info.get('primal_solution_status')) === FEASIBLE;
      if (values.length !== columns.length || !(optimal || (anyWhole && feasible))) return null;
      const cost = model.getObjectiveValue();
      const lower = anyWhole ? Number(model.info.get('mip_dual_bound')) : cost;
      return { values: [...values], cost, bound: Number.isFinite(lower) ? Math.min(cost, lower) : -Infinity };
    } finally {
      model.dispose();
    }
  };
