// takes: spans, loads, springs
// gives: sag and stress of shelves and plates, what gas springs do over a swing
// knows: beams and levers
export * from './beam.ts';
export * from './spring-swing.ts';
