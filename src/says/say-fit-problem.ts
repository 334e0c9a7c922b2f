import type { LengthUnits } from '../base/index.ts';
import type { FitProblem } from '../fitout/index.ts';
import { type Speech, sentence, speechFor } from './words.ts';

/** What can be said of a problem of the fit-out, whole or as it is kept in a finding. */
export interface FitProblemFacts {
  readonly code: FitProblem['code'];
  readonly at: string;
  readonly axis: FitProblem['axis'];
  readonly needMm: number | null;
  readonly haveMm: number | null;
  readonly because: readonly string[];
}

const WIDE: { readonly [Axis in NonNullable<FitProblem['axis']>]: string } = {
  across: 'wide',
  deep: 'deep',
  up: 'high',
};

const because = (facts: FitProblemFacts): string => facts.because.join(', ');

const sized = (facts: FitProblemFacts, speech: Speech): string =>
  facts.needMm === null || facts.haveMm === null
    ? ''
    : `needs ${speech.length(facts.needMm)}${facts.axis ? ` ${WIDE[facts.axis]}` : ''}, has ${speech.length(facts.haveMm)}`;

type Say = (facts: FitProblemFacts, name: string, speech: Speech) => string;

const PROBLEMS: { readonly [Code in FitProblem['code']]: Say } = {
  'rules-fight': (facts, name, speech) => `sizes in ${name} cannot all hold: ${sized(facts, speech) || because(facts)}`,
  'too-small': (facts, name, speech) => `${name} is too small: ${sized(facts, speech) || because(facts)}`,
  'unknown-material': (facts, name) => `${name} asks for a material that the catalog does not have: ${because(facts)}`,
  'unknown-hardware': (facts, name) => `${name} asks for hardware that the catalog does not have: ${because(facts)}`,
  'unknown-device': (facts, name) => `${name} asks for a device that the catalog does not have: ${because(facts)}`,
  'no-such-opening': (facts, name) => `${name} has its place in an opening that is not there: ${because(facts)}`,
  'no-such-carcass': (facts, name) => `${name} is placed beside a carcass that is not there: ${because(facts)}`,
  'circle-of-places': (facts, name) => `${name} is placed beside carcasses that are placed by it: ${because(facts)}`,
  'bad-joint': (facts, name) => `a joint in ${name} cannot be made: ${because(facts)}`,
};

/** What could not be solved, as one line without a full stop. */
export const fitProblemLine = (facts: FitProblemFacts, speech: Speech): string =>
  sentence(PROBLEMS[facts.code](facts, speech.name(facts.at), speech));

/** The same for a problem straight from the fit-out. */
export const sayFitProblem = (problem: FitProblem, units: LengthUnits, names: (id: string) => string): string =>
  fitProblemLine(problem, speechFor(units, names));

export const isFitProblemCode = (code: string): code is FitProblem['code'] => code in PROBLEMS;
