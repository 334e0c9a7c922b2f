export { labelPages } from './label-pages.ts';
export {
  isLabelSheetId,
  LABEL_SHEET_IDS,
  LABEL_SHEETS,
  type LabelSheet,
  type LabelSheetId,
  labelCorner,
  usualLabelSheet,
} from './label-sheets.ts';
export { type PartLabel, type PartLabelsInput, partLabels } from './part-labels.ts';
