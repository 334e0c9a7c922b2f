import { normalTwoSided, ROUNDING_SHARE } from '../../base/index.ts';
import { residualCofactor } from './adjust.ts';
import type { Network } from './network.ts';
import { type Solution, solveNetwork } from './solution.ts';

/**
 * Significance: the whole survey is tested at SURVEY_CHANCE; with n readings that can be checked, each one's |w| must
 * pass the two-sided normal quantile of 1 − (1 − SURVEY_CHANCE)^(1/n) (Šidák), so that a clean survey blames anybody in
 * at most that share of cases. A set of readings is named only when the data can tell it from every other set of the
 * same size: taking it out must explain the misfit better by odds of NAMING_ODDS, that is T − T' ≥ 2 ln NAMING_ODDS
 * with T = vᵀ C⁻¹ v over the set (for one reading T = w²).
 */
export const SURVEY_CHANCE = 0.01;
export const NAMING_ODDS = 19;
const ODDS_APART = 2 * Math.log(NAMING_ODDS);

/** Below this redundancy number an error shows less than a fifth of itself even in its own residual. */
export const UNCHECKED_BELOW = 0.04;

/** The largest |w| that chance explains among `checked` readings. */
export const largestHonestW = (checked: number): number =>
  checked <= 0 ? Infinity : normalTwoSided(1 - (1 - SURVEY_CHANCE) ** (1 / checked));

const wOf = ({ residuals, redundancy }: Solution, i: number): number =>
  (redundancy[i] ?? 0) > ROUNDING_SHARE ? (residuals[i] ?? 0) / Math.sqrt(redundancy[i] ?? 1) : 0;

export const honestLimit = ({ redundancy }: Solution): number =>
  largestHonestW(redundancy.filter((share) => share >= UNCHECKED_BELOW).length);

export const isConsistent = (solution: Solution): boolean => {
  const limit = honestLimit(solution);
  return solution.redundancy.every((share, i) => share < UNCHECKED_BELOW || Math.abs(wOf(solution, i)) <= limit);
};

/** A set of readings, as indices, with how much of the misfit goes away when it is taken out. */
interface Explanation {
  readonly set: readonly number[];
  readonly explains: number;
}

const singles = (solution: Solution): readonly Explanation[] =>
  Array.from(solution.redundancy, (share, i): Explanation | null =>
    share >= ROUNDING_SHARE ? { set: [i], explains: wOf(solution, i) ** 2 } : null,
  ).filter((one) => one !== null);

/** Two residuals that always go together cannot both be judged: their 2 × 2 cofactor has no inverse. */
const pairs = (solution: Solution): readonly Explanation[] => {
  const { residuals, redundancy } = solution;
  const out: Explanation[] = [];
  for (let i = 0; i < redundancy.length; i++)
    for (let j = i + 1; j < redundancy.length; j++) {
      const [a, b] = [redundancy[i] ?? 0, redundancy[j] ?? 0];
      if (a <= ROUNDING_SHARE || b <= ROUNDING_SHARE) continue;
      const c = residualCofactor(solution, i, j);
      const determinant = a * b - c * c;
      if (determinant <= a * b * Math.sqrt(ROUNDING_SHARE)) continue;
      const [v, u] = [residuals[i] ?? 0, residuals[j] ?? 0];
      out.push({ set: [i, j], explains: (b * v * v - 2 * c * v * u + a * u * u) / determinant });
    }
  return out;
};

/** The best explanation and every rival that the data cannot tell from it, the best first. */
const bestOf = (all: readonly Explanation[]): readonly Explanation[] => {
  const ordered = all.toSorted((p, q) => q.explains - p.explains);
  const [first] = ordered;
  return first ? ordered.filter((other) => first.explains - other.explains < ODDS_APART) : [];
};

const without = (network: Network, ids: ReadonlySet<string>): Network => ({
  marks: network.marks,
  readings: network.readings.filter((reading) => !ids.has(reading.id)),
});

export interface Sifted {
  /** Readings named as wrong. */
  readonly named: readonly string[];
  /** Readings of which the data cannot say which one is wrong, the likeliest first. */
  readonly undecided: readonly string[];
  /** The net without those named and without the likeliest of the undecided. */
  readonly settled: Solution;
}

/** Readings in every rival set are named; those only in some are undecided. */
const verdictOf = (solution: Solution, rivals: readonly Explanation[]): Omit<Sifted, 'settled'> => {
  const idOf = (i: number): string => solution.compiled.network.readings[i]?.id ?? '';
  const seen = [...new Set(rivals.flatMap(({ set }) => set))];
  const inAll = seen.filter((i) => rivals.every(({ set }) => set.includes(i)));
  return { named: inAll.map(idOf), undecided: seen.filter((i) => !inAll.includes(i)).map(idOf) };
};

/** More than this share of the readings put aside means that the survey itself is in doubt. */
const MOST_SUSPECT_SHARE = 0.1;

/** Beyond two, one at a time while one stands out: the worst of what is left, put aside, looked at again. */
const onward = (network: Network, begun: Sifted): Sifted => {
  const most = Math.max(2, Math.floor(network.readings.length * MOST_SUSPECT_SHARE));
  const named = [...begun.named];
  let settled = begun.settled;
  while (!isConsistent(settled) && named.length < most) {
    const rivals = bestOf(singles(settled));
    const next = verdictOf(settled, rivals);
    if (next.undecided.length > 0) return { named, undecided: next.undecided, settled };
    named.push(...next.named);
    settled = solveNetwork(without(network, new Set(named)));
  }
  return isConsistent(settled) ? { named, undecided: [], settled } : { ...begun, settled };
};

/**
 * The smallest set of readings that explains the misfit: none, one, two (all pairs compared), then one at a time. A
 * survey that fits gets none, whatever its largest residual.
 */
export const siftReadings = (network: Network, first: Solution): Sifted => {
  if (isConsistent(first)) return { named: [], undecided: [], settled: first };
  let begun: Sifted = { named: [], undecided: [], settled: first };
  for (const explanations of [singles, pairs]) {
    const rivals = bestOf(explanations(first));
    const [best] = rivals;
    if (!best) break;
    const ids = new Set(best.set.map((i) => network.readings[i]?.id ?? ''));
    const settled = solveNetwork(without(network, ids));
    begun = { ...verdictOf(first, rivals), settled };
    if (isConsistent(settled)) return begun;
  }
  return begun.undecided.length > 0 ? begun : onward(network, begun);
};
