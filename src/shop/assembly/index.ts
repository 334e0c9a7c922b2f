export { type Assembly, assembliesOf, piecesOf } from './assemblies.ts';
export * from './assembly-plan.ts';
export type { Joint } from './joints.ts';
export { type Panel, prismsOf, woodOf } from './wood.ts';
