import { type CarryIn, type Inspection, type OpeningOrder, workOutOrder } from '../inspection/index.ts';
import type { CutAgain } from '../revision/index.ts';
import { nameOfPart } from '../says/index.ts';
import { createDrawings, type Drawings, type DrawingsInput } from './drawings.ts';
import { hardwareList } from './hardware-list.ts';
import { type LabelSheetId, usualLabelSheet } from './labels/index.ts';
import type { PapersInput } from './papers/paper.ts';
import { priceOf } from './price/index.ts';
import { sheetJobs } from './sheet-jobs.ts';
import { layoutSheets, type SheetLayouts, STANDARD_BUDGET } from './sheet-layouts.ts';

export interface ShopWorkInput extends DrawingsInput {
  readonly inspection: Inspection;
  /** How everything is carried in; without it there is no paper of it. */
  readonly carry?: CarryIn | null;
  /** Layouts that were improved on screen; without them the sheets are laid out with the standard budget. */
  readonly layouts?: SheetLayouts;
  /** What has changed since sheets were cut from a released letter. */
  readonly cutAgain?: CutAgain | null;
  /** Where somebody has it already. */
  readonly order?: OpeningOrder;
  /** Labels as they are bought; the usual sheet of the design's units where nobody chose. */
  readonly labelSheet?: LabelSheetId;
  /** The first free label of a sheet that has been begun, from 1. */
  readonly firstLabel?: number;
}

/** Everything that the files and papers of the packet share, worked out once. */
export const shopWork = (input: ShopWorkInput, drawings: Drawings = createDrawings(input)): PapersInput => {
  const { design, fitout, catalog, rules } = input;
  const layouts =
    input.layouts ?? layoutSheets(sheetJobs(drawings.rows, catalog, rules, design.stock), STANDARD_BUDGET);
  const hardware = hardwareList({ fitout, catalog, rules, names: nameOfPart(design, fitout), units: design.units });
  return {
    ...input,
    drawings,
    layouts,
    hardware,
    order: input.order ?? workOutOrder(input),
    price: priceOf({ design, fitout, catalog, rules, layouts, hardware }),
    cutAgain: input.cutAgain ?? null,
    labelSheet: input.labelSheet ?? usualLabelSheet(design.units),
    firstLabel: input.firstLabel ?? 1,
  };
};
