import type { Vec3 } from '../base/index.ts';
import type { HouseRules } from '../catalog/index.ts';
import type { Finding, FindingFacts, MarginName, Measured, Severity } from './finding.ts';
import type { RuleId } from './rule-ids.ts';

/** What one rule says: what is wrong, what was measured, and how many pairs of bodies it looked at. */
export interface Verdict {
  readonly findings: readonly Finding[];
  readonly measured: readonly Measured[];
  readonly pairs: number;
}

export const NOTHING: Verdict = { findings: [], measured: [], pairs: 0 };

/** A limit with where it comes from. */
export interface Limit {
  readonly value: number;
  readonly unit: string;
  readonly source: string;
  /** How far the figure can be trusted, and who changed it. */
  readonly status: string;
}

/** A house rule as a limit. Throws RangeError for an id that the catalog does not have. */
export const ruleLimit = (rules: HouseRules, id: string): Limit => {
  const { value, unit, source, status, changedBy } = rules.record(id);
  return { value, unit, source, status: changedBy === null ? status : `${status}, changed by ${changedBy.who}` };
};

/** Two solids cannot stand in the same place: no rule of the house, and nobody can change it. */
export const NO_OVERLAP: Limit = {
  value: 0,
  unit: 'mm',
  source: 'solids do not pass through each other',
  status: 'geometry',
};

/** The same limit with another figure: half of a rating, a share of it turned into a mass. */
export const limitAt = (limit: Limit, value: number, unit: string): Limit => ({ ...limit, value, unit });

export interface Found {
  readonly severity: Severity;
  readonly parts: readonly string[];
  readonly value: number;
  readonly limit: Limit;
  readonly uncertainty?: number;
  readonly at?: readonly [Vec3, Vec3] | null;
  readonly margin?: MarginName | null;
  readonly facts?: FindingFacts;
}

/** The way in which something comes out, for the edits that would make room for it. */
export const outFacts = ([x, y, z]: Vec3): FindingFacts => ({ 'out-x': x, 'out-y': y, 'out-z': z });

/** A finding of a rule; whether it is accepted and what would clear it is filled in by the inspection. */
export const found = (rule: RuleId, what: Found): Finding => ({
  rule,
  severity: what.severity,
  parts: what.parts,
  value: what.value,
  limit: what.limit.value,
  unit: what.limit.unit,
  uncertainty: what.uncertainty ?? 0,
  at: what.at ?? null,
  source: what.limit.source,
  status: what.limit.status,
  margin: what.margin ?? null,
  facts: what.facts ?? {},
  waysOut: [],
  accepted: null,
});

export interface Taken {
  readonly margin: MarginName;
  readonly parts: readonly string[];
  readonly value: number;
  readonly limit: Limit;
  readonly sense: 'at least' | 'at most';
  readonly uncertainty?: number;
  readonly at?: readonly [Vec3, Vec3] | null;
}

/** One measured margin; slack is positive when good. */
export const measured = (rule: RuleId, what: Taken): Measured => ({
  rule,
  margin: what.margin,
  parts: what.parts,
  value: what.value,
  limit: what.limit.value,
  slack: what.sense === 'at least' ? what.value - what.limit.value : what.limit.value - what.value,
  unit: what.limit.unit,
  uncertainty: what.uncertainty ?? 0,
  source: what.limit.source,
  status: what.limit.status,
  at: what.at ?? null,
});
