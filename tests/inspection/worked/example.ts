import type { Inspection, RuleId, Severity } from '../../../src/inspection/index.ts';

/** Numbers by name. */
export type Figures = Readonly<Record<string, number>>;

/** What must come of a case. Numbers as the words print them, with their decimals; a minus where it is negative. */
export interface Expected {
  readonly severity: Severity | 'nothing';
  readonly value?: string;
  /** By how much the value may fall short of that, where it is a bound that a search proved. */
  readonly short?: string;
  readonly limit?: string;
  /** Half width of the value at 95 %. */
  readonly u?: string;
  /** Numbers that the finding carries besides. */
  readonly facts?: Readonly<Record<string, string>>;
  /** Words that it carries, which the example says in its own way. */
  readonly told?: Readonly<Record<string, string>>;
  /** A part that the finding names, where the rule finds more than one thing. */
  readonly of?: string;
}

/** One case of an example: a sentence, what is given in it, and what the inspection makes of that. */
export interface WorkedCase {
  readonly words: string;
  /** What the scene is built from: every number of it stands in the words and decides what comes out. */
  readonly given: Figures;
  readonly run: (given: Figures) => Inspection;
  readonly expects: Expected;
}

/** The worked example of one rule: its cell on the page of checks, case by case. */
export interface WorkedExample {
  readonly rule: RuleId;
  /** House rules whose figures the words name. */
  readonly house: readonly string[];
  /** Figures of the catalog that the words name, looked up and not written here. */
  readonly looked: Figures;
  /** Numbers of the formula itself: they stand in a sum of the words and nowhere else. */
  readonly formula: readonly number[];
  readonly cases: readonly WorkedCase[];
}

interface CaseOf<Given extends Figures> {
  readonly given: Given;
  readonly run: (given: Given) => Inspection;
  readonly words: string;
  readonly expects: Expected;
}

/** A case whose `run` takes what is given by name. */
export const worked = <Given extends Figures>({ given, run, words, expects }: CaseOf<Given>): WorkedCase => ({
  words,
  given,
  run: (figures) => run(figures as Given),
  expects,
});

type Rest = Partial<Pick<WorkedExample, 'house' | 'looked' | 'formula'>>;

export const example = (rule: RuleId, cases: readonly WorkedCase[], rest: Rest = {}): WorkedExample => ({
  rule,
  house: [],
  looked: {},
  formula: [],
  cases,
  ...rest,
});

/** The cell of the page: all cases of an example, one after the other. */
export const cellOf = ({ cases }: WorkedExample): string => cases.map(({ words }) => words).join('; ');

/** A worked sum on another page of the docs, held to the function that it describes. */
export interface PageSum {
  readonly page: 'loads.md' | 'reach.md' | 'power.md';
  /** As they stand on the page. */
  readonly words: string;
  readonly given: Figures;
  readonly run: (given: Figures) => Figures;
  /** Figures that `run` gives, as the words print them. */
  readonly expects: Readonly<Record<string, string>>;
  readonly house: readonly string[];
  readonly looked: Figures;
  readonly formula: readonly number[];
}

interface SumOf<Given extends Figures> extends Pick<PageSum, 'page' | 'words' | 'expects'> {
  readonly given: Given;
  readonly run: (given: Given) => Figures;
}

export const pageSum = <Given extends Figures>(
  { run, ...own }: SumOf<Given>,
  rest: Partial<Pick<PageSum, 'house' | 'looked' | 'formula'>> = {},
): PageSum => ({
  ...own,
  run: (figures) => run(figures as Given),
  house: [],
  looked: {},
  formula: [],
  ...rest,
});
