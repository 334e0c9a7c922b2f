import { expect, it } from 'vitest';
import { fileStem } from '../../../../src/views/editor/files/file-name.ts';

it.each([
  ['Harrow Fell, unit 2', 'harrow-fell-unit-2'],
  ['Ünit: "Ö" / ..\\con?', 'unit-o-con'],
  ['  ', 'design'],
  ['字', 'design'],
  ['a'.repeat(90), 'a'.repeat(60)],
])('%s becomes %s', (title, stem) => {
  expect(fileStem(title)).toBe(stem);
});
