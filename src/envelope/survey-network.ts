import { type Problem, radians } from '../base/index.ts';
import type { HouseRules } from '../catalog/index.ts';
import { type Reading, readsAngle, type Survey } from '../design/index.ts';
import type { Network, NetworkMark, NetworkReading } from './adjust/index.ts';

/** Readings that need a second mark. */
const NEEDS_TO: ReadonlySet<Reading['kind']> = new Set(['distance', 'along', 'across', 'height', 'level', 'angle']);

const problem = (i: number, field: string, code: string, expected: string, got?: string): Problem => ({
  at: `survey.readings[${i}]${field}`,
  code,
  expected,
  ...(got === undefined ? {} : { got }),
});

const ENDS = ['from', 'to', 'at'] as const;

const markProblems = (reading: Reading, i: number, known: ReadonlySet<string>): readonly Problem[] => {
  const problems: Problem[] = [];
  for (const end of ENDS) {
    const mark = reading[end];
    if (mark !== null && !known.has(mark))
      problems.push(problem(i, `.${end}`, 'no-such-mark', 'a mark of the survey', mark));
  }
  if (NEEDS_TO.has(reading.kind) && reading.to === null)
    problems.push(problem(i, '.to', 'missing', 'the mark at the other end of the reading'));
  if (reading.kind === 'angle' && reading.at === null)
    problems.push(problem(i, '.at', 'missing', 'the mark at which the angle was read'));
  const used = ENDS.flatMap((end) => {
    const mark = reading[end];
    return mark === null || (end !== 'from' && reading.kind === 'offset') ? [] : [mark];
  });
  if (new Set(used).size < used.length)
    problems.push(problem(i, '.to', 'same-mark', 'two different marks', reading.from));
  return problems;
};

const RIGHT_ANGLE_DEG = 90;
const HALF_TURN_DEG = 180;

const valueProblems = ({ kind, value }: Reading, i: number): readonly Problem[] => {
  const at = '.value';
  if (!Number.isFinite(value)) return [problem(i, at, 'not-a-number', 'the reading as a number', String(value))];
  if (kind === 'distance' && value < 0)
    return [problem(i, at, 'negative', 'a length, or a depth, width or height reading with its sign', `${value} mm`)];
  if (kind === 'distance' && value === 0)
    return [problem(i, at, 'zero', 'the reading itself; a blank row stays out', '0 mm')];
  if (kind === 'level' && Math.abs(value) >= RIGHT_ANGLE_DEG)
    return [problem(i, at, 'too-steep', 'less than 90° up or down', `${value}°`)];
  if (kind === 'angle' && (value <= 0 || value >= HALF_TURN_DEG))
    return [problem(i, at, 'no-angle', 'more than 0° and less than 180°', `${value}°`)];
  return [];
};

/** What makes two rows the same act of reading. A note tells a second reading from a row pasted twice. */
const sameAct = ({ kind, from, to, at, value, instrument, note }: Reading): string =>
  [kind, from, to ?? '', at ?? '', value, instrument, note].join('|');

/** Faults of single rows, each with its place: they keep a reading out of the adjustment until they are mended. */
export const readingProblems = (survey: Survey): readonly Problem[] => {
  const known = new Set<string>(survey.marks.map((mark) => mark.id));
  const seen = new Map<string, string>();
  return survey.readings.flatMap((reading, i): readonly Problem[] => {
    if (reading.leftOut) return [];
    const own = [...markProblems(reading, i, known), ...valueProblems(reading, i)];
    const before = seen.get(sameAct(reading));
    seen.set(sameAct(reading), before ?? reading.id);
    return before === undefined
      ? own
      : [...own, problem(i, '', 'duplicate', 'each reading once; a note where it was taken a second time', before)];
  });
};

const sigmaOf = (reading: Reading, rules: HouseRules): number => {
  const sigma = reading.sigma ?? rules.value(`${reading.instrument}-sigma`);
  if (!readsAngle(reading.kind)) return sigma;
  // A tape's spread is no angle: an angle taken with one counts as read with the gauge.
  const unit = rules.record(`${reading.instrument}-sigma`).unit;
  return radians(reading.sigma === null && unit !== 'deg' ? rules.value('angle-gauge-sigma') : sigma);
};

const LENGTHS_NEED = 'tape-sigma';

