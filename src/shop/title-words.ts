import type { Design } from '../design/index.ts';
import type { TitleFoot } from './drawing/title-foot.ts';
import { signOffOf } from './sign-off.ts';

/** What every title block says of the design. */
export interface TitleWords {
  readonly designTitle: string;
  readonly customer: string;
  readonly signed: string;
  readonly foot: TitleFoot;
}

export const titleWords = (design: Design): TitleWords => ({
  designTitle: design.title,
  customer: design.customer,
  signed: signOffOf(design).mark,
  foot: {
    projection: design.projection,
    revisions: design.revisions.toReversed().map(({ letter, why, who, on }) => ({ letter, why, who, on })),
  },
});

/** The design and its state in one line, for a file that is found alone. */
export const titleLine = (design: Design): string => {
  const { designTitle, signed } = titleWords(design);
  return design.revisions.length === 0 ? designTitle : `${designTitle} · ${signed}`;
};
