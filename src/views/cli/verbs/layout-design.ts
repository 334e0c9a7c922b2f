import { formatLengthUnit } from '../../../base/index.ts';
import { replaceStock, stockProblems } from '../../../design/index.ts';
import { sayProblem } from '../../../says/index.ts';
import { boardLayout, createDrawings, sayLayout, sheetJobs, sheetLayoutsOf, sheetsText } from '../../../shop/index.ts';
import { openCabinetFlow } from '../open-flow.ts';
import type { Outcome } from '../outcome.ts';
import { readStockFile } from '../read-layout-lists.ts';
import { readLetter } from '../read-letter.ts';
import { sheetLines, sheetsJson, solved } from './layout-run.ts';
import { type GivenSettings, jobWith } from './layout-settings.ts';

const PERCENT = 100;

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** `layout DESIGN`: every board of a design, from its own stock or from a list that takes the place of it. */
export const layoutDesign = async (
  path: string,
  stockPath: string | undefined,
  given: GivenSettings,
): Promise<Outcome> => {
  const flow = openCabinetFlow();
  const { catalog } = flow;
  const read = readLetter(path);
  const design = stockPath === undefined ? read : replaceStock(read, readStockFile(stockPath, catalog));
  const rules = flow.rules(design);
  const { rows } = createDrawings({ design, fitout: flow.fitOut(design), catalog, rules, space: null });
  const boards = sheetJobs(rows, catalog, rules, design.stock).map((board) => ({
    ...board,
    job: jobWith(board.job, given),
  }));
  const laid = [];
  let seconds = 0;
  for (const [i, board] of boards.entries()) {
    // What a board does not need is left to those after it.
    const share = Math.max(0, given.seconds - seconds) / (boards.length - i);
    const found = await solved(board.job, { seconds: share, seed: given.seed });
    laid.push(boardLayout(board, found.layout));
    seconds += found.seconds;
  }
  const whole = sheetLayoutsOf(laid);
  const sheets = laid.flatMap(({ layout }) => layout.sheets);
  const area = ({ length, width }: { readonly length: number; readonly width: number }): number => length * width;
  const all = sum(sheets.map(area));
  const usedShare = all === 0 ? 0 : sum(sheets.flatMap(({ parts }) => parts.map(area))) / all;
  const { units } = design;
  return {
    lines: [
      ...laid.flatMap(({ board, layout, sequences }) => [
        ...sheetLines(layout, sequences, units),
        ...sayLayout(layout, (mm) => formatLengthUnit(mm, units)).map((says) => `${board.materialName}: ${says}`),
        '',
      ]),
      ...stockProblems(design.stock, catalog).map((problem) => `${sayProblem(problem)}; it serves no part.`),
      `${sheetsText(whole)}, ${Number((usedShare * PERCENT).toFixed(1))} % used, price ${whole.price.toFixed(2)}`,
    ],
    json: {
      sheets: laid.flatMap(({ layout, sequences }) => sheetsJson(layout, sequences)),
      unplaced: laid.flatMap(({ layout }) => layout.unplaced),
      notes: laid.flatMap(({ layout }) => layout.notes),
      lowerBoundSheets: sum(laid.map(({ layout }) => layout.proof.lowerBoundSheets)),
      boards: laid.map(({ board, layout, sheets: bought, offcuts }) => ({
        material: board.material,
        thickness: board.thickness,
        sheets: bought,
        offcuts,
        price: layout.price,
        proof: layout.proof,
      })),
      usedShare,
      price: whole.price,
      seconds: Number(seconds.toFixed(3)),
    },
    exitCode: 0,
  };
};
