// takes: data files
// gives: checked records of materials, hardware, devices, gear and house rules, each with its source
// knows: what can be bought, what limits are used
export * from './catalog.ts';
export * from './house-rules.ts';
export * from './records.ts';
export * from './sources.ts';
export * from './standard.ts';
