// takes: placed anchors, masses, latches, restraints, load sets of the house rules
// gives: what each anchor takes, and load over capacity of each link
// knows: statics of what is bolted or latched; no crash
export * from './anchor-use.ts';
export { barSection, barStress, holedBar, leastMm4 } from './bar-section.ts';
export * from './bolt-group.ts';
export { boltsUnder, type Wrench } from './bolts-under.ts';
export * from './held-carcass.ts';
export * from './held-movers.ts';
export * from './hold-carcass.ts';
export * from './hold-group.ts';
export * from './links.ts';
export * from './load-sets.ts';
