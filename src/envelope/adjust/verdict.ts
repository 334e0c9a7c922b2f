import { chiSquareTail, normalTwoSided } from '../../base/index.ts';
import { type AdjustedReading, type Adjustment, adjust } from './adjust.ts';
import { type Network, type NetworkReading, observe } from './network.ts';

/**
 * What the readings say about each other.
 *
 * Significance: the whole survey is tested at SURVEY_CHANCE; with n readings that can be checked, each one's |w| must
 * pass the two-sided normal quantile of 1 − (1 − SURVEY_CHANCE)^(1/n) (Šidák), so that a clean survey blames anybody in
 * at most that share of cases. A reading is named only when the data can tell it from every other: taking it out must
 * explain the misfit better than taking out any other by odds of NAMING_ODDS, that is w² − w'² ≥ 2 ln NAMING_ODDS.
 */
export const SURVEY_CHANCE = 0.01;
export const NAMING_ODDS = 19;
/** Below this redundancy number an error shows less than a fifth of itself even in its own residual. */
export const UNCHECKED_BELOW = 0.04;

export interface ExtraReading {
  readonly kind: 'distance';
  readonly from: string;
  readonly to: string;
}

export interface Verdict {
  readonly adjustment: Adjustment;
  /** True when no residual is larger than chance explains. */
  readonly consistent: boolean;
  /** The chance that honest readings would fit this badly or worse, over all readings. */
  readonly fitChance: number;
  /** Readings named as likely wrong, worst first, each with what the others make it. */
  readonly suspects: readonly {
    readonly id: string;
    readonly read: number;
    readonly others: number;
    readonly w: number;
  }[];
  /** When the data cannot tell: the readings of which one is wrong. */
  readonly undecided: readonly string[];
  /** The reading between two marks that would best tell them apart, or null. */
  readonly wouldTell: ExtraReading | null;
  /** Readings that nothing else checks. */
  readonly unchecked: readonly string[];
  /** The largest |w| that still passes. */
  readonly limit: number;
}

/** The largest |w| that chance explains among `checked` readings. */
export const largestHonestW = (checked: number): number =>
  checked <= 0 ? Infinity : normalTwoSided(1 - (1 - SURVEY_CHANCE) ** (1 / checked));

const isChecked = (reading: AdjustedReading): boolean => reading.redundancy >= UNCHECKED_BELOW;

const worst = (readings: readonly AdjustedReading[]): readonly AdjustedReading[] =>
  readings.filter((reading) => reading.redundancy > 0).toSorted((a, b) => Math.abs(b.w) - Math.abs(a.w));

/** The readings that explain the misfit about as well as the worst one, the worst first. */
const rivals = (readings: readonly AdjustedReading[]): readonly AdjustedReading[] => {
  const ordered = worst(readings);
  const first = ordered[0];
  if (!first) return [];
  return ordered.filter((other) => first.w ** 2 - other.w ** 2 < 2 * Math.log(NAMING_ODDS));
};

const without = (network: Network, ids: ReadonlySet<string>): Network => ({
  marks: network.marks,
  readings: network.readings.filter((reading) => !ids.has(reading.id)),
});

const predicted = (reading: NetworkReading, adjustment: Adjustment): number => {
  const from = adjustment.points.get(reading.from);
  const to = reading.kind === 'offset' ? from : adjustment.points.get(reading.to);
  return from && to ? observe(reading.kind, from, to).value : Number.NaN;
};

/**
 * The distance between two marks, not yet read, after which the two readings would be easiest to tell apart: it adds
 * the most redundancy to the less checked of them per its own spread.
 */
