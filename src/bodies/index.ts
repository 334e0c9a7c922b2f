// takes: convex shapes and poses
// gives: gaps with their nearest points, swept slides, certified turns, solids with their volume
// knows: geometry only
export { clearanceInside, skinGap } from './clearance.ts';
export * from './gap.ts';
export { convexHull } from './hull.ts';
export { shellHolds } from './inside.ts';
export { type LoftSection, loftShell } from './loft.ts';
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
export { loadSolids, type Solid, type Solids } from './solids.ts';
export * from './swept.ts';
