import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import loadHighs from 'highs';
import {
  createImprover,
  highsSolver,
  type LayoutJob,
  type LinearSolver,
  proveTwoStage,
  recombine,
  validateLayout,
} from '../../../src/shop/layout/index.ts';
import { cabinetJob } from '../../shop/layout/jobs.ts';
import { printGenericPacker } from './generic-packer.ts';
import { binPacking, type Instance, pricedSheets } from './instances.ts';

/**
 * Layout figures on published instances.
 *
 *   npm run bench:cutting -- --set bins|priced|cabinet --turned yes|no --stages any|2|3 --seconds 1 --seed 7 --sample 50 --first rip
 *                            --after results/FILE.json --to results/FILE.json
 *
 * Time is processor time of this one thread (user and system), so that other work on the machine does not count.
 * `--after` runs only those instances that an earlier run did not prove, and adds the proven ones to the total;
 * with `--rerun above` only those above the best known value.
 */
interface Options {
  readonly set: string;
  readonly turned: boolean;
  readonly stages: LayoutJob['stages'];
  readonly seconds: number;
  readonly seed: number;
  readonly first: LayoutJob['firstCut'];
  readonly sample: number;
  readonly after: string;
  readonly rerun: string;
  readonly to: string;
}

interface Outcome {
  readonly name: string;
  readonly group: string;
  readonly value: number;
  readonly sheets: number;
  readonly known: number;
  /** Ours, proven. */
  readonly bound: number;
  readonly proven: boolean;
  readonly firstMs: number;
  readonly seconds: number;
  readonly turns: number;
  readonly faults: number;
}

const readOptions = (words: readonly string[]): Options => {
  const given = new Map<string, string>();
  for (let i = 0; i < words.length; i += 2) given.set((words[i] ?? '').replace(/^--/, ''), words[i + 1] ?? '');
  const stages = given.get('stages') ?? 'any';
  const first = given.get('first');
  return {
    set: given.get('set') ?? 'bins',
    turned: (given.get('turned') ?? 'yes') === 'yes',
    stages: stages === '2' ? 2 : stages === '3' ? 3 : 'any',
    seconds: Number(given.get('seconds') ?? '1'),
    seed: Number(given.get('seed') ?? '7'),
    first: first === 'rip' || first === 'crosscut' ? first : undefined,
    sample: Number(given.get('sample') ?? '0'),
    after: given.get('after') ?? '',
    rerun: given.get('rerun') ?? 'unproven',
    to: given.get('to') ?? '',
  };
};

const instancesOf = ({ set, turned, stages, first }: Options): readonly Instance[] => {
  if (set === 'priced') return pricedSheets(turned, first);
  if (set === 'bins') return binPacking(turned, stages);
  return Array.from({ length: 10 }, (_, i) => ({
    name: `cabinet ${i + 1}`,
    group: `cabinet ${i + 1}`,
    job: cabinetJob(101 + i, { stages }),
    known: 0,
    bound: 0,
  }));
};

/** Every so many-th instance, so that each class and size is in the sample. */
const sampled = (all: readonly Instance[], count: number): readonly Instance[] =>
  count <= 0 || count >= all.length
    ? all
    : Array.from({ length: count }, (_, i) => all[Math.floor((i * all.length) / count)]).filter(
        (one) => one !== undefined,
      );

const cpuSeconds = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1_000_000;
};

/** Between two looks at the clock: reading processor time is a call into the system and not cheap. */
const TURNS_AT_ONCE = 256;
/**
 * Seconds of a run that must be left for recombining to begin, and those it may take at a time; of what is left a share
 * stays for handing the sheets to the solver, which its clock does not count.
 */
const LEAST_FOR_RECOMBINING = 0.2;
const MOST_FOR_RECOMBINING = 1.5;
const RECOMBINING_SHARE = 0.7;
const TURNS_BEFORE_PROOF = 6000;

