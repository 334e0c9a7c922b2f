import { createStore } from 'zustand/vanilla';
import type { OpeningContent } from '../../../../../design/index.ts';

/** What was copied out of an opening, with the words for it. Lasts as long as the page. */
export interface Copied {
  readonly content: OpeningContent;
  readonly words: string;
}

export const clipboard = createStore<{ readonly copied: Copied | null }>(() => ({ copied: null }));
