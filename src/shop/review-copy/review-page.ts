import type { ReviewData } from './review-data.ts';

/** Where the data stands in the built page: the whole content of a block that no browser runs. */
export const DATA_MARK = '"hatchwright-review-data"';

/** Signs that could end the block, open a comment in it, or break a line of script in an old reader. */
const UNSAFE = /[<>&\u2028\u2029]/g;

const escaped = (sign: string): string => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`;

/** Data as JSON that can stand in a page: no sign in it can leave its block, and it reads back the same. */
export const pageJson = (data: unknown): string => JSON.stringify(data).replace(UNSAFE, escaped);

/** The built page with the data put in. Throws when the page is not the one that was built for it. */
export const fillReviewPage = (page: string, data: ReviewData): string => {
  const at = page.indexOf(DATA_MARK);
  if (at < 0 || page.indexOf(DATA_MARK, at + 1) >= 0) throw new Error('fillReviewPage: this is no page for a copy');
  return page.slice(0, at) + pageJson(data) + page.slice(at + DATA_MARK.length);
};