const bestExtra = (network: Network, first: string, second: string): ExtraReading | null => {
  const sigma = network.readings.reduce(
    (least, reading) => (reading.kind === 'level' ? least : Math.min(least, reading.sigma)),
    Infinity,
  );
  const taken = new Set(
    network.readings.flatMap((reading) =>
      reading.kind === 'distance' ? [`${reading.from} ${reading.to}`, `${reading.to} ${reading.from}`] : [],
    ),
  );
  const settled = adjust(network);
  let best: { readonly extra: ExtraReading; readonly apart: number } | null = null;
  for (const [i, from] of network.marks.entries())
    for (const to of network.marks.slice(i + 1)) {
      if (taken.has(`${from.id} ${to.id}`)) continue;
      const [a, b] = [settled.points.get(from.id), settled.points.get(to.id)];
      if (!a || !b) continue;
      const value = observe('distance', a, b).value;
      const readings: readonly NetworkReading[] = [
        ...network.readings,
        { kind: 'distance', id: '', from: from.id, to: to.id, value, sigma },
      ];
      const tried = adjust({
        marks: network.marks.map((mark) => ({ ...mark, start: settled.points.get(mark.id) ?? mark.start })),
        readings,
      });
      const [p, q] = [first, second].map((id) => network.readings.findIndex((reading) => reading.id === id));
      const apart = 1 - Math.abs(tried.likeness(p ?? 0, q ?? 0));
      if (!best || apart > best.apart) best = { extra: { kind: 'distance', from: from.id, to: to.id }, apart };
    }
  return best?.extra ?? null;
};

/** Suspects are put aside one at a time; more than this share of the readings means the survey itself is in doubt. */
const MOST_SUSPECT_SHARE = 0.1;

interface Sifted {
  readonly aside: ReadonlySet<string>;
  readonly last: Adjustment;
  readonly stuck: readonly AdjustedReading[];
}

/** Names the worst reading while one stands out, puts it aside, and looks again: two misreadings come out one by one. */
const sift = (network: Network, first: Adjustment): Sifted => {
  const most = Math.max(1, Math.floor(network.readings.length * MOST_SUSPECT_SHARE));
  const aside = new Set<string>();
  let last = first;
  for (;;) {
    const limit = largestHonestW(last.readings.filter(isChecked).length);
    const [top, ...others] = rivals(last.readings);
    if (!top || Math.abs(top.w) <= limit) return { aside, last, stuck: [] };
    if (others.length > 0 || aside.size >= most) return { aside, last, stuck: [top, ...others] };
    aside.add(top.id);
    last = adjust(without(network, aside));
  }
};

/** Readings put aside early are heard again once the worse ones are out: a good reading next to two bad ones comes back. */
const reheard = (network: Network, sifted: Sifted): ReadonlySet<string> => {
  const aside = new Set(sifted.aside);
  for (const id of sifted.aside) {
    const others = new Set([...aside].filter((other) => other !== id));
    const again = adjust(without(network, others));
    const reading = again.readings.find((candidate) => candidate.id === id);
    if (reading && Math.abs(reading.w) <= largestHonestW(again.readings.filter(isChecked).length)) aside.delete(id);
  }
  return aside;
};

/** Adjusts the network and says which reading is likely wrong, or which extra reading would tell. */
export const judgeReadings = (network: Network): Verdict => {
  const adjustment = adjust(network);
  const sifted = sift(network, adjustment);
  const aside = reheard(network, sifted);
  const settled = aside.size === sifted.aside.size ? sifted.last : adjust(without(network, aside));
  const suspects = network.readings
    .filter((reading) => aside.has(reading.id))
    .map((reading) => ({
      id: reading.id,
      read: reading.value,
      others: predicted(reading, settled),
      w: adjustment.readings.find((row) => row.id === reading.id)?.w ?? 0,
    }))
    .toSorted((a, b) => Math.abs(b.w) - Math.abs(a.w));
  const undecided = sifted.stuck.map((reading) => reading.id);
  const [first, second] = undecided;
  return {
    adjustment,
    consistent: suspects.length === 0 && undecided.length === 0,
    fitChance: adjustment.redundancy > 0 ? chiSquareTail(adjustment.weightedSquareSum, adjustment.redundancy) : 1,
    suspects,
    undecided,
    wouldTell: first !== undefined && second !== undefined ? bestExtra(without(network, aside), first, second) : null,
    unchecked: adjustment.readings.filter((reading) => !isChecked(reading)).map((reading) => reading.id),
    limit: largestHonestW(adjustment.readings.filter(isChecked).length),
  };
};
