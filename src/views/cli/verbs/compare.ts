import type { Design } from '../../../design/index.ts';
import type { FitOut } from '../../../fitout/index.ts';
import { changedPanels, compareDesigns, compareFigures, type Figure } from '../../../revision/index.ts';
import { nameOfPart, sayChange, sayFigureChange } from '../../../says/index.ts';
import { designFigures } from '../../../shop/index.ts';
import { openFlow } from '../open-flow.ts';
import type { Outcome } from '../outcome.ts';
import { readLetter } from '../read-letter.ts';

/** `compare DESIGN_A DESIGN_B`: what changed, in words and by number. Each may be a letter: `design.json@A`. */
export const compare = async (pathA: string, pathB: string): Promise<Outcome> => {
  const [before, after] = [readLetter(pathA), readLetter(pathB)];
  const flow = await openFlow();
  const [fitBefore, fitAfter] = [flow.fitOut(before), flow.fitOut(after)];
  const changes = compareDesigns(before, after);
  const panels = changedPanels(fitBefore, fitAfter);
  const figures = (design: Design, fitout: FitOut): readonly Figure[] =>
    designFigures({
      // Both are cut from what the later one has in stock: a difference is the cabinet's then.
      design: { ...design, stock: after.stock },
      fitout,
      catalog: flow.catalog,
      rules: flow.rules(design),
      inspection: flow.inspection(design),
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
