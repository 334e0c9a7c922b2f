import { readFileSync } from 'node:fs';
import { loadSolids } from '../../../src/bodies/index.ts';
import { standardCatalog } from '../../../src/catalog/index.ts';
import { type Design, moveDivider, type NodeId, readDesign } from '../../../src/design/index.ts';
import { createFlow } from '../../../src/flow.ts';
import type { BenchRow } from '../harness.ts';

const text = readFileSync(new URL('../../../assets/designs/harrow-fell.json', import.meta.url), 'utf8');
const parsed = (): Design => {
  const read = readDesign(text);
  if (!read.ok) throw new Error('the large demo does not read');
  return read.value;
};
const catalog = standardCatalog();
const solids = await loadSolids();
const warm = createFlow({ catalog, solids });
const design = parsed();
warm.inspection(design);

/** The second column of the left carcass, whose rows a person would drag. */
const rowsOf = (from: Design): NodeId => {
  const opening = from.cabinet.carcasses[0]?.opening;
  const column = opening?.content.kind === 'divided' ? opening.content.parts[1]?.opening : undefined;
  if (!column) throw new Error('the large demo has no second column');
  return column.id;
};
const rows0 = rowsOf(design);
let turn = 0;
/** The large demo with one divider at another place each time, so that no remembered result serves. */
const dragged = (): Design => {
  turn = (turn + 1) % 16;
  return moveDivider(design, rows0, 0, 172 + turn, 110 - turn / 2);
};

/** Everything anew from the text: the whole flow of the large demo, warm code, nothing remembered. */
const whole = (): unknown => {
  const flow = createFlow({ catalog, solids });
  return flow.inspection(parsed());
};

export const rows: readonly BenchRow[] = [
  { name: 'flow: read the design, large demo', make: () => parsed },
  { name: 'flow: cargo space, large demo', make: () => () => createFlow({ catalog, solids }).space(design) },
  {
    name: 'flow: fit-out, large demo, nothing remembered',
    make: () => () => createFlow({ catalog, solids: null }).fitOut(design),
  },
  { name: 'flow: fit-out, large demo, one divider dragged', make: () => () => warm.fitOut(dragged()) },
  { name: 'flow: inspection, large demo, one divider dragged', make: () => () => warm.inspection(dragged()) },
  { name: 'flow: all of it, large demo, nothing remembered', make: () => whole },
];
