// takes: design.survey
// gives: the cargo space: free solid, obstacles, closures, zones, with its uncertainty
// knows: what the vehicle is
export * from './adjust/index.ts';
export * from './box/index.ts';
export * from './closure-edge.ts';
export * from './create-cargo-space.ts';
export * from './gap-uncertainty.ts';
export * from './holds.ts';
export * from './network-problems.ts';
export * from './opening-from-marks.ts';
export { OUTWARD } from './place-closure.ts';
export * from './plan/index.ts';
export * from './read-sections.ts';
export * from './read-survey.ts';
export * from './scan/index.ts';
export * from './space.ts';
export * from './strut.ts';
export * from './survey-facts.ts';
export * from './survey-network.ts';
export * from './survey-report.ts';
export * from './vehicle-facts.ts';
