// Takes today's results as the kept ones: npm run golden. Read the difference before you commit it.
import { mkdirSync, writeFileSync } from 'node:fs';
import { wholeFlow } from './flow.ts';
import { GOLDEN_DESIGNS, goldenUrl, produced } from './produce.ts';

const flow = await wholeFlow();
for (const name of GOLDEN_DESIGNS) {
  mkdirSync(goldenUrl(name, '.'), { recursive: true });
  for (const [file, text] of await produced(flow, name)) writeFileSync(goldenUrl(name, file), text);
}
