import { groupBy } from '../base/index.ts';
import { stockProblems } from '../design/index.ts';
import type { FitProblem } from '../fitout/index.ts';
import { openStops } from '../inspection/index.ts';
import { sayFitProblem, sayProblem } from '../says/index.ts';
import { namesOf, type PapersInput } from './papers/paper.ts';
import { boardRemarks } from './sheet-layouts.ts';

type MissingInput = Pick<
  PapersInput,
  'design' | 'fitout' | 'space' | 'carry' | 'layouts' | 'price' | 'drawings' | 'inspection' | 'rules' | 'catalog'
>;

/** Some problems leave nothing to cut, others leave parts that are not as they were meant. */
const partsOf = ({ at }: FitProblem, { fitout }: MissingInput): string =>
  fitout.panels.some(({ origin, carcass }) => origin === at || carcass === at)
    ? 'Its parts are drawn as far as they are known: do not cut them yet.'
    : 'Its parts are missing.';

/** One sentence for all marks of which the same is not known. */
const unknownLines = ({ drawings }: MissingInput): readonly string[] =>
  [...groupBy(drawings.rows, ({ note }) => note)].flatMap(([note, rows]) =>
    /in the catalog/.test(note) ? [`${rows.map(({ mark }) => mark).join(', ')}: ${note}.`] : [],
  );

/**
 * What a reader would look for in the packet and not find, a sentence each: parts of the design that could not be
 * solved, parts that lie on no sheet, settings that were not used, what is without a price, views without a vehicle.
 */
export const missingLines = (input: MissingInput): readonly string[] => {
  const { design, fitout, space, layouts, price, drawings, inspection, rules, catalog } = input;
  const names = namesOf(input);
  return [
    ...fitout.problems.map((problem) => `${sayFitProblem(problem, design.units, names)}. ${partsOf(problem, input)}`),
    ...(drawings.rows.length === 0 ? ['Nothing is drawn and nothing cut: the cabinet has no panel yet.'] : []),
    ...layouts.boards.flatMap((laid) =>
      boardRemarks(laid, design.units).map((remark) => `${laid.board.materialName}: ${remark}`),
    ),
    ...stockProblems(design.stock, catalog).map((problem) => `${sayProblem(problem)}; it serves no part.`),
    ...(rules.value('saw-kerf') >= 0
      ? []
      : ['The sheets are laid out without a kerf: parts may come out short. State the width of the cut first.']),
    ...unknownLines(input),
    ...price.missing,
    ...(space === null
      ? ['The vehicle stands behind no view and no gap to it is checked: the survey does not give a cargo space yet.']
      : []),
    ...(space !== null && !input.carry && fitout.carcasses.length > 0
      ? [
          openStops(inspection).some(({ rule }) => rule === 'body-in-space')
            ? 'No paper says how the cabinet is carried in: it does not fit where it stands, so that no way was searched for.'
            : 'No paper says how the cabinet is carried in: the way has not been searched for yet.',
        ]
      : []),
    ...(inspection.cases.length === 0
      ? ['No axle load, no balance picture: the weigh slip, the wheelbase or the place of the rear axle is missing.']
      : []),
  ];
};

/** Makes one thing of many; what cannot be made is named and the rest goes on. */
export interface Guard {
  readonly missing: readonly string[];
  readonly make: <T>(what: string, maker: () => T, instead: T) => T;
  readonly makeLater: <T>(what: string, maker: () => Promise<T>, instead: T) => Promise<T>;
}

export const createGuard = (): Guard => {
  const missing: string[] = [];
  const name = (what: string, fault: unknown): void => {
    missing.push(`${what} could not be made: ${fault instanceof Error ? fault.message : String(fault)}`);
  };
  return {
    missing,
    make: (what, maker, instead) => {
      try {
        return maker();
      } catch (fault) {
        name(what, fault);
        return instead;
      }
    },
    makeLater: async (what, maker, instead) => {
      try {
        return await maker();
      } catch (fault) {
        name(what, fault);
        return instead;
      }
    },
  };
};
