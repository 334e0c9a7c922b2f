// Brings the generated parts of the docs up to date: npm run docs
import { readFileSync, writeFileSync } from 'node:fs';
import { withSchema } from './design-file.ts';

const page = new URL('../../docs/design-file.md', import.meta.url);
writeFileSync(page, withSchema(readFileSync(page, 'utf8')));
