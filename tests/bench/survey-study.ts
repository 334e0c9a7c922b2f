// vite-node tests/bench/survey-study.ts COUNT: how often a planted misreading is named; the table of docs/survey.md.
import { seededRandom } from '../../src/base/index.ts';
import { judgeReadings } from '../../src/envelope/index.ts';
import { cleanNetwork, doubleTrial, type Outcome, type Trial, trial } from './survey-trials.ts';

/** A survey in haste: up to this share of the plan was not taken. */
const CARELESS = 0.15;

const OUTCOMES: readonly Outcome[] = ['named', 'in doubt', 'missed', 'another blamed'];

const line = (title: string, outcomes: readonly Outcome[]): string => {
  const cells = OUTCOMES.map((outcome) => {
    const count = outcomes.filter((own) => own === outcome).length;
    return `${count} (${outcomes.length === 0 ? '–' : ((100 * count) / outcomes.length).toFixed(1)} %)`;
  });
  return `| ${title} | ${outcomes.length} | ${cells.join(' | ')} |`;
};

const main = (count: number): void => {
  const random = seededRandom(500);
  const trials = Array.from({ length: count }, () => trial(random));
  const of = (keep: (own: Trial) => boolean): readonly Outcome[] => trials.filter(keep).map((own) => own.outcome);
  const rows = [
    line(
      'all',
      of(() => true),
    ),
    line(
      'redundancy > 0.3 and error > 10 σ',
      of((own) => own.redundancy > 0.3 && own.sigmas > 10),
    ),
    line(
      'redundancy > 0.3 and error ≤ 10 σ',
      of((own) => own.redundancy > 0.3 && own.sigmas <= 10),
    ),
    line(
      'redundancy ≤ 0.3 and error > 10 σ',
      of((own) => own.redundancy <= 0.3 && own.sigmas > 10),
    ),
    line(
      'redundancy ≤ 0.3 and error ≤ 10 σ',
      of((own) => own.redundancy <= 0.3 && own.sigmas <= 10),
    ),
    line(
      `the same as the second line, up to ${100 * CARELESS} % of the plan not taken`,
      Array.from({ length: count }, () => trial(random, CARELESS))
        .filter((own) => own.redundancy > 0.3 && own.sigmas > 10)
        .map((own) => own.outcome),
    ),
    line(
      'two misreadings, each 10–30 σ',
      Array.from({ length: Math.round(count * 0.4) }, () => doubleTrial(random)),
    ),
  ];
  console.log('| misreading | surveys | named | in doubt, and among those asked about | missed | another blamed |');
  console.log('|---|---:|---:|---:|---:|---:|');
  console.log(rows.join('\n'));
  const verdicts = Array.from({ length: 2 * count }, () => judgeReadings(cleanNetwork(random)));
  const blaming = verdicts.filter((verdict) => verdict.suspects.length > 0).length;
  const doubting = verdicts.filter((verdict) => !verdict.consistent).length;
  console.log(
    `Clean surveys: ${verdicts.length}; a reading blamed in ${blaming}, called inconsistent without a name in ${doubting - blaming}.`,
  );
};

main(Number(process.argv.at(-1)) || 500);
