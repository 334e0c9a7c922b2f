import { expect, it } from 'vitest';
import { readNumberDraft } from '../../../../src/views/editor/parts/number-field.tsx';

const free = { mayBeEmpty: false };

it('reads decimal points and commas, signs and the unit behind', () => {
  expect(readNumberDraft('13.5', free)).toEqual({ ok: true, value: 13.5 });
  expect(readNumberDraft('13,5', free)).toEqual({ ok: true, value: 13.5 });
  expect(readNumberDraft('−2', free)).toEqual({ ok: true, value: -2 });
  expect(readNumberDraft('86°', { ...free, unit: '°' })).toEqual({ ok: true, value: 86 });
});

it('refuses what is no number, no whole number, or past a limit', () => {
  for (const text of ['', 'many', '1e3', '1 2', '--1']) expect(readNumberDraft(text, free).ok).toBe(false);
  expect(readNumberDraft('1.5', { ...free, whole: true })).toEqual({ ok: false, says: 'Write a whole number.' });
  expect(readNumberDraft('0', { ...free, min: 1, unit: '°' })).toEqual({ ok: false, says: 'At least 1 °.' });
  expect(readNumberDraft('300', { ...free, max: 270 })).toEqual({ ok: false, says: 'At most 270.' });
});

it('takes nothing for unknown only where that is allowed', () => {
  expect(readNumberDraft(' ', { mayBeEmpty: true })).toEqual({ ok: true, value: null });
});
