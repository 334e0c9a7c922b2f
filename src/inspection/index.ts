// takes: cargo space, fit-out, catalog and house rules
// gives: the inspection: findings, margins and loading cases, one function a rule
// knows: what is wrong
export { findWaysOut, type TryDesign } from './find-ways-out.ts';
export * from './finding.ts';
export { findingKey, inspect, openStops } from './inspect.ts';
export type { InspectionInput } from './job.ts';
export {
  type AboardItem,
  type AxleLoads,
  axleLoads,
  CASE_IDS,
  type CaseId,
  type LoadingCase,
  loadingCases,
  staticStability,
} from './loads/index.ts';
export { isRuleId, RULE_IDS, type RuleId } from './rule-ids.ts';
export { FIGURES, type FigureName, missingFigures } from './rules/figures-missing.ts';
export { WAY_KINDS, type WayKind } from './ways-out/candidate.ts';
