import { residualCofactor } from './adjust.ts';
import { forwardBy } from './cholesky.ts';
import { rowOf } from './compiled.ts';
import { isAngle, type NetworkReading } from './network.ts';
import { NO_MARK, newObservation, OBSERVERS } from './observe.ts';
import { dotOf, type Solution } from './solution.ts';

/** A reading to take: between two marks, or the same one once more, set up afresh. */
export interface ExtraReading {
  readonly kind: NetworkReading['kind'];
  readonly from: string;
  readonly to: string | null;
  /** The reading that it repeats, or null for a new one. */
  readonly repeats: string | null;
}

interface Candidate {
  readonly extra: ExtraReading;
  /** L⁻¹ g / σ of the candidate. */
  readonly leverage: Float64Array;
}

const distances = (solution: Solution, sigma: number): readonly Candidate[] => {
  const { compiled, points, factor } = solution;
  const { network } = compiled;
  const taken = new Set(
    network.readings.flatMap((reading) =>
      reading.kind === 'distance' ? [`${reading.from} ${reading.to}`, `${reading.to} ${reading.from}`] : [],
    ),
  );
  const seen = newObservation();
  const [slots, by] = [new Int32Array(9), new Float64Array(9)];
  const out: Candidate[] = [];
  network.marks.forEach((from, i) => {
    for (let j = i + 1; j < network.marks.length; j++) {
      const to = network.marks[j];
      if (!to || taken.has(`${from.id} ${to.id}`)) continue;
      OBSERVERS.distance(points, i, j, NO_MARK, seen);
      const reading = { observe: OBSERVERS.distance, kind: 'distance', from: i, to: j, at: NO_MARK, value: 0, sigma };
      const size = rowOf(compiled, { ...reading, kind: 'distance' }, seen, slots, by);
      if (size === 0) continue;
      const full = new Float64Array(compiled.unknowns);
      for (let a = 0; a < size; a++) full[slots[a] ?? 0] = (full[slots[a] ?? 0] ?? 0) + (by[a] ?? 0) / sigma;
      const extra: ExtraReading = { kind: 'distance', from: from.id, to: to.id, repeats: null };
      out.push({ extra, leverage: forwardBy(factor, full) });
    }
  });
  return out;
};

const repeats = (solution: Solution, readings: readonly number[]): readonly Candidate[] =>
  readings.flatMap((i) => {
    const reading = solution.compiled.network.readings[i];
    const leverage = solution.leverage[i];
    if (!reading || !leverage) return [];
    const to = reading.kind === 'offset' ? null : reading.to;
    return [{ extra: { kind: reading.kind, from: reading.from, to, repeats: reading.id }, leverage }];
  });

/**
 * |likeness| of two residuals once the candidate is read too. With s = L⁻¹g/σ the inverse normal matrix shrinks by
 * (Q g)(Q g)ᵀ / (σ² + gᵀQg), so each cofactor grows by (lᵢ·s)(lⱼ·s) / (1 + s·s) (Sherman and Morrison).
 */
const likenessAfter = (solution: Solution, first: number, second: number, s: Float64Array): number => {
  const [a, b] = [solution.leverage[first], solution.leverage[second]];
  if (!a || !b) return 1;
  const [p, q] = [dotOf(a, s), dotOf(b, s)];
  const share = 1 + dotOf(s, s);
  const both = residualCofactor(solution, first, second) + (p * q) / share;
  const one = (solution.redundancy[first] ?? 0) + (p * p) / share;
  const other = (solution.redundancy[second] ?? 0) + (q * q) / share;
  return Math.min(1, Math.abs(both) / Math.sqrt(one * other));
};

/** A reading that leaves two residuals more alike than this tells nothing apart. */
const ALIKE = 0.999;

/**
 * The extra reading after which the likeliest of the undecided would be easiest to tell from the others: it makes the
 * greatest |likeness| left as small as it can be, and among equals it leaves the smallest sum. A distance between two
 * marks that has not been read, or one of the doubtful readings again. Null when nothing of the kind helps.
 */
export const readingThatWouldTell = (solution: Solution, undecided: readonly string[]): ExtraReading | null => {
  const { readings } = solution.compiled.network;
  const indices = undecided.map((id) => readings.findIndex((reading) => reading.id === id)).filter((i) => i >= 0);
  const [first, ...others] = indices;
  if (first === undefined || others.length === 0) return null;
  const sigma = readings.reduce(
    (least, reading) => (isAngle(reading.kind) ? least : Math.min(least, reading.sigma)),
    Infinity,
  );
  if (!Number.isFinite(sigma)) return null;
  let best: { readonly extra: ExtraReading; readonly alike: number } | null = null;
  for (const { extra, leverage } of [...distances(solution, sigma), ...repeats(solution, indices)]) {
    const alike = others.map((other) => likenessAfter(solution, first, other, leverage));
    // The greatest decides; the mean, weighed lightly, tells between candidates that leave one pair equally alike.
    const score = Math.max(...alike) + alike.reduce((sum, one) => sum + one, 0) / alike.length;
    if (Math.min(...alike) < ALIKE && (!best || score < best.alike)) best = { extra, alike: score };
  }
  return best?.extra ?? null;
};
