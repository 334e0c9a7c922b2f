import type { Random } from '../../src/base/index.ts';
import { judgeReadings, type Network, surveyNetwork, type Verdict } from '../../src/envelope/index.ts';
import { randomSurvey, rules } from '../envelope/random-survey.ts';

/** Of all readings of a plan, up to this share was not taken. */
export const MOST_UNDONE = 0.05;
const FEWEST_SIGMAS = 3;
const MOST_SIGMAS = 30;

export type Outcome = 'named' | 'in doubt' | 'missed' | 'another blamed';

export interface Trial {
  readonly outcome: Outcome;
  readonly redundancy: number;
  readonly sigmas: number;
}

export const cleanNetwork = (random: Random, mostUndone = MOST_UNDONE): Network =>
  surveyNetwork(randomSurvey(random, { leftUndone: random() * mostUndone }).survey, rules).network;

/** The network with the readings at some places off by so many of their sigmas. */
export const misread = (network: Network, errors: ReadonlyMap<number, number>): Network => ({
  ...network,
  readings: network.readings.map((reading, i) => ({
    ...reading,
    value: reading.value + (errors.get(i) ?? 0) * reading.sigma,
  })),
});

/** `in doubt`: the survey is called inconsistent and the misreading is among those named or asked about. */
export const outcomeOf = ({ suspects, undecided, consistent }: Verdict, planted: readonly string[]): Outcome => {
  const named = suspects.map(({ id }) => id);
  if (named.some((id) => !planted.includes(id))) return 'another blamed';
  if (planted.every((id) => named.includes(id))) return 'named';
  if (consistent) return 'missed';
  return planted.every((id) => named.includes(id) || undecided.includes(id)) ? 'in doubt' : 'missed';
};

const anError = (random: Random): number =>
  (random() < 0.5 ? -1 : 1) * (FEWEST_SIGMAS + (MOST_SIGMAS - FEWEST_SIGMAS) * random());

const place = (network: Network, random: Random): number => Math.floor(random() * network.readings.length);

/** One survey with one misreading planted. */
export const trial = (random: Random, mostUndone = MOST_UNDONE): Trial => {
  const clean = cleanNetwork(random, mostUndone);
  const at = place(clean, random);
  const sigmas = anError(random);
  const verdict = judgeReadings(misread(clean, new Map([[at, sigmas]])));
  return {
    outcome: outcomeOf(verdict, [clean.readings[at]?.id ?? '']),
    redundancy: verdict.adjustment.readings[at]?.redundancy ?? 0,
    sigmas: Math.abs(sigmas),
  };
};

/** One survey with two misreadings of 10 to 30 sigmas. */
export const doubleTrial = (random: Random): Outcome => {
  const clean = cleanNetwork(random);
  const first = place(clean, random);
  const second = (first + 1 + Math.floor(random() * (clean.readings.length - 1))) % clean.readings.length;
  const grow = (): number => (random() < 0.5 ? -1 : 1) * (10 + 20 * random());
  const verdict = judgeReadings(
    misread(
      clean,
      new Map([
        [first, grow()],
        [second, grow()],
      ]),
    ),
  );
  return outcomeOf(
    verdict,
    [first, second].map((i) => clean.readings[i]?.id ?? ''),
  );
};
