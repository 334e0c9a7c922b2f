// takes: convex shapes and poses
// gives: gaps with their nearest points, swept slides, certified turns, solids with their volume
// knows: geometry only
export { clearanceInside, skinGap } from './clearance.ts';
export { beyondPlane, clippedShape, convexVolume, type HalfSpace } from './clip.ts';
export { earTriangles } from './ears.ts';
export { fillsBox } from './filled-box.ts';
export { firstMet } from './first-met.ts';
export { distanceWithin, type Gap, gapBetween, gapWithin } from './gap.ts';
export { halfSpacesOf } from './half-spaces.ts';
export { convexHull } from './hull.ts';
export { shellHolds } from './inside.ts';
export { type JointCell, type JointResult, type JointVerdict, jointTravel, type Mover } from './joint.ts';
export { type LoftSection, loftShell } from './loft.ts';
export {
  greatestSpeed,
  type Held,
  type Motion,
  motionPose,
  motionSpan,
  reversed,
  type Slide,
  type Turn,
  travelBox,
} from './motion.ts';
export { type PreparedShell, prepareShell } from './prepared.ts';
export * from './shapes.ts';
export {
  type Shell,
  shellCentroid,
  shellIsClosed,
  shellPoint,
  shellTriangles,
  shellVolume,
  type Triangle,
} from './shell.ts';
export { skinShapes } from './skin.ts';
export { loadSolids, type Solid, type Solids } from './solids.ts';
export * from './swept.ts';
export {
  certifiedTravel,
  TRAVEL_TOLERANCE_MM,
  type TravelOptions,
  type TravelPlace,
  type TravelResult,
} from './travel.ts';
export { travelIsClear } from './travel-clear.ts';
