import type { Inspection } from '../../../src/inspection/index.ts';
import { findingsOf, rules } from '../fixture.ts';
import { type Printed, printed, readWords } from './arithmetic.ts';
import type { Expected, Figures, PageSum, WorkedCase, WorkedExample } from './example.ts';

/** A number of the code as one of the words: as it is, or as a percentage. */
const says = (words: Printed, figure: number): boolean => Math.abs(words.value - Math.abs(figure)) < 1e-12;

const withoutSign = (text: string): Printed => printed(text.replace(/^−/, ''));

/** A number printed without decimals is taken at its word, to this share of it: 1 is not 1.3, 5,394 may be 5,393.66. */
const WHOLE_SHARE = 1 / 1000;

/** Whether a computed number is the printed one: to its last printed place, and a whole one more closely. */
const agrees = (text: string, actual: number, short?: string): boolean => {
  const { value, half } = withoutSign(text);
  if (short !== undefined) return actual <= value && actual >= value - withoutSign(short).value;
  const within = text.includes('.') ? half : Math.min(half, value * WHOLE_SHARE);
  return Math.abs(actual - (text.startsWith('−') ? -value : value)) <= within + 1e-9;
};

const textsOf = ({ value, short, limit, u, facts = {} }: Expected): readonly string[] =>
  [value, short, limit, u, ...Object.values(facts)].flatMap((text) => (text === undefined ? [] : [text]));

interface Outcome {
  readonly value: number;
  readonly limit: number;
  readonly uncertainty: number;
  readonly facts: Readonly<Record<string, string | number>>;
}

/** The finding that a case speaks of, or the tightest margin that was taken where nothing is to be found. */
const outcomeOf = (inspection: Inspection, rule: string, { severity, of }: Expected): Outcome | string => {
  const all = findingsOf(inspection, rule);
  const found = of === undefined ? all : all.filter(({ parts }) => parts.includes(of));
  const told = found.map((each) => `${each.severity} ${each.parts.join('+')} ${each.value}`).join(', ') || 'nothing';
  if (severity === 'nothing') {
    if (found.length > 0) return `finds ${told}`;
    const [tightest] = inspection.measured
      .filter((taken) => taken.rule === rule && (of === undefined || taken.parts.includes(of)))
      .toSorted((a, b) => a.slack - b.slack);
    return tightest ? { ...tightest, facts: {} } : { value: Number.NaN, limit: Number.NaN, uncertainty: 0, facts: {} };
  }
  const [first, ...more] = found;
  return first?.severity === severity && more.length === 0 ? first : `finds ${told} and not one ${severity}`;
};

/** What a rule says of a scene, as one text. */
const saidOf = ({ findings, measured }: Inspection, rule: string): string =>
  JSON.stringify([findings, measured].map((some) => some.filter((each) => each.rule === rule)));

/** Other figures in the place of one, near and far: a figure that none of them can take the place of decides nothing. */
const othersFor = (figure: number): readonly number[] => [
  ...[0.8, 1.25, 0.5, 2, 0.05, 10].map((factor) => figure * factor),
  figure + 1,
  figure - 1,
  figure + 1000,
];

/** What is given and yet decides nothing: whatever stands in its place, the same is said, or there is nothing to judge. */
const idleIn = (given: Figures, say: (given: Figures) => string): readonly string[] => {
  const said = say(given);
  const changes = (changed: Figures): boolean => {
    try {
      return say(changed) !== said;
    } catch {
      return false;
    }
  };
  return Object.entries(given)
    .filter(([name, figure]) => !othersFor(figure).some((other) => changes({ ...given, [name]: other })))
    .map(([name]) => `${name} is given and decides nothing`);
};

