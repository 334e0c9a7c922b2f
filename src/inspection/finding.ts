import type { Vec3 } from '../base/index.ts';
import type { Design } from '../design/index.ts';
import type { WeighIn } from './loads/weigh-in.ts';

export type Severity = 'stop' | 'caution' | 'note';

/** The short pieces of tape along the foot of the window: each rule belongs to one of them, or to none. */
export const MARGINS = ['gap', 'travel', 'hatch', 'payload', 'axle', 'side', 'hold', 'reach', 'power'] as const;
export type MarginName = (typeof MARGINS)[number];

/** Numbers and names that the words of a finding are made from; what is in it depends on the rule. */
export type FindingFacts = Readonly<Record<string, string | number>>;

/** One result of one check. Its words are made in the room `says`. */
export interface Finding {
  /** The rule: `body-in-space`, `rear-axle`. */
  readonly rule: string;
  readonly severity: Severity;
  /** What it is about, most important first: ids of parts or nodes of the design. */
  readonly parts: readonly string[];
  readonly value: number;
  readonly limit: number;
  readonly unit: string;
  /** Half width of the value at 95 %, in its unit; 0 where it is exact. */
  readonly uncertainty: number;
  /** Where, as a segment in vehicle axes: the two nearest points, or null when it has no place. */
  readonly at: readonly [Vec3, Vec3] | null;
  /** Source and status of the limit. */
  readonly source: string;
  readonly status: string;
  readonly margin: MarginName | null;
  readonly facts: FindingFacts;
  /** Edits that were tried on a copy, clear the finding and make no new stop, best first. */
  readonly waysOut: readonly WayOut[];
  /** Who lets it stand and why, or null. */
  readonly accepted: { readonly who: string; readonly why: string; readonly on: string } | null;
}

/** An edit that clears a finding. The design it leads to is made by `apply`d edits, so it is plain data. */
export interface WayOut {
  /** What is done, a stable word for the sentence: move-carcass, shrink-carcass, move-gear, raise-row. */
  readonly kind: string;
  readonly facts: FindingFacts;
  readonly design: Design;
  readonly valueAfter: number;
  /** True where nothing is measured any more, so that all that is known is that it keeps its limit. */
  readonly keepsLimit: boolean;
}

/** Every check passed or not, with its margin, so that the tape along the foot can show the worst of each. */
export interface Measured {
  readonly rule: string;
  readonly margin: MarginName;
  readonly parts: readonly string[];
  readonly value: number;
  readonly limit: number;
  /** Positive when good. */
  readonly slack: number;
  readonly unit: string;
  /** Half width of the value at 95 %, in its unit; 0 where it is exact. */
  readonly uncertainty: number;
  /** Source and status of the limit. */
  readonly source: string;
  readonly status: string;
  readonly at: readonly [Vec3, Vec3] | null;
  /** Of a mover that reaches the whole of it: its travel, in mm or degrees. */
  readonly travel?: number;
}

export interface LoadingCaseResult {
  readonly id: string;
  readonly frontKg: number;
  readonly rearKg: number;
  readonly totalKg: number;
  /** Share of the weight on the left wheels, or null without a track. */
  readonly leftShare: number | null;
  /** In vehicle axes; upward null while its height is unknown. */
  readonly cg: readonly [number, number, number | null];
  /** Above ground, or null while it is unknown. */
  readonly cgHeightMm: number | null;
  /** One standard deviation of it on each axis; upward null while its height is unknown. Null without a weight. */
  readonly cgSigmaMm: readonly [number, number, number | null] | null;
  /** What everything behind the rear axle takes off the front one. */
  readonly takenOffFrontKg: number;
  /** Static stability factor T / (2 h), and on the side that the load leans to. */
  readonly ssf: number | null;
  readonly ssfWorstSide: number | null;
  /** One standard deviation of the factor on the worst side. */
  readonly ssfSigma: number | null;
  readonly margins: {
    readonly frontKg: number | null;
    readonly rearKg: number | null;
    readonly grossKg: number | null;
  };
}

export interface Inspection {
  readonly findings: readonly Finding[];
  readonly measured: readonly Measured[];
  /** House rules that each rule looked up for this design, by the rule's id: where a limit that nothing met comes from. */
  readonly consulted: Readonly<Record<string, readonly string[]>>;
  readonly cases: readonly LoadingCaseResult[];
  /** The scale after the build against the prediction; null until it has been weighed. */
  readonly weighed: WeighIn | null;
  readonly checked: {
    readonly rules: number;
    readonly bodies: number;
    readonly pairs: number;
    readonly movers: number;
    readonly moverPairs: number;
  };
}
