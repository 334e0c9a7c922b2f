import { readFileSync } from 'node:fs';
import { loadSolids } from '../../../src/bodies/index.ts';
import { standardCatalog } from '../../../src/catalog/index.ts';
import { readDesign } from '../../../src/design/index.ts';
import { createFlow } from '../../../src/flow.ts';
import { liftsOf, powerPlan } from '../../../src/inspection/index.ts';
import { makeJob } from '../../../src/inspection/job.ts';
import { RULE_IDS } from '../../../src/inspection/rule-ids.ts';
import { RULES } from '../../../src/inspection/rules/index.ts';
import type { BenchRow } from '../harness.ts';

const text = readFileSync(new URL('../../../assets/designs/harrow-fell.json', import.meta.url), 'utf8');
const read = readDesign(text);
if (!read.ok) throw new Error('the large demo does not read');
const design = read.value;
const catalog = standardCatalog();
const flow = createFlow({ catalog, solids: await loadSolids() });
const space = flow.space(design);
const input = {
  design,
  space: space.ok ? space.value : null,
  fitout: flow.fitOut(design),
  catalog,
  rules: flow.rules(design),
};

/** Every rule of weight, hold, slides and shelves, reach, power and heat: they stand together in the list of rules. */
const LOADS = RULE_IDS.slice(RULE_IDS.indexOf('payload'), RULE_IDS.indexOf('power-unknown') + 1);

const job = makeJob(input);

export const rows: readonly BenchRow[] = [
  {
    name: 'loads: weight, hold, carry, reach, power of the large demo',
    make: () => () => LOADS.map((id) => RULES[id](job)),
  },
  { name: 'loads: what all rules share, large demo', make: () => () => makeJob(input) },
  { name: 'loads: lifts and circuits, large demo', make: () => () => [liftsOf(input), powerPlan(input)] },
];
