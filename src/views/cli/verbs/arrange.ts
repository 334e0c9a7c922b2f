import { basename, dirname } from 'node:path';
import loadHighs from 'highs';
import { type Design, printDesign } from '../../../design/index.ts';
import {
  ARRANGE_FIRST,
  type ArrangeFirst,
  type Arrangement,
  type ArrangePlan,
  highsProgram,
} from '../../../inspection/index.ts';
import {
  arrangeRows,
  nameOfPart,
  sayArrangeFirst,
  sayArrangement,
  sayArrangePlan,
  sayStaying,
} from '../../../says/index.ts';
import { BadInput } from '../bad-input.ts';
import { openFlow } from '../open-flow.ts';
import type { Outcome } from '../outcome.ts';
import { readDesignFile } from '../read-design-file.ts';
import { textTable } from '../text-table.ts';
import { writeFiles } from '../write-files.ts';

/** As they stand on the command line. */
export interface ArrangeOptions {
  readonly keep: readonly string[];
  readonly keepCarcasses?: boolean;
  readonly first?: string;
  readonly to?: string;
}

const refused = (at: string, says: string): BadInput => new BadInput([{ file: null, at, says }]);

/** Gear by its id, or by its name where that is of one item only. */
const keptGear = (design: Design, wanted: readonly string[]): readonly string[] =>
  wanted.map((text) => {
    const named = design.gear.filter(({ id, name }) => id === text || name === text);
    const [only] = named;
    if (!only || named.length > 1)
      throw refused(
        '--keep',
        `expected the id or the name of one item of gear, found '${text}', which ${named.length === 0 ? 'is none' : `are ${named.length}`}`,
      );
    return only.id;
  });

const firstFrom = (text: string | undefined): ArrangeFirst => {
  const first = ARRANGE_FIRST.find((one) => one === (text ?? 'balance'));
  if (!first) throw refused('--first', `expected ${ARRANGE_FIRST.join(', ')}, found '${text}'`);
  return first;
};

const tableLines = (plan: ArrangePlan, design: Design, names: (id: string) => string): readonly string[] =>
  textTable(
    [
      { title: '', align: 'left' },
      { title: 'as it is', align: 'left' },
      ...plan.choices.map(({ first }) => ({ title: sayArrangeFirst(first), align: 'left' }) as const),
    ],
    [
      ...arrangeRows(design.units, names).map(({ what, said }) => [
        what,
        said(plan.now),
        ...plan.choices.map(({ figures }) => said(figures)),
      ]),
      ['open cautions', String(plan.cautions), ...plan.choices.map(({ cautions }) => String(cautions))],
      ['items that move', '0', ...plan.choices.map(({ items }) => String(items.length))],
    ],
  );

const choiceLines = (choice: Arrangement, names: (id: string) => string): readonly string[] => [
  '',
  `${sayArrangeFirst(choice.first)}:`,
  ...sayArrangement(choice, names).map((line) => `  ${line}`),
];

/**
 * `arrange DESIGN`: other places for what is stowed, with the figures before and after. Nothing is changed: with `--to`
 * the arrangement that `--first` names is written to a file of its own.
 */
export const arrange = async (path: string, options: ArrangeOptions): Promise<Outcome> => {
  const design = readDesignFile(path);
  const wishes = { keep: keptGear(design, options.keep), keepCarcasses: options.keepCarcasses === true };
  const wanted = firstFrom(options.first);
  const flow = await openFlow();
  const plan = flow.arrangement(design, wishes, highsProgram(await loadHighs()));
  const names = nameOfPart(design, flow.fitOut(design));
  const chosen = plan.choices.find(({ first }) => first.includes(wanted));
  const { to } = options;
  const written = to !== undefined && chosen !== undefined;
  if (written) writeFiles(dirname(to), [{ path: basename(to), content: printDesign(chosen.design) }]);
  const ending =
    to === undefined
      ? []
      : [
          '',
          written ? `${to}: written, ${sayArrangeFirst(chosen.first)}` : 'nothing better was found: nothing written',
        ];
  return {
    lines: [
      `${design.title}: arrangement`,
      '',
      ...tableLines(plan, design, names),
      ...plan.choices.flatMap((choice) => choiceLines(choice, names)),
      '',
      ...(plan.choices.length === 0 ? ['Nothing better was found: it stands well as it is.'] : []),
      ...sayArrangePlan(plan, design.units),
      ...sayStaying(plan, names),
      ...ending,
    ],
    json: {
      now: plan.now,
      choices: plan.choices.map((choice) => {
        const { first, items, carcasses, figures, cautions, best } = choice;
        return { first, items, carcasses, figures, cautions, best, says: sayArrangement(choice, names) };
      }),
      bounds: plan.bounds,
      exact: plan.exact,
      stays: plan.stays,
      written: written ? to : null,
    },
    exitCode: 0,
  };
};
