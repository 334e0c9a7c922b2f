// takes: cargo space, fit-out, catalog and house rules
// gives: the inspection: findings, margins and loading cases, one function a rule
// knows: what is wrong
export * from './finding.ts';
