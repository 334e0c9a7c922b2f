import { expect, test } from 'vitest';
import { bad, good, pathText } from '../../src/base/index.ts';

test.each<[readonly PropertyKey[], string]>([
  [[], ''],
  [['cabinet'], 'cabinet'],
  [['cabinet', 'carcasses', 0, 'size', 'width'], 'cabinet.carcasses[0].size.width'],
  [[2, 'mark'], '[2].mark'],
  [['rows', 1, 2], 'rows[1][2]'],
])('the path of %j', (keys, text) => {
  expect(pathText(keys)).toBe(text);
});

test('a result is good with its value, or bad with its error', () => {
  expect(good(3)).toEqual({ ok: true, value: 3 });
  expect(bad([{ at: '', code: 'negative' }])).toEqual({ ok: false, error: [{ at: '', code: 'negative' }] });
});
