import type { Problem } from '../base/index.ts';
import type { HouseRules } from '../catalog/index.ts';
import type { Survey } from '../design/index.ts';
import type { Adjustment, LooseCoordinate, Verdict } from './adjust/index.ts';
import { readSurvey } from './read-survey.ts';
import { surveyNetwork } from './survey-network.ts';

const AXIS_WORDS = ['forward', 'to the left', 'up'] as const;

/** What a mark is called on paper and screen; its id where nobody has named it. */
const nameOf = (survey: Survey, id: string): string => survey.marks.find((mark) => mark.id === id)?.name || id;

/** What to measure so that a coordinate is held, by axis. */
const WOULD_HOLD = [
  'a depth reading of this mark, or a distance to a mark well ahead of it or behind it',
  'an offset from the centre line or a width of this mark, or a distance to a mark well to its side',
  'a height or a level reading of this mark, or a distance to a mark well above or below it',
] as const;

const looseProblem = (survey: Survey, { mark, axis }: LooseCoordinate): Problem => ({
  at: `survey.marks[${survey.marks.findIndex(({ id }) => id === mark)}]`,
  code: 'not-held',
  expected: WOULD_HOLD[axis],
  got: `${nameOf(survey, mark)}, ${AXIS_WORDS[axis]}`,
});

/** A net that gives as a whole is named once, by its first loose mark; a mark that gives alone, by each axis. */
const looseProblems = (survey: Survey, { loose, freedoms }: Adjustment): readonly Problem[] => {
  const frameless = freedoms > 0 && loose.length > freedoms;
  const all = loose.map((one) => looseProblem(survey, one));
  if (!frameless) return all;
  const marks = [...new Set(loose.map(({ mark }) => mark))];
  return [
    {
      at: 'survey.marks',
      code: 'net-gives',
      expected:
        freedoms === 1
          ? 'one more reading across the way in which these marks give together'
          : `${freedoms} more readings in other directions, or marks fixed as the frame`,
      got: marks.map((mark) => nameOf(survey, mark)).join(', '),
    },
  ];
};

const swapProblems = (survey: Survey, verdict: Verdict): readonly Problem[] =>
  verdict.suspects.flatMap(({ id, slip, read, others }): readonly Problem[] =>
    slip === null
      ? []
      : [
          {
            at: `survey.readings[${survey.readings.findIndex((reading) => reading.id === id)}].value`,
            code: slip,
            expected: `about ${others.toFixed(0)} mm; read it again`,
            got: `${Number(read.toFixed(1))} mm`,
          },
        ],
  );

/**
 * Everything that keeps readings from being used or trusted, each with its place and what to measure or mend: faulty
 * rows, marks that hang nowhere, coordinates that nothing holds, a net without a frame, and misreadings that a usual
 * slip explains (feet and inches swapped, a wrong unit, the hook at 100).
 */
export const networkProblems = (survey: Survey, rules: HouseRules): readonly Problem[] => {
  if (survey.readings.length === 0) return [];
  const read = readSurvey(survey, rules);
  const { problems } = surveyNetwork(survey, rules);
  if (!read.verdict) return problems;
  return [...problems, ...looseProblems(survey, read.verdict.adjustment), ...swapProblems(survey, read.verdict)];
};
