import { houseRules, standardCatalog } from '../../../catalog/index.ts';
import { cutSequences, type LayoutJob, sayLayout, trimAll } from '../../../shop/index.ts';
import { badInput } from '../bad-input.ts';
import type { Outcome } from '../outcome.ts';
import { readLayoutLists } from '../read-layout-lists.ts';
import { layoutDesign } from './layout-design.ts';
import { sheetLines, sheetsJson, solved } from './layout-run.ts';
import { type GivenSettings, jobWith, type LayoutOptions, STAGES, settingsFrom } from './layout-settings.ts';

const MM = (mm: number): string => `${Number(mm.toFixed(1))}`;
const PERCENT = 100;

/** Kerf, trim and rounds of cuts come from the house rules where the command line does not say. */
const listJob = (partsPath: string, stockPath: string, given: GivenSettings): LayoutJob => {
  const rules = houseRules(standardCatalog(), []);
  const usual: LayoutJob = {
    ...readLayoutLists(partsPath, stockPath),
    cut: 'saw',
    kerf: rules.value('saw-kerf'),
    trim: trimAll(rules.value('sheet-trim')),
    stages: STAGES.get(String(rules.value('cut-stages-max'))) ?? 'any',
    keep: {
      minSide: rules.value('offcut-min-side'),
      minAreaMm2: rules.value('offcut-min-area'),
      valueShare: rules.value('offcut-value-share'),
    },
  };
  return jobWith(usual, given);
};

/** A design file, or one with a letter behind its name; anything else is a list of parts. */
const isDesign = (path: string): boolean => /\.json(?:@[A-Z]{1,3})?$/i.test(path);

/** `layout PARTS.csv --stock STOCK.csv` or `layout DESIGN`: sheet layouts with the sequence of cuts. */
export const layout = async (path: string, options: LayoutOptions): Promise<Outcome> => {
  const given = settingsFrom(options);
  if (isDesign(path)) return layoutDesign(path, options.stock, given);
  if (options.stock === undefined)
    throw badInput('a list of parts needs the list of sheets that it is cut from', null, '--stock');
  const job = listJob(path, options.stock, given);
  const { layout: best, seconds } = await solved(job, given);
  const sequences = cutSequences(job, best);
  return {
    lines: [
      ...sheetLines(best, sequences, 'mm'),
      `${best.sheets.length} sheets, ${MM(best.usedShare * PERCENT)} % used, price ${best.price.toFixed(2)}`,
      ...sayLayout(best, (mm) => `${MM(mm)} mm`),
    ],
    json: {
      sheets: sheetsJson(best, sequences),
      unplaced: best.unplaced,
      notes: best.notes,
      lowerBoundSheets: best.proof.lowerBoundSheets,
      proof: best.proof,
      usedShare: best.usedShare,
      price: best.price,
      seconds: Number(seconds.toFixed(3)),
    },
    exitCode: 0,
  };
};
