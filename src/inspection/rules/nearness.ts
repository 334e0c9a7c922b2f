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
  readonly at: readonly [Vec3, Vec3];
  readonly facts: FindingFacts;
}

export const segmentOf = (gap: Gap): readonly [Vec3, Vec3] => [gap.from, gap.to];

const keyOf = (parts: readonly string[]): string => parts.join(' ');

/**
 * Findings and margins of a gap rule: of all bodies that say the same about the same parts, the worst speaks for them,
 * so that a carcass too near the wall is one finding and not one for each of its panels.
 */
export const judgeGaps = (
  rule: RuleId,
  margin: MarginName,
  seen: readonly Nearness[],
  uncertainty: number,
  pairs: number,
): Verdict => {
  const worst = new Map<string, Nearness>();
  for (const near of seen) {
    const key = keyOf(near.parts);
    const before = worst.get(key);
    if (!before || near.value - near.limit.value < before.value - before.limit.value) worst.set(key, near);
  }
  const kept = [...worst].toSorted(([a], [b]) => compareText(a, b)).map(([, near]) => near);
  const findings = kept.flatMap((near): readonly Finding[] => {
    const severity = gapSeverity(near.value, near.limit.value, uncertainty);
    return severity === null ? [] : [found(rule, { ...near, severity, uncertainty, margin })];
  });
  const taken = kept.map((near): Measured => measured(rule, { ...near, margin, sense: 'at least' }));
  return { findings, measured: taken, pairs };
};
