import { readFileSync } from 'node:fs';
import { loadSolids } from '../../../src/bodies/index.ts';
import { standardCatalog } from '../../../src/catalog/index.ts';
import { readDesign } from '../../../src/design/index.ts';
import { createFlow } from '../../../src/flow.ts';
import { liftsOf, powerPlan } from '../../../src/inspection/index.ts';
import { makeJob } from '../../../src/inspection/job.ts';
import type { RuleId } from '../../../src/inspection/rule-ids.ts';
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

/** Every rule of weight, hold, slides and shelves, reach, power and heat. */
const LOADS: readonly RuleId[] = [
  'payload',
  'front-axle',
  'rear-axle',
  'side-to-side',
  'front-unload',
  'front-share',
  'stability',
  'stability-loss',
  'disclosure',
  'weigh-difference',
  'anchor-count',
  'anchor-hold',
  'anchor-edge',
  'anchor-no-hole',
  'hold-unknown',
  'latch-hold',
  'back-stop',
  'gear-hold',
  'gear-needs-bracket',
  'seat-back-load',
  'slide-load',
  'tray-leg',
  'tray-tip',
  'shelf-sag',
  'drawer-bottom-sag',
  'gas-spring',
  'lifting',
  'heavy-gear',
  'reach-far',
  'control-height',
  'reading-angle',
  'head-clear',
  'battery-hours',
  'alternator',
  'wire-fuse',
  'wire-drop',
  'bay-heat',
  'power-unknown',
];

const job = makeJob(input);

export const rows: readonly BenchRow[] = [
  {
    name: 'loads: weight, hold, carry, reach, power of the large demo',
    make: () => () => LOADS.map((id) => RULES[id](job)),
  },
  { name: 'loads: what all rules share, large demo', make: () => () => makeJob(input) },
  { name: 'loads: lifts and circuits, large demo', make: () => () => [liftsOf(input), powerPlan(input)] },
];
