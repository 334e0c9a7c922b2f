import { compareText, distance, type Vec3 } from '../base/index.ts';
import type { HouseRules } from '../catalog/index.ts';
import type { Reading, Survey } from '../design/index.ts';
import { readsAngle } from '../design/index.ts';
import type { ExtraReading, Verdict } from './adjust/index.ts';
import { readSurvey, type SurveyRead } from './read-survey.ts';

export const SURVEY_FACTS = [
  'survey-misreading',
  'survey-undecided',
  'survey-closure-error',
  'survey-start-value',
  'survey-single-reading',
] as const;
export type SurveyFactCode = (typeof SURVEY_FACTS)[number];

/** Something about the survey that a person must know before metal is cut, with what hangs on it. */
export interface SurveyFact {
  readonly code: SurveyFactCode;
  /** Readings, stations, obstacles or closures it is about, most important first. */
  readonly parts: readonly string[];
  /** How far off, or how loosely known, in mm. */
  readonly valueMm: number;
  readonly limitMm: number;
  /** The house rule of the limit. */
  readonly rule: string;
  /** True when no packet may be released for a panel within `fromX`–`toX`. */
  readonly holds: boolean;
  /** Depths of the cargo space that depend on it. */
  readonly fromX: number;
  readonly toX: number;
  /** Where, as a segment between marks, or null. */
  readonly at: readonly [Vec3, Vec3] | null;
  /** The reading that would settle it, or null. */
  readonly wouldTell: ExtraReading | null;
}

type Span = Pick<SurveyFact, 'fromX' | 'toX'>;

const EVERYWHERE: Span = { fromX: -Infinity, toX: Infinity };

/** A section shapes the room as far as the stations beside it. A mark of no section carries the frame: everything. */
const spanOfMarks = ({ stations }: SurveyRead, marks: readonly string[]): Span => {
  const touched = stations.flatMap(({ left, right }, i) =>
    [...left, ...right].some(({ mark }) => mark !== null && marks.includes(mark)) ? [i] : [],
  );
  const bound = new Set(stations.flatMap(({ left, right }) => [...left, ...right].map((point) => point.mark)));
  if (touched.length === 0 || marks.some((mark) => !bound.has(mark as never))) return EVERYWHERE;
  return {
    fromX: stations[Math.max(0, Math.min(...touched) - 1)]?.xMm ?? -Infinity,
    toX: stations[Math.min(stations.length - 1, Math.max(...touched) + 1)]?.xMm ?? Infinity,
  };
};

const marksOfReading = ({ from, to, at }: Reading): readonly string[] => [
  from,
  ...(to ? [to] : []),
  ...(at ? [at] : []),
];

interface Look {
  readonly survey: Survey;
  readonly read: SurveyRead;
  readonly verdict: Verdict;
  readonly rules: HouseRules;
}

const placeOf = ({ read }: Look, reading: Reading): SurveyFact['at'] => {
  const from = read.points.get(reading.from);
  const to = reading.to === null ? from : read.points.get(reading.to);
  return from && to ? [from, to] : null;
};

/** An error of an angle counts by the way that it moves the far mark. */
const asLength = (look: Look, reading: Reading, off: number): number => {
  if (!readsAngle(reading.kind)) return Math.abs(off);
  const hub = look.read.points.get(reading.at ?? reading.from);
  const far = look.read.points.get(reading.to ?? reading.from);
  return hub && far ? Math.abs(off) * distance(hub, far) : 0;
};

const factOf = (
  look: Look,
  code: SurveyFactCode,
  reading: Reading,
  given: Partial<SurveyFact> & Pick<SurveyFact, 'valueMm' | 'holds'>,
): SurveyFact => {
  const rule = given.rule ?? 'closure-error-stop';
  return {
    code,
    parts: [reading.id],
    rule,
    limitMm: look.rules.value(rule),
    at: placeOf(look, reading),
    wouldTell: null,
    ...spanOfMarks(look.read, marksOfReading(reading)),
    ...given,
  };
};

const byId = (survey: Survey, id: string): Reading | null => survey.readings.find((one) => one.id === id) ?? null;

const misreadings = (look: Look): readonly SurveyFact[] =>
  look.verdict.suspects.flatMap(({ id, read, others }) => {
    const reading = byId(look.survey, id);
    return reading
      ? [factOf(look, 'survey-misreading', reading, { valueMm: asLength(look, reading, read - others), holds: true })]
      : [];
  });

