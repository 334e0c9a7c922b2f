// takes: design.survey
// gives: the cargo space: free solid, obstacles, closures, zones, with its uncertainty
// knows: what the vehicle is
export * from './create-cargo-space.ts';
export * from './holds.ts';
export * from './read-sections.ts';
export * from './space.ts';