const resultFaults = (rule: string, { given, run, expects }: WorkedCase): readonly string[] => {
  const outcome = outcomeOf(run(given), rule, expects);
  if (typeof outcome === 'string') return [outcome];
  const pairs: readonly (readonly [string, string | undefined, unknown])[] = [
    ['value', expects.value, outcome.value],
    ['limit', expects.limit, outcome.limit],
    ['u', expects.u, outcome.uncertainty],
    ...Object.entries(expects.facts ?? {}).map(([name, text]) => [name, text, outcome.facts[name]] as const),
  ];
  const told = Object.entries(expects.told ?? {}).filter(([name, text]) => outcome.facts[name] !== text);
  return [
    ...pairs.flatMap(([name, text, actual]) =>
      text === undefined ||
      (typeof actual === 'number' && agrees(text, actual, name === 'value' ? expects.short : undefined))
        ? []
        : [`${name} is ${String(actual)} and not ${text}`],
    ),
    ...told.map(([name, text]) => `${name} is ${String(outcome.facts[name])} and not ${text}`),
  ];
};

/** Words with what their numbers may be: given, results, and what must be said besides. */
interface Said {
  readonly words: string;
  readonly given: Figures;
  /** Results as printed. */
  readonly results: readonly string[];
  readonly says?: string;
}
interface Sources {
  readonly house: readonly string[];
  readonly looked: Figures;
  readonly formula: readonly number[];
}

/** Numbers of a sentence, and of those before it, that are neither given nor a result; and the other way round. */
const wordFaults = (cases: readonly Said[], { house, looked, formula }: Sources): readonly string[] => {
  const known = [...house.map((id) => rules.value(id)), ...Object.values(looked)];
  const [said, summed]: [Printed[], Printed[]] = [[], []];
  const sources: Printed[] = [];
  const given: number[] = [];
  const faults = cases.flatMap(({ words, given: own, results, says: must }): readonly string[] => {
    const reading = readWords(words);
    said.push(...reading.numbers);
    summed.push(...reading.summed);
    given.push(...Object.values(own));
    sources.push(...reading.sums, ...results.map(withoutSign));
    const isKnown = (number: Printed): boolean =>
      sources.some(({ text }) => text === number.text) ||
      [...given, ...known].some((figure) => says(number, figure)) ||
      (formula.some((figure) => says(number, figure)) && reading.summed.includes(number));
    return [
      ...reading.wrong.map((sum) => `wrong sum: ${sum}`),
      ...reading.numbers.filter((each) => !isKnown(each)).map(({ text }) => `${text} is neither given nor a result`),
      ...Object.entries(own)
        .filter(([, figure]) => !said.some((each) => says(each, figure)))
        .map(([name, figure]) => `${name}, ${figure}, is given and not said`),
      ...results
        .filter((text) => !said.some((each) => each.text === withoutSign(text).text))
        .map((text) => `${text} is a result and not said`),
      ...(must === undefined || new RegExp(`\\b${must}\\b`).test(words) ? [] : [`does not say ${must}`]),
    ];
  });
  return [
    ...faults,
    ...known.filter((figure) => !said.some((each) => says(each, figure))).map((figure) => `${figure} is not said`),
    ...formula.filter((own) => !summed.some((each) => says(each, own))).map((own) => `${own} stands in no sum`),
  ];
};

/** What is wrong with an example: its words, or what the inspection makes of its scenes. Empty when it holds. */
export const faultsOf = (own: WorkedExample): readonly string[] => [
  ...wordFaults(
    own.cases.map(({ words, given, expects }) => ({
      words,
      given,
      results: textsOf(expects),
      says: expects.severity,
    })),
    own,
  ),
  ...own.cases.flatMap((each) => [
    ...resultFaults(own.rule, each),
    ...idleIn(each.given, (given) => saidOf(each.run(given), own.rule)),
  ]),
];

/** The same for a sum of a page. */
export const pageFaultsOf = (own: PageSum): readonly string[] => {
  const { words, given, run, expects } = own;
  const figures = run(given);
  return [
    ...wordFaults([{ words, given, results: Object.values(expects) }], own),
    ...Object.entries(expects)
      .filter(([name, text]) => !agrees(text, figures[name] ?? Number.NaN))
      .map(([name, text]) => `${name} is ${String(figures[name])} and not ${text}`),
    ...idleIn(given, (other) => JSON.stringify(run(other))),
  ];
};
