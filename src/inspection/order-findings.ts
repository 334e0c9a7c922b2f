import { compareText } from '../base/index.ts';
import type { Finding, Severity } from './finding.ts';
import { RULE_IDS } from './rule-ids.ts';

const WEIGHT: Readonly<Record<Severity, number>> = { stop: 0, caution: 1, note: 2 };

const PLACE: ReadonlyMap<string, number> = new Map(RULE_IDS.map((id, i) => [id, i]));

/**
 * How far past its limit a finding is, as a share of the limit, so that millimetres and kilograms compare: the larger
 * the worse. A limit of zero counts as one unit.
 */
const excess = (finding: Finding): number =>
  Math.abs(finding.value - finding.limit) / (finding.limit === 0 ? 1 : Math.abs(finding.limit));

/** Stops, then cautions, then notes; among equals in the order of the rules, within a rule the worst first. */
export const orderFindings = (findings: readonly Finding[]): readonly Finding[] =>
  findings.toSorted(
    (a, b) =>
      WEIGHT[a.severity] - WEIGHT[b.severity] ||
      (PLACE.get(a.rule) ?? RULE_IDS.length) - (PLACE.get(b.rule) ?? RULE_IDS.length) ||
      excess(b) - excess(a) ||
      compareText(a.parts.join(' '), b.parts.join(' ')),
  );
