import { CLOSURE_KINDS, type Reading, type Survey, VEHICLE_CLASSES } from '../design/index.ts';
import { type ExtraReading, type PlanStep, surveyPlan } from '../envelope/index.ts';

type Ends = Pick<Reading, 'kind' | 'from' | 'to' | 'at'>;

const keyOf = ({ kind, from, to, at }: Ends): string => [kind, from, to ?? '', at ?? ''].join(' ');

const SECTION = /^section (.+)$/;

/** A step of the plan as a reading is called away from its group: `floor width, rear section`. */
export const sayPlanStep = ({ name, group }: PlanStep): string => {
  const section = SECTION.exec(group)?.[1];
  return section === undefined ? name : `${name}, ${section} section`;
};

/** What the plan calls each reading; its names do not depend on the class of the vehicle. */
const planned: ReadonlyMap<string, string> = new Map(
  CLOSURE_KINDS.flatMap((kind) =>
    surveyPlan(kind, VEHICLE_CLASSES[0]).steps.flatMap((step) =>
      step.reading ? [[keyOf(step.reading), sayPlanStep(step)] as const] : [],
    ),
  ),
);

/** A mark by its name, or by its id where nobody has named it. */
export const sayMark = (survey: Survey, id: string): string =>
  survey.marks.find((mark) => mark.id === id)?.name || id.replace(/^mark-/, '').replaceAll('-', ' ');

const plainly = ({ kind, from, to, at }: Ends, mark: (id: string) => string): string => {
  const [a, b] = [mark(from), to === null ? '?' : mark(to)];
  switch (kind) {
    case 'distance':
      return `${a} to ${b}, straight`;
    case 'along':
      return `${a} to ${b}, depth`;
    case 'across':
      return `${a} to ${b}, width`;
    case 'height':
      return `${b} above ${a}`;
    case 'offset':
      return `centre line to ${a}`;
    case 'level':
      return `level from ${a} to ${b}`;
    case 'angle':
      return `angle at ${at === null ? '?' : mark(at)}, ${a} to ${b}`;
  }
};

/** What was read, in words: as the plan of the survey calls it, or by its marks. */
export const sayReading = (survey: Survey, reading: Ends): string =>
  planned.get(keyOf(reading)) ?? plainly(reading, (id) => sayMark(survey, id));

/** The further reading that would tell which of several is wrong, as an order. */
export const sayExtraReading = (survey: Survey, { kind, from, to, repeats }: ExtraReading): string => {
  const repeated = survey.readings.findIndex((reading) => reading.id === repeats);
  const known = survey.readings[repeated];
  if (known) return `take reading ${repeated + 1}, ${sayReading(survey, known)}, once more, set up afresh`;
  const ends = [from, to ?? ''].map((id) => sayMark(survey, id)).join(' to ');
  return kind === 'distance' ? `measure ${ends}, straight` : `measure ${ends} (${kind})`;
};
