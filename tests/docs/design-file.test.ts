import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { withSchema } from './design-file.ts';

it('docs/design-file.md shows the schema of the code', () => {
  const page = readFileSync(new URL('../../docs/design-file.md', import.meta.url), 'utf8');
  expect(page).toContain('"$schema"');
  expect(withSchema(page)).toBe(page);
});
