import { describe, expect, it } from 'vitest';
import { seededRandom, type Vec3 } from '../../../src/base/index.ts';
import {
  judgeReadings,
  likelySlip,
  type Network,
  type NetworkReading,
  predict,
  SURVEY_CHANCE,
  surveyNetwork,
} from '../../../src/envelope/index.ts';
import { cleanNetwork, doubleTrial, misread, outcomeOf, type Trial, trial } from '../../bench/survey-trials.ts';
import { randomSurvey, rules } from '../random-survey.ts';

const share = <T>(items: readonly T[], keep: (item: T) => boolean): number => items.filter(keep).length / items.length;

describe('planted misreadings (a small run of the study in docs/survey.md)', () => {
  const random = seededRandom(71);
  const trials = Array.from({ length: 120 }, () => trial(random));
  const strong = (own: Trial): boolean => own.redundancy > 0.3 && own.sigmas > 10;

  it('are named where the data hold them, and no other reading is blamed', () => {
    const told = trials.filter(strong);
    expect(told.length).toBeGreaterThan(60);
    // The study of 500 finds 97 %; of some 80 draws at 95 % two standard deviations below are 90 %.
    expect(share(told, ({ outcome }) => outcome === 'named')).toBeGreaterThanOrEqual(0.9);
    expect(share(told, ({ outcome }) => outcome === 'missed')).toBe(0);
    expect(share(trials, ({ outcome }) => outcome === 'another blamed')).toBeLessThanOrEqual(0.03);
  });

  it('clean surveys blame nobody', () => {
    const blamed = Array.from({ length: 150 }, () => judgeReadings(cleanNetwork(random))).filter(
      ({ suspects }) => suspects.length > 0,
    );
    // 1.5 expected at the very most; three standard deviations above are 5.
    expect(blamed.length).toBeLessThanOrEqual(150 * SURVEY_CHANCE + 3.5);
  });

  it('two at once come out together', () => {
    const outcomes = Array.from({ length: 40 }, () => doubleTrial(random));
    expect(share(outcomes, (outcome) => outcome === 'named')).toBeGreaterThanOrEqual(0.8);
  });
});

describe('where the data cannot tell', () => {
  /** Two marks on the centre line's sides with left, right and full width: one reading to spare, three alike. */
  const triad: Network = {
    marks: [
      { id: 'L', start: [0, 600, 0], fixed: [true, false, true] },
      { id: 'R', start: [0, -600, 0], fixed: [true, false, true] },
    ],
    readings: [
      { kind: 'offset', id: 'left', from: 'L', value: 600, sigma: 1.5 },
      { kind: 'offset', id: 'right', from: 'R', value: -600, sigma: 1.5 },
      { kind: 'across', id: 'full', from: 'R', to: 'L', value: 1200, sigma: 1.5 },
    ],
  };

  it('names nobody and asks; whoever takes what is asked gets the misreading named', () => {
    const truth = new Map<string, Vec3>([
      ['L', [0, 600, 0]],
      ['R', [0, -600, 0]],
    ]);
    let network = misread(triad, new Map([[2, 20]]));
    const first = judgeReadings(network);
    expect(first.consistent).toBe(false);
    expect(first.suspects).toEqual([]);
    expect([...first.undecided].sort()).toEqual(['full', 'left', 'right']);
    let verdict = first;
    for (let asked = 1; verdict.suspects.length === 0; asked++) {
      expect(asked).toBeLessThanOrEqual(3);
      const extra = verdict.wouldTell;
      if (!extra) throw new Error('asks for nothing');
      const bare = { id: `more-${asked}`, from: extra.from, value: 0, sigma: 1.5 };
      const reading: NetworkReading =
        extra.kind === 'offset' || extra.to === null
          ? { ...bare, kind: 'offset' }
          : { ...bare, kind: extra.kind === 'across' ? 'across' : 'distance', to: extra.to };
      const readings = [...network.readings, { ...reading, value: predict(reading, truth) }];
      network = { ...network, readings };
      verdict = judgeReadings(network);
    }
    expect(verdict.suspects.map(({ id }) => id)).toEqual(['full']);
  });

  it('the asked reading leaves the doubtful ones easier to tell apart in a whole survey', () => {
    const random = seededRandom(12);
    let asked = 0;
    for (let i = 0; i < 40 && asked < 5; i++) {
      const { survey, exact } = randomSurvey(random, { leftUndone: 0.25 });
      const { network } = surveyNetwork(survey, rules);
      const at = Math.floor(random() * network.readings.length);
      const wrong = misread(network, new Map([[at, 25]]));
      const verdict = judgeReadings(wrong);
      const id = wrong.readings[at]?.id ?? '';
      if (outcomeOf(verdict, [id]) !== 'in doubt') continue;
      expect(verdict.wouldTell).not.toBeNull();
      expect(exact.has(id)).toBe(true);
      asked++;
    }
    expect(asked).toBe(5);
  });
});

describe('likelySlip', () => {
  it.each([
    // 5 ft 4 in = 1625.6 written as 4 ft 5 in = 1346.2.
    [1346.2, 1625.6, 'feet-inches-swapped'],
    // 54 in typed as 54 mm; 1371.6 mm.
    [54, 1371.6, 'inches-for-mm'],
    [137.2, 1372, 'cm-for-mm'],
    [1300, 1200, 'hook-at-100'],
    [1210, 1200, 'ten-off'],
    [1263, 1236, 'digits-swapped'],
    [-600, 600, 'sign'],
    [1200, 1217, null],
  ] as const)('%d where the others make it %d: %s', (read, others, slip) => {
    expect(likelySlip(read, others, 1)).toBe(slip);
  });
});
