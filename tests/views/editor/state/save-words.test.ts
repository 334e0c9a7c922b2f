import { expect, it } from 'vitest';
import { agoWords, saveWords } from '../../../../src/views/editor/state/save-words.ts';

it.each([
  [0, 'just now'],
  [4_999, 'just now'],
  [5_000, '5 s ago'],
  [59_999, '59 s ago'],
  [60_000, '1 min ago'],
  [3_600_000, '1 h ago'],
  [48 * 3_600_000, '2 d ago'],
])('%i ms is %s', (ms, says) => {
  expect(agoWords(ms)).toBe(says);
});

it('says nothing of a design that was never kept, and plainly what went wrong', () => {
  expect(saveWords({ kind: 'saved', at: 0 }, 10)).toBe('');
  expect(saveWords({ kind: 'saved', at: 1000 }, 8000)).toBe('saved 7 s ago');
  expect(saveWords({ kind: 'elsewhere' }, 0)).toBe('open elsewhere, not saved here');
  expect(saveWords({ kind: 'failed', why: 'full' }, 0)).toBe('not saved');
});
