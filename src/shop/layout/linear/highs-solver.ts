import type { Highs } from 'highs';
import type { LinearSolver, Master, Row } from './solver.ts';

/** A whole-number solution this near to its bound is good enough: shares of a sheet do not count. */
const WHOLE_GAP = 1 / 10_000;

/** Seconds, on the solver's own clock: only a stop for jobs whose first node already takes too long. */
const WHOLE_SECONDS = 1.4;

/** The solver of the proof, from the loaded HiGHS runtime. */
export const highsSolver = (highs: Highs): LinearSolver => ({
  open: (rows: readonly Row[], most = Number.POSITIVE_INFINITY): Master => {
    const model = highs.createModel();
    model.options.set({ output_flag: false });
    // The limit holds for all runs of the model together.
    if (Number.isFinite(most)) model.options.set({ time_limit: most });
    const bound = (value: number): number =>
      value === Number.POSITIVE_INFINITY
        ? highs.infinity
        : value === Number.NEGATIVE_INFINITY
          ? -highs.infinity
          : value;
    for (const { least, most } of rows) model.addRow(bound(least), bound(most), { indices: [], values: [] });
    let columns = 0;
    // A wrong model answers without an error: only 'optimal' counts.
    const isOptimal = (): boolean => model.getModelStatus() === highs.constants.modelStatus.optimal;
    return {
      addColumn: (cost, at, counts) => {
        model.addCol(cost, 0, highs.infinity, { indices: [...at], values: [...counts] });
        columns++;
      },
      solve: () => {
        model.run();
        if (!isOptimal()) return null;
        return { value: model.getObjectiveValue(), duals: model.getSolution().rowDual };
      },
      solveWhole: (nodes, seconds = WHOLE_SECONDS) => {
        for (let i = 0; i < columns; i++) model.changeColIntegrality(i, highs.constants.variableType.integer);
        model.zeroAllClocks();
        model.options.set({ mip_max_nodes: nodes, mip_rel_gap: WHOLE_GAP, time_limit: seconds });
        model.run();
        const { colValue } = model.getSolution();
        // Stopped at its node limit, the solver still has the best solution it came upon.
        if (colValue.length !== columns || !(colValue.reduce((sum, x) => sum + x, 0) > 0)) return null;
        return { value: model.getObjectiveValue(), counts: colValue.map(Math.round) };
      },
      spent: () => model.getRunTime(),
      close: () => model.dispose(),
    };
  },
});
