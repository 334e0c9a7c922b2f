// takes: fit-out, findings, catalog and house rules
// gives: the packet for the saw: marks, cut list, drawings, hardware and mass lists, inspection sheet
// knows: what leaves for the saw
export * from './csv.ts';
export * from './cut-list.ts';
export * from './cut-list-csv.ts';
export * from './drawing/index.ts';
export * from './drawings.ts';
export * from './hardware-list.ts';
export * from './inspection-sheet.ts';
export * from './marks.ts';
export * from './masses.ts';
export * from './operations.ts';
export * from './packet.ts';
