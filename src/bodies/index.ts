// takes: convex shapes and poses
// gives: gaps with their nearest points, swept slides, certified turns, solids with their volume
// knows: geometry only
export * from './shapes.ts';
