import { REVIEW_FORMAT, type ReviewData } from '../../shop/index.ts';

const isReviewData = (value: unknown): value is ReviewData =>
  typeof value === 'object' && value !== null && 'format' in value && value.format === REVIEW_FORMAT;

/** The data of this copy, or null where the block holds none. It was written by this program; its words are only shown. */
export const readData = (text: string): ReviewData | null => {
  try {
    const value: unknown = JSON.parse(text);
    return isReviewData(value) ? value : null;
  } catch {
    return null;
  }
};
