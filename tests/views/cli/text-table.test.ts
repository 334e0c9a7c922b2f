import { expect, it } from 'vitest';
import { textTable } from '../../../src/views/cli/text-table.ts';

const COLUMNS = [
  { title: 'what', align: 'left' },
  { title: 'mass', align: 'right' },
] as const;

it('lines columns up, two blanks apart, and ends no line in blanks', () => {
  expect(
    textTable(COLUMNS, [
      ['lid', '9.5 kg'],
      ['drawer front', '12 kg'],
    ]),
  ).toEqual(['what            mass', 'lid           9.5 kg', 'drawer front   12 kg']);
});

it('counts a character outside the basic plane once', () => {
  const [head, line] = textTable(COLUMNS, [['𝄞', '1']]);
  expect(head).toBe('what  mass');
  expect(line).toBe('𝄞        1');
});
