// takes: cargo space, fit-out, catalog and house rules
// gives: the inspection: findings, margins and loading cases, one function a rule
// knows: what is wrong
export type { GearReach, OpeningOrder, OrderRow, OrderStep } from './access/opening-order.ts';
export { workOutOrder } from './access/work-out-order.ts';
export {
  ARRANGE_FIRST,
  type ArrangedItem,
  type ArrangeFigures,
  type ArrangeFirst,
  type Arrangement,
  type ArrangePlan,
  type ArrangeWishes,
  arrange,
  highsProgram,
  type ProgramSolver,
  type Staying,
} from './arrange/index.ts';
export { planCarryIn } from './carry/carry-in.ts';
export type { CarriedCarcass, CarriedMount, CarryIn, CarryLeg, CarryPath, CarryPose } from './carry/carry-result.ts';
export { carryPoseOf } from './carry/plan-out.ts';
export { findWaysOut } from './find-ways-out.ts';
export * from './finding.ts';
export { gasSpringFigures, type SpringFigures } from './gas-spring-figures.ts';
export { inspect, openStops, releaseHolds } from './inspect.ts';
export type { InspectionInput } from './job.ts';
export { axleLoads, CASE_IDS, type CaseId, staticStability, type WeighIn, type WeighShare } from './loads/index.ts';
export { type BayHeat, type Circuit, type PowerPlan, powerPlan } from './power/index.ts';
export { type Lift, liftsOf } from './reach/index.ts';
export { isRuleId, RULE_IDS, type RuleId } from './rule-ids.ts';
export { type FigureName, missingFigures } from './rules/figures-missing.ts';
export { type StandingHeight, standingHeights } from './rules/heights.ts';
export { WAY_KINDS, type WayKind } from './ways-out/candidate.ts';
export { askFor, shortOf, type WheelhouseAsk, type WheelhouseCut, wheelhouseAsks } from './wheelhouse-asks.ts';
