import { chiSquareTail } from '../../base/index.ts';
import { type Adjustment, adjustmentOf } from './adjust.ts';
import { likelySlip, type Slip } from './likely-slip.ts';
import { isAngle, type Network, predict } from './network.ts';
import { solveNetwork } from './solution.ts';
import { honestLimit, siftReadings, UNCHECKED_BELOW } from './suspects.ts';
import { type ExtraReading, readingThatWouldTell } from './would-tell.ts';

export interface Suspect {
  readonly id: string;
  readonly read: number;
  /** What the other readings make it. */
  readonly others: number;
  readonly w: number;
  /** A usual slip that would explain it, or null. */
  readonly slip: Slip | null;
}

/** What the readings say about each other. */
export interface Verdict {
  readonly adjustment: Adjustment;
  /** True when no residual is larger than chance explains. */
  readonly consistent: boolean;
  /** The chance that honest readings would fit this badly or worse, over all readings. */
  readonly fitChance: number;
  /** Readings named as likely wrong, worst first. */
  readonly suspects: readonly Suspect[];
  /** When the data cannot tell: the readings of which one is wrong, the likeliest first. */
  readonly undecided: readonly string[];
  /** The reading that would best tell them apart, or null. */
  readonly wouldTell: ExtraReading | null;
  /** Readings that nothing else checks: what hangs on them hangs on a single reading. */
  readonly unchecked: readonly string[];
  /** The largest |w| that still passes. */
  readonly limit: number;
}

/** Adjusts the network and says which reading is likely wrong, or which extra reading would tell. */
export const judgeReadings = (network: Network): Verdict => {
  const solution = solveNetwork(network);
  const adjustment = adjustmentOf(solution);
  const { named, undecided, settled } = siftReadings(network, solution);
  const others = adjustmentOf(settled).points;
  const rows = new Map(adjustment.readings.map((row) => [row.id, row]));
  const suspects = network.readings
    .filter((reading) => named.includes(reading.id))
    .map((reading): Suspect => {
      const made = predict(reading, others);
      const row = rows.get(reading.id);
      // Read less others spreads by σ / √r: what the others make it is not exact either.
      const spread = reading.sigma / Math.sqrt(row?.redundancy ?? 1);
      const slip = isAngle(reading.kind) ? null : likelySlip(reading.value, made, spread);
      return { id: reading.id, read: reading.value, others: made, w: row?.w ?? 0, slip };
    })
    .toSorted((a, b) => Math.abs(b.w) - Math.abs(a.w));
  return {
    adjustment,
    consistent: suspects.length === 0 && undecided.length === 0,
    fitChance: adjustment.redundancy > 0 ? chiSquareTail(adjustment.weightedSquareSum, adjustment.redundancy) : 1,
    suspects,
    undecided,
    wouldTell: undecided.length > 1 ? readingThatWouldTell(solution, undecided) : null,
    unchecked: adjustment.readings.filter((row) => row.redundancy < UNCHECKED_BELOW).map((row) => row.id),
    limit: honestLimit(solution),
  };
};
