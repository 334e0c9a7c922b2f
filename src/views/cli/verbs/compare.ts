import type { Design } from '../../../design/index.ts';
import type { FitOut } from '../../../fitout/index.ts';
import type { Flow } from '../../../flow.ts';
import { changedPanels, compareDesigns, compareFigures, type Figure, figuresOf } from '../../../revision/index.ts';
import { nameOfPart, sayChange, sayFigureChange } from '../../../says/index.ts';
import { cutList, layoutSheets, markParts, STANDARD_BUDGET, sheetJobs } from '../../../shop/index.ts';
import { openFlow } from '../open-flow.ts';
import type { Outcome } from '../outcome.ts';
import { readLetter } from '../read-letter.ts';

const sheetsOf = (design: Design, fitout: FitOut, flow: Flow): number => {
  const [catalog, rules] = [flow.catalog, flow.rules(design)];
  const rows = cutList({ fitout, marks: markParts(fitout), catalog, rules, names: nameOfPart(design, fitout) });
  const { boards } = layoutSheets(sheetJobs(rows, catalog, rules), STANDARD_BUDGET);
  return boards.reduce((sum, { layout }) => sum + layout.sheets.length, 0);
};

/** `compare DESIGN_A DESIGN_B`: what changed, in words and by number. Each may be a letter: `design.json@A`. */
export const compare = async (pathA: string, pathB: string): Promise<Outcome> => {
  const [before, after] = [readLetter(pathA), readLetter(pathB)];
  const flow = await openFlow();
  const [fitBefore, fitAfter] = [flow.fitOut(before), flow.fitOut(after)];
  const changes = compareDesigns(before, after);
  const panels = changedPanels(fitBefore, fitAfter);
  const figures = (design: Design, fitout: FitOut): readonly Figure[] =>
    figuresOf({
      fitout,
      inspection: flow.inspection(design),
      // Laying sheets out takes a moment; where no panel changed neither did the sheets.
      sheets: panels.length > 0 ? sheetsOf(design, fitout, flow) : null,
      price: null,
    });
  const numbers = compareFigures(figures(before, fitBefore), figures(after, fitAfter));
  const speech = {
    units: after.units,
    before: nameOfPart(before, fitBefore),
    after: nameOfPart(after, fitAfter),
  };
  const said = changes.map((change) => ({ kind: change.kind, id: change.id, says: sayChange(change, speech) }));
  const saidNumbers = numbers.map((change) => ({ ...change, says: sayFigureChange(change, after.units) }));
  const list = (title: string, lines: readonly string[]): readonly string[] =>
    lines.length === 0 ? [] : ['', title, ...lines.map((line) => `  ${line}`)];
  return {
    lines: [
      changes.length === 0 ? 'the same design' : `${changes.length} change${changes.length === 1 ? '' : 's'}`,
      ...list(
        'In words',
        said.map(({ says }) => says),
      ),
      ...list(
        'By number',
        saidNumbers.map(({ says }) => says),
      ),
      ...list(
        'Panels',
        panels.map(({ name, how }) => `${name}: ${how}`),
      ),
    ],
    json: { changes: said, figures: saidNumbers, panels },
    exitCode: 0,
  };
};