const undecided = (look: Look): readonly SurveyFact[] => {
  const { verdict, survey } = look;
  const doubtful = verdict.undecided.flatMap((id) => byId(survey, id) ?? []);
  const [first] = doubtful;
  if (!first) return [];
  const row = verdict.adjustment.readings.find(({ id }) => id === first.id);
  return [
    factOf(look, 'survey-undecided', first, {
      parts: verdict.undecided,
      valueMm: asLength(look, first, (row?.residual ?? 0) / Math.max(row?.redundancy ?? 1, Number.EPSILON)),
      holds: true,
      wouldTell: verdict.wouldTell,
      ...spanOfMarks(look.read, doubtful.flatMap(marksOfReading)),
    }),
  ];
};

/** Residuals beyond what the shop allows between readings, of readings that are not already named or in doubt. */
const closureErrors = (look: Look): readonly SurveyFact[] => {
  const { verdict, survey, rules } = look;
  const told = new Set([...verdict.suspects.map(({ id }) => id), ...verdict.undecided]);
  const [again, stop] = [rules.value('closure-error-remeasure'), rules.value('closure-error-stop')];
  return verdict.adjustment.readings.flatMap((row) => {
    const reading = byId(survey, row.id);
    if (!reading || told.has(row.id)) return [];
    const valueMm = asLength(look, reading, row.residual);
    if (valueMm <= again) return [];
    const rule = valueMm > stop ? 'closure-error-stop' : 'closure-error-remeasure';
    return [factOf(look, 'survey-closure-error', reading, { valueMm, rule, holds: valueMm > stop })];
  });
};

const singles = (look: Look): readonly SurveyFact[] =>
  look.verdict.unchecked.flatMap((id) => {
    const reading = byId(look.survey, id);
    return reading ? [factOf(look, 'survey-single-reading', reading, { valueMm: 0, holds: false })] : [];
  });

const startFact = (id: string, span: Span, rules: HouseRules): SurveyFact => ({
  code: 'survey-start-value',
  parts: [id],
  valueMm: rules.value('start-value-sigma'),
  limitMm: 0,
  rule: 'start-value-sigma',
  holds: true,
  at: null,
  wouldTell: null,
  ...span,
});

/** What still rests on the vehicle class instead of the vehicle: sections, obstacles, closures. */
const startValues = (survey: Survey, read: SurveyRead, rules: HouseRules): readonly SurveyFact[] => {
  const sections = read.stations.flatMap((station, i) => {
    const start = [...station.left, ...station.right].some((point) => point.standing === 'start');
    const fromX = read.stations[Math.max(0, i - 1)]?.xMm ?? -Infinity;
    const toX = read.stations[Math.min(read.stations.length - 1, i + 1)]?.xMm ?? Infinity;
    return start ? [startFact(station.id, { fromX, toX }, rules)] : [];
  });
  const rest = [...survey.obstacles, ...survey.closures]
    .filter((item) => item.startValues ?? survey.startValues)
    .map((item) => startFact(item.id, EVERYWHERE, rules));
  return [...sections, ...rest];
};

/**
 * The state of the survey as facts: readings named or in doubt, closure errors beyond the house rules, start values
 * left, dimensions that hang on one reading. Ordered by weight: what holds a release first, then by size.
 */
export const surveyFacts = (
  survey: Survey,
  rules: HouseRules,
  read = readSurvey(survey, rules),
): readonly SurveyFact[] => {
  const { verdict } = read;
  const look = verdict ? { survey, read, verdict, rules } : null;
  const facts = [
    ...(look ? [...misreadings(look), ...undecided(look), ...closureErrors(look), ...singles(look)] : []),
    ...startValues(survey, read, rules),
  ];
  return facts.toSorted(
    (a, b) =>
      Number(b.holds) - Number(a.holds) ||
      SURVEY_FACTS.indexOf(a.code) - SURVEY_FACTS.indexOf(b.code) ||
      b.valueMm - a.valueMm ||
      compareText(a.parts[0] ?? '', b.parts[0] ?? ''),
  );
};

/** The facts that hold a release for something that stands between two depths: closure errors and start values. */
export const surveyHolds = (facts: readonly SurveyFact[], fromX: number, toX: number): readonly SurveyFact[] =>
  facts.filter((fact) => fact.holds && fact.fromX < toX && fact.toX > fromX);