const networkReading = (reading: Reading, rules: HouseRules): NetworkReading | null => {
  const { id, kind, from, to, at } = reading;
  const angle = readsAngle(kind);
  const spread = sigmaOf(reading, rules);
  const own = rules.record(`${reading.instrument}-sigma`).unit;
  const sigma = !angle && reading.sigma === null && own === 'deg' ? rules.value(LENGTHS_NEED) : spread;
  const value = angle ? radians(reading.value) : reading.value;
  if (kind === 'offset') return { kind, id, from, value, sigma };
  if (to === null) return null;
  if (kind === 'angle') return at === null ? null : { kind, id, from, to, at, value, sigma };
  return { kind, id, from, to, value, sigma };
};

export interface SurveyNetwork {
  /** The marks that readings touch and the readings that can be used. */
  readonly network: Network;
  readonly problems: readonly Problem[];
}

/** Marks that hang together by readings, each group with the order of the survey. */
const groupsOf = (ids: readonly string[], readings: readonly NetworkReading[]): readonly (readonly string[])[] => {
  const leader = new Map(ids.map((id) => [id, id]));
  const leads = (id: string): string => {
    let at = id;
    for (let up = leader.get(at) ?? at; up !== at; up = leader.get(at) ?? at) at = up;
    return at;
  };
  for (const reading of readings) {
    const ends = [reading.from, ...('to' in reading ? [reading.to] : []), ...('at' in reading ? [reading.at] : [])];
    for (const end of ends.slice(1)) leader.set(leads(end), leads(reading.from));
  }
  const groups = new Map<string, string[]>();
  for (const id of ids) {
    const lead = leads(id);
    const group = groups.get(lead);
    if (group) group.push(id);
    else groups.set(lead, [id]);
  }
  return [...groups.values()];
};

/** A group that no reading of position and no fixed mark ties to the frame, while another one is. */
const disconnected = (survey: Survey, network: Network): readonly (readonly string[])[] => {
  const ids = network.marks.map((mark) => mark.id);
  const groups = groupsOf(ids, network.readings);
  if (groups.length < 2) return [];
  const place = new Map<string, Survey['marks'][number]>(survey.marks.map((mark) => [mark.id, mark]));
  const tied = (group: readonly string[]): boolean =>
    group.some((id) => (place.get(id)?.fixed ?? []).filter(Boolean).length > 1);
  return groups.some(tied) ? groups.filter((group) => !tied(group)) : groups.slice(1);
};

const disconnectedProblems = (survey: Survey, groups: readonly (readonly string[])[]): readonly Problem[] =>
  groups.map(([first = '', ...others]) => ({
    at: `survey.marks[${survey.marks.findIndex((mark) => mark.id === first)}]`,
    code: 'disconnected',
    expected: 'a reading from one of these marks to a mark of the rest, and two more in other directions',
    got: [first, ...others].map((id) => survey.marks.find((mark) => mark.id === id)?.name || id).join(', '),
  }));

/**
 * The readings of a survey as a network with spreads by instrument, and everything wrong with single rows. Readings
 * left out, faulty ones and groups of marks that hang nowhere are not in the network; marks without readings neither.
 */
export const surveyNetwork = (survey: Survey, rules: HouseRules): SurveyNetwork => {
  const problems = readingProblems(survey);
  const faulty = new Set(problems.map(({ at }) => /^survey\.readings\[(\d+)\]/.exec(at)?.[1]).map(Number));
  const readings = survey.readings.flatMap((reading, i) => {
    if (reading.leftOut || faulty.has(i)) return [];
    const read = networkReading(reading, rules);
    return read ? [read] : [];
  });
  const marksIn = (list: readonly NetworkReading[]): readonly NetworkMark[] => {
    const touched = new Set(list.flatMap((r) => [r.from, ...('to' in r ? [r.to] : []), ...('at' in r ? [r.at] : [])]));
    return survey.marks
      .filter((mark) => touched.has(mark.id))
      .map((mark) => ({ id: mark.id, start: mark.at, fixed: mark.fixed }));
  };
  const whole: Network = { marks: marksIn(readings), readings };
  const groups = disconnected(survey, whole);
  const adrift = new Set(groups.flat());
  const kept = readings.filter((reading) => !adrift.has(reading.from));
  return {
    network: { marks: marksIn(kept), readings: kept },
    problems: [...problems, ...disconnectedProblems(survey, groups)],
  };
};
