import { compareText, type Vec3 } from '../../base/index.ts';
import type { Gap } from '../../bodies/index.ts';
import type { Finding, FindingFacts, MarginName, Measured } from '../finding.ts';
import { gapSeverity } from '../gap-severity.ts';
import type { RuleId } from '../rule-ids.ts';
import { found, type Limit, measured, type Verdict } from '../verdict.ts';

/** One gap between something of the cabinet and something of the vehicle. */
export interface Nearness {
  /** What the finding is about, most important first. */
  readonly parts: readonly string[];
  readonly value: number;
  readonly limit: Limit;
  /** Half width of the value at 95 %. */
  readonly uncertainty: number;
  readonly at: readonly [Vec3, Vec3];
  readonly facts: FindingFacts;
}

export const segmentOf = (gap: Gap): readonly [Vec3, Vec3] => [gap.from, gap.to];

const keyOf = (parts: readonly string[]): string => parts.join(' ');

/** What is left over the limit if the uncertainty falls against us. */
const sureSlack = (near: Nearness): number => near.value - near.limit.value - near.uncertainty;

/**
 * Findings and margins of a gap rule: of all bodies that say the same about the same parts, the worst speaks for them,
 * so that a carcass too near the wall is one finding and not one for each of its panels.
 */
export const judgeGaps = (rule: RuleId, margin: MarginName, seen: readonly Nearness[], pairs: number): Verdict => {
  const worst = new Map<string, Nearness>();
  for (const near of seen) {
    const key = keyOf(near.parts);
    const before = worst.get(key);
    if (!before || sureSlack(near) < sureSlack(before)) worst.set(key, near);
  }
  const kept = [...worst].toSorted(([a], [b]) => compareText(a, b)).map(([, near]) => near);
  const findings = kept.flatMap((near): readonly Finding[] => {
    const severity = gapSeverity(near.value, near.limit.value, near.uncertainty);
    return severity === null ? [] : [found(rule, { ...near, severity, margin })];
  });
  const taken = kept.map((near): Measured => measured(rule, { ...near, margin, sense: 'at least' }));
  return { findings, measured: taken, pairs };
};
