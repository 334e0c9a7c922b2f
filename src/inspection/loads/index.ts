// takes: weigh slip, seats, fuel, masses of the fit-out, house rules
// gives: axle loads, balance and stability of each loading case
// knows: statics only
export * from './aboard.ts';
export * from './axle-loads.ts';
export * from './solve-case.ts';
export * from './spread.ts';
export * from './stability.ts';
export * from './weigh-in.ts';
