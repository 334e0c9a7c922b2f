import { readFileSync } from 'node:fs';
import { loadSolids } from '../../src/bodies/index.ts';
import { standardCatalog } from '../../src/catalog/index.ts';
import { type Design, readDesign } from '../../src/design/index.ts';
import { createFlow, type Flow } from '../../src/flow.ts';

/** The design that comes with the program under this name. Throws when it does not read. */
export const demoDesign = (name: string): Design => {
  const read = readDesign(readFileSync(new URL(`../../assets/designs/${name}.json`, import.meta.url), 'utf8'));
  if (!read.ok) throw new Error(`${name}: ${JSON.stringify(read.error[0])}`);
  return read.value;
};

/** The whole engine over the catalog that comes with the program. */
export const wholeFlow = async (): Promise<Flow> =>
  createFlow({ catalog: standardCatalog(), solids: await loadSolids() });
