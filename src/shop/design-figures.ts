import type { Catalog, HouseRules } from '../catalog/index.ts';
import type { Design } from '../design/index.ts';
import type { FitOut } from '../fitout/index.ts';
import type { Inspection } from '../inspection/index.ts';
import { type Figure, figuresOf } from '../revision/index.ts';
import { nameOfPart } from '../says/index.ts';
import { cutList } from './cut-list.ts';
import { markParts } from './marks.ts';
import { sheetJobs } from './sheet-jobs.ts';
import { layoutSheets, STANDARD_BUDGET } from './sheet-layouts.ts';

export interface DesignFiguresInput {
  readonly design: Design;
  readonly fitout: FitOut;
  readonly catalog: Catalog;
  readonly rules: HouseRules;
  readonly inspection: Inspection;
}

/** Masses, axles, margins, sheets and price of one design, for comparing it with another. Lays the sheets out. */
export const designFigures = ({
  design,
  fitout,
  catalog,
  rules,
  inspection,
}: DesignFiguresInput): readonly Figure[] => {
  const rows = cutList({ fitout, marks: markParts(fitout), catalog, rules, names: nameOfPart(design, fitout) });
  const layouts = layoutSheets(sheetJobs(rows, catalog, rules), STANDARD_BUDGET);
  return figuresOf({ fitout, inspection, sheets: layouts.sheets, price: layouts.price });
};
