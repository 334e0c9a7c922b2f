/** One thing to be timed. `make` prepares outside the clock and gives the work, which answers with something used. */
export interface BenchRow {
  readonly name: string;
  readonly make: () => () => unknown;
  /** Fast work is repeated until a round takes at least this long (ms); 5 unless told. */
  readonly roundMs?: number;
}

export interface BenchFigure {
  readonly name: string;
  /** Median time of one piece of work (µs). */
  readonly medianUs: number;
  /** Half of all rounds lie within this of the median (µs). */
  readonly spreadUs: number;
  /** Median of the ratios to the baseline of the same round: how many baselines one piece of work takes. */
  readonly ratio: number;
  readonly rounds: number;
}

export interface BenchSetting {
  readonly rounds: number;
  /** Order of the rows in each round: drawn anew, so that no row always follows the same one. */
  readonly random: () => number;
  /** A clock in milliseconds. */
  readonly clock: () => number;
}

export const median = (numbers: readonly number[]): number => {
  if (numbers.length === 0) throw new RangeError('median: no numbers');
  const sorted = [...numbers].sort((a, b) => a - b);
  const upper = sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
  const lower = sorted[Math.ceil(sorted.length / 2) - 1] ?? Number.NaN;
  return (lower + upper) / 2;
};

/** The items in an order drawn from `random` (Fisher and Yates). */
export const shuffled = <T>(items: readonly T[], random: () => number): readonly T[] => {
  const out = [...items];
  for (let i = out.length - 1; i > 0; i--) {
    const j = Math.floor(random() * (i + 1));
    const [a, b] = [out[i], out[j]];
    if (a === undefined || b === undefined) continue;
    [out[i], out[j]] = [b, a];
  }
  return out;
};

/** Where answers go, so that no compiler may leave out the work that made them. */
let sink: unknown;
export const lastAnswer = (): unknown => sink;

interface Runner {
  readonly row: BenchRow;
  readonly work: () => unknown;
  /** Pieces of work in one round. */
  readonly pieces: number;
  readonly us: number[];
}

const timeOf = (work: () => unknown, pieces: number, clock: () => number): number => {
  const start = clock();
  for (let i = 0; i < pieces; i++) sink = work();
  return clock() - start;
};

/** Doubles the pieces until a round is long enough for the clock; this also lets the engine settle. */
const prepared = (row: BenchRow, clock: () => number): Runner => {
  const work = row.make();
  const enoughMs = row.roundMs ?? 5;
  let pieces = 1;
  while (timeOf(work, pieces, clock) < enoughMs && pieces < 2 ** 24) pieces *= 2;
  return { row, work, pieces, us: [] };
};

/**
 * Times all rows, interleaved: every round runs each row once, in an order drawn from the seed, and each figure is
 * divided by that of the baseline in the same round. A slow moment of the machine then meets all rows alike.
 */
export const runBench = (
  rows: readonly BenchRow[],
  baseline: string,
  { rounds, random, clock }: BenchSetting,
): readonly BenchFigure[] => {
  const names = rows.map(({ name }) => name);
  if (new Set(names).size < names.length) throw new RangeError('runBench: two rows have the same name');
  const runners = rows.map((row) => prepared(row, clock));
  const base = runners.find(({ row }) => row.name === baseline);
  if (!base) throw new RangeError(`runBench: there is no row "${baseline}" to compare with`);
  for (let round = 0; round < rounds; round++)
    for (const { work, pieces, us } of shuffled(runners, random))
      us.push((timeOf(work, pieces, clock) * 1000) / pieces);
  return runners.map(({ row, us }) => {
    const medianUs = median(us);
    return {
      name: row.name,
      medianUs,
      spreadUs: median(us.map((one) => Math.abs(one - medianUs))),
      ratio: median(us.map((one, round) => one / (base.us[round] ?? Number.NaN))),
      rounds,
    };
  });
};

const figure = (value: number): string => (value >= 100 ? value.toFixed(0) : value.toPrecision(3));

/** The figures as a table for a terminal, columns aligned. */
export const benchTable = (figures: readonly BenchFigure[], baseline: string): string => {
  const head = ['row', 'median µs', '± µs', `× ${baseline}`];
  const body = figures.map(({ name, medianUs, spreadUs, ratio }) => [
    name,
    figure(medianUs),
    figure(spreadUs),
    figure(ratio),
  ]);
  const widths = head.map((_, column) => Math.max(...[head, ...body].map((line) => line[column]?.length ?? 0)));
  return [head, ...body]
    .map((line) =>
      line.map((cell, i) => (i === 0 ? cell.padEnd(widths[i] ?? 0) : cell.padStart(widths[i] ?? 0))).join('  '),
    )
    .join('\n');
};
