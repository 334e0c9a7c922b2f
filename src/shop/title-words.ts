import type { Design } from '../design/index.ts';
import { signOffOf } from './sign-off.ts';

/** What every title block says of the design. */
export interface TitleWords {
  readonly designTitle: string;
  readonly customer: string;
  readonly signed: string;
}

export const titleWords = (design: Design): TitleWords => ({
  designTitle: design.title,
  customer: design.customer,
  signed: signOffOf(design).mark,
});

/** The design and its state in one line, for a file that is found alone. */
export const titleLine = (design: Design): string => {
  const { designTitle, signed } = titleWords(design);
  return design.revisions.length === 0 ? designTitle : `${designTitle} · ${signed}`;
};
