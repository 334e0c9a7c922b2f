// takes: convex shapes and poses
// gives: gaps with their nearest points, swept slides, certified turns, solids with their volume
// knows: geometry only
export * from './gap.ts';
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
