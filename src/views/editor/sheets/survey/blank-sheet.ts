import type { LengthUnits } from '../../../../base/index.ts';
import type { Design } from '../../../../design/index.ts';
import type { SurveyPlan } from '../../../../envelope/index.ts';
import { surveySheet } from '../../../../shop/index.ts';
import { openPdfWriter } from '../open-pdf-writer.ts';
import { saveOne } from '../shop/save-packet.ts';

/** Saves the blank survey sheet of a plan as a PDF file, and gives its name. */
export const saveBlankSheet = async (
  plan: SurveyPlan,
  units: LengthUnits,
  { title, customer }: Design,
): Promise<string> => {
  const toPdf = await openPdfWriter();
  const path = `survey-sheet-${plan.closureKind}-${units === 'in' ? 'letter' : 'a4'}.pdf`;
  const about = `survey sheet, ${plan.closureKind.replaceAll('-', ' ')}`;
  const pages = surveySheet({ plan, units, designTitle: title, customer });
  saveOne({ path, kind: 'sheet', about, bytes: toPdf(pages, { title: about, subject: title }) });
  return path;
};
