// takes: findings, problems, changes and replies, ways out, loading cases, and what the design calls its parts
// gives: the words for people: short plain sentences in inches or millimetres, and the standing cautions
// knows: how it is said
export { sayAmount, sayLength } from './amounts.ts';
export { CAUTIONS } from './cautions.ts';
export { sayFigure } from './findings/loads.ts';
export { nameOfPart } from './name-of-part.ts';
export {
  type ArrangeRow,
  arrangeRows,
  sayArrangeFirst,
  sayArrangement,
  sayArrangePlan,
  sayStaying,
} from './say-arrange.ts';
export { sayCarcassIn, sayDiagonals, sayFixed, sayMoverIn, saySteps } from './say-assembly.ts';
export { BOX_ASIDE, type SaidBox, sayBox, sayNoBox } from './say-box.ts';
export {
  type CarryStep,
  carrySteps,
  sayCarried,
  sayCarryGap,
  sayCarryIn,
  sayCarrySteps,
  sayHeld,
  sayLegGap,
  sayMountOff,
  sayTakenOut,
  sayTurned,
} from './say-carry.ts';
export { sayCase } from './say-case.ts';
export { type ChangeSpeech, type SaidFigure, sayChange, sayFigureChange, sayFigureRow } from './say-change.ts';
export { sayClosureEdge } from './say-closure-edge.ts';
export { type SaidFinding, sayFinding, sayRule } from './say-finding.ts';
export { sayFitProblem } from './say-fit-problem.ts';
export { sayListProblem } from './say-list.ts';
export { sayLoadPlate } from './say-load-plate.ts';
export { sayMotions, sayOrderRow, sayOrderStep, sayReach } from './say-order.ts';
export { sayPlace, sayProblem } from './say-problem.ts';
export { sayExtraReading, sayMark, sayReading } from './say-reading.ts';
export { sayCutWarning, sayHash, sayMerged, sayOlder, sayOutcome, sayRemark, sayStamp } from './say-revision.ts';
export { type ScanInUnit, sayScanCheck } from './say-scan.ts';
export { saySlip } from './say-slip.ts';
export { sayWayMargin, sayWayOut } from './say-way-out.ts';
export { type SaidWheelhouse, sayWheelhouse } from './say-wheelhouse.ts';
