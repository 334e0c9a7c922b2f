import type { ReviewData } from '../../shop/index.ts';
import { type Draft, NO_DRAFT } from './state.ts';

const keyOf = ({ sha256 }: ReviewData): string => `hatchwright-reply-${sha256}`;

/** What the reader wrote before, where this browser keeps anything for a file; otherwise nothing. */
export const keptDraft = (data: ReviewData): Draft => {
  try {
    const text = localStorage.getItem(keyOf(data));
    const kept: unknown = text === null ? null : JSON.parse(text);
    return typeof kept === 'object' && kept !== null ? { ...NO_DRAFT, ...kept } : NO_DRAFT;
  } catch {
    return NO_DRAFT;
  }
};

export const keepDraft = (data: ReviewData, draft: Draft): void => {
  try {
    localStorage.setItem(keyOf(data), JSON.stringify(draft));
  } catch {
    // Some browsers keep nothing for files: the reply is then saved by hand or not at all, as the page says.
  }
};
