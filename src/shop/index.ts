// takes: fit-out, findings, catalog and house rules
// gives: the packet for the saw: marks, cut list, drawings, hardware and mass lists, inspection sheet
// knows: what leaves for the saw
export * from './csv.ts';
export * from './cut-list.ts';
export * from './cut-list-csv.ts';
export * from './cut-rows.ts';
export { designFigures } from './design-figures.ts';
export * from './drawing/index.ts';
export * from './drawings.ts';
export * from './gear-map/index.ts';
export * from './hardware-list.ts';
export * from './inspection-sheet.ts';
export * from './labels/index.ts';
export {
  createImprover,
  cutSequences,
  highsSolver,
  type Improver,
  type LaidSheet,
  type Layout,
  type LayoutGrain,
  type LayoutJob,
  type LayoutPart,
  type LinearSolver,
  proveTwoStage,
  recombine,
  type SheetSequence,
  type StockSheet,
  sayLayout,
  trimAll,
  validateLayout,
} from './layout/index.ts';
export { type LetteredStrip, sheetStrips } from './layout-figure.ts';
export { cutSequenceCsv, layoutDrawings } from './layout-files.ts';
export * from './lists/index.ts';
export * from './marks.ts';
export * from './masses.ts';
export * from './operations.ts';
export { orderLines } from './order-lines.ts';
export * from './packet.ts';
export type { PacketFile } from './packet-file.ts';
export * from './paper/index.ts';
export * from './papers/index.ts';
export * from './price/index.ts';
export * from './release.ts';
export * from './review-copy/index.ts';
export { routerFile } from './router-file.ts';
export * from './sheet-jobs.ts';
export * from './sheet-layouts.ts';
export * from './shop-work.ts';
export { type SignOff, signOffOf } from './sign-off.ts';
export * from './solids/index.ts';
export * from './stock-words.ts';
export { type SurveySheetInput, surveySheet } from './survey-sheet.ts';
export { zipFiles } from './zip.ts';
