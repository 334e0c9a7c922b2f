// takes: parts, stock and what the saw can do
// gives: sheet layouts with their proof, judged by one validator, and the sequence of cuts for the person at the saw
// knows: how sheets come apart
export * from './bounds/bound.ts';
export * from './improver.ts';
export * from './job.ts';
export * from './layout.ts';
export * from './linear/highs-solver.ts';
export * from './linear/prove.ts';
export * from './linear/recombine.ts';
export * from './linear/solver.ts';
export * from './say-layout.ts';
export * from './sequence/cut-sequence.ts';
export * from './sheet-pattern.ts';
export * from './validate/fault.ts';
export * from './validate/validate-layout.ts';
