// takes: gear in place, the person of the house rules
// gives: how each item is lifted, and how far hands and eyes go
// knows: people's sizes and strength as house rules
export * from './lifting.ts';
export * from './lifts.ts';
