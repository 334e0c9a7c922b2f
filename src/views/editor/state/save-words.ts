import type { SaveState } from './store.ts';

const SECOND_MS = 1000;
const MINUTE_MS = 60 * SECOND_MS;
const HOUR_MS = 60 * MINUTE_MS;

/** How long ago in the words of a person. */
export const agoWords = (ms: number): string => {
  if (ms < 5 * SECOND_MS) return 'just now';
  if (ms < MINUTE_MS) return `${Math.floor(ms / SECOND_MS)} s ago`;
  if (ms < HOUR_MS) return `${Math.floor(ms / MINUTE_MS)} min ago`;
  return ms < 24 * HOUR_MS ? `${Math.floor(ms / HOUR_MS)} h ago` : `${Math.floor(ms / (24 * HOUR_MS))} d ago`;
};

/** What the header says of the state of saving; a design that was never changed has nothing to save. */
export const saveWords = (save: SaveState, now: number): string => {
  switch (save.kind) {
    case 'saved':
      return save.at === 0 ? '' : `saved ${agoWords(now - save.at)}`;
    case 'saving':
      return 'saving…';
    case 'elsewhere':
      return 'open elsewhere, not saved here';
    case 'failed':
      return 'not saved';
  }
};
