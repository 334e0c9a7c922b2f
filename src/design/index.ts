// takes: text
// gives: the design document: schema, reading with placed problems, printing, edits, ids, migrations
// knows: what the user said: the only thing saved and undone
export * from './anchors.ts';
export * from './cabinet.ts';
export * from './design.ts';
export * from './edits/index.ts';
export * from './fittings/index.ts';
export * from './fresh.ts';
export * from './gear.ts';
export * from './json-schema.ts';
export * from './migrations.ts';
export * from './nodes.ts';
export type { DeepReadonly, NodeId } from './parts.ts';
export * from './read.ts';
export * from './reading-rows.ts';
export * from './review.ts';
export { type NoSuchPlace, setValue, typedValue, type ValueSet } from './set-value.ts';
export { MOST_OF_ONE_STOCK, type StockRow } from './stock.ts';
export * from './stock-of-material.ts';
export * from './structure.ts';
export * from './survey.ts';
export * from './vehicle.ts';