const solve = (instance: Instance, { seconds, seed, set }: Options, solver: LinearSolver): Outcome => {
  const { name, group, job, known } = instance;
  const start = cpuSeconds();
  const improver = createImprover(job, seed, { tidy: set === 'cabinet' });
  const firstMs = (cpuSeconds() - start) * 1000;
  // One size: the turns are quick to a good layout, and the proof can wait. Several: its patterns are the good start.
  if (set === 'cabinet') improver.step(TURNS_BEFORE_PROOF);
  if (job.stages === 2 && set !== 'bins') proveTwoStage(improver, solver);
  let spent = cpuSeconds() - start;
  let block = 0;
  while (!improver.done() && spent + block < seconds) {
    const before = spent;
    improver.step(TURNS_AT_ONCE);
    spent = cpuSeconds() - start;
    // The last block must end in time too.
    block = spent - before;
    const left = seconds - spent;
    if (left <= LEAST_FOR_RECOMBINING) continue;
    const began = performance.now();
    recombine(improver, solver, Math.min(left * RECOMBINING_SHARE, MOST_FOR_RECOMBINING));
    // Mostly it is not yet time to recombine: then processor time need not be read anew.
    if (performance.now() - began > 1) spent = cpuSeconds() - start;
  }
  spent = cpuSeconds() - start;
  const layout = improver.best();
  const faults = validateLayout(job, layout);
  if (faults.length > 0) console.error(name, faults.slice(0, 3));
  const { proof } = layout;
  return {
    name,
    group,
    value: layout.price,
    sheets: layout.sheets.length,
    known,
    bound: Math.max(proof.lowerBoundPrice, ...improver.searches.map(({ stagedPrice }) => stagedPrice)),
    proven: proof.verdict !== 'within',
    firstMs,
    seconds: spent,
    turns: improver.turns(),
    faults: faults.length + layout.unplaced.length,
  };
};

const sum = (outcomes: readonly Outcome[], of: (outcome: Outcome) => number): number =>
  outcomes.reduce((total, outcome) => total + of(outcome), 0);

const row = (name: string, outcomes: readonly Outcome[]): string => {
  const [value, known] = [sum(outcomes, (o) => o.value), sum(outcomes, (o) => o.known)];
  const above = known > 0 ? `${(((value - known) / known) * 100).toFixed(3)} %` : '–';
  const cells = [
    name,
    value,
    known || '–',
    above,
    sum(outcomes, (o) => o.bound).toFixed(0),
    outcomes.filter((o) => o.proven).length,
    outcomes.filter((o) => known > 0 && o.value > o.known).length,
    (sum(outcomes, (o) => o.seconds) / outcomes.length).toFixed(2),
    Math.max(...outcomes.map((o) => o.firstMs)).toFixed(0),
    sum(outcomes, (o) => o.faults),
  ];
  return `| ${cells.join(' | ')} |`;
};

const print = (outcomes: readonly Outcome[]): void => {
  console.log(
    '| set | ours | best known | above | our bound | proven | above best | mean s | first ms, most | faults |',
  );
  console.log('|---|---|---|---|---|---|---|---|---|---|');
  for (const group of new Set(outcomes.map((o) => o.group)))
    console.log(
      row(
        group,
        outcomes.filter((o) => o.group === group),
      ),
    );
  console.log(row('all', outcomes));
};

// The bench runs as a bundle elsewhere: its files are found from the top of the repository.
const here = (file: string): string => `tests/bench/cutting/${file}`;

const main = async (): Promise<void> => {
  const options = readOptions(process.argv.slice(2));
  const solver = highsSolver(await loadHighs());
  const earlier =
    options.after === '' ? [] : (JSON.parse(readFileSync(here(options.after), 'utf8')) as readonly Outcome[]);
  const settled = ({ proven, value, known }: Outcome): boolean =>
    proven || (options.rerun === 'above' && known > 0 && value <= known);
  const kept = new Map(earlier.filter(settled).map((outcome) => [outcome.name, outcome]));
  const instances = sampled(instancesOf(options), options.sample);
  const outcomes = instances.map((instance) => kept.get(instance.name) ?? solve(instance, options, solver));
  print(outcomes);
  if (options.set === 'bins') printGenericPacker(instances, options.turned);
  if (options.to === '') return;
  mkdirSync(here('results/'), { recursive: true });
  writeFileSync(here(options.to), `${JSON.stringify(outcomes)}\n`);
};

await main();
