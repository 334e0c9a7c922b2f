// Brings the generated pages and parts of the docs up to date: npm run docs
import { readFileSync, writeFileSync } from 'node:fs';
import { standardCatalog } from '../../src/catalog/index.ts';
import { EXAMPLES } from '../inspection/worked/index.ts';
import { withSchema } from './design-file.ts';
import { houseRulesPage, withStatuses } from './house-rules.ts';
import { consultedByDemos, roomsThatRead } from './house-rules-use.ts';
import { withExamples } from './worked-examples.ts';

const pageUrl = (name: string): URL => new URL(`../../docs/${name}`, import.meta.url);
const renew = (name: string, change: (page: string) => string): void =>
  writeFileSync(pageUrl(name), change(readFileSync(pageUrl(name), 'utf8')));

const { rules } = standardCatalog();
renew('design-file.md', withSchema);
renew('checks.md', (page) => withExamples(withStatuses(page, rules), EXAMPLES));
const use = { checks: await consultedByDemos(), rooms: roomsThatRead([...rules.keys()]) };
writeFileSync(pageUrl('house-rules.md'), houseRulesPage([...rules.values()], use));
