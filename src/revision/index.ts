// takes: designs, their fit-outs and inspections, a reply file
// gives: released revisions with their hash, what differs between two designs, panels to cut again, replies brought in
// knows: what changed
export { type ChangedPanel, changedPanels } from './changed-panels.ts';
export { type Change, type ChangeKind, compareDesigns, type FieldChange } from './compare.ts';
export { type CutAgain, cutAgain } from './cut-again.ts';
export {
  compareFigures,
  type Figure,
  type FigureChange,
  type FigureSources,
  figuresOf,
  pairFigures,
} from './figures.ts';
export {
  bareDesign,
  newestCut,
  nextLetter,
  type ReleaseWords,
  type RevisionStamp,
  readRevision,
  releaseRevision,
  revisionDesign,
  revisionStamp,
  sha256Of,
} from './release.ts';
export {
  mergeReply,
  type PlacedRemark,
  placedRemarks,
  printReply,
  REPLY_FORMAT,
  type Reply,
  readReply,
} from './reply.ts';
