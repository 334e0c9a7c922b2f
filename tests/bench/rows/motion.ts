import { readFileSync } from 'node:fs';
import { boxShape, certifiedTravel, loadSolids, type Motion, travelIsClear } from '../../../src/bodies/index.ts';
import { houseRules, standardCatalog } from '../../../src/catalog/index.ts';
import { type Design, emptyDesign, readDesign } from '../../../src/design/index.ts';
import type { FitOut, Mover } from '../../../src/fitout/index.ts';
import { createFlow } from '../../../src/flow.ts';
import { inspect } from '../../../src/inspection/index.ts';
import type { BenchRow } from '../harness.ts';

const catalog = standardCatalog();
const rules = houseRules(catalog, []);
const solids = await loadSolids();
const read = readDesign(readFileSync(new URL('../../../assets/designs/harrow-fell.json', import.meta.url), 'utf8'));
if (!read.ok) throw new Error('the large demo does not read');
const design: Design = read.value;

/** Drawers in a row, each a box of five panels. */
const drawers = (count: number): FitOut => {
  const ids = Array.from({ length: count }, (_, i) => `box-${i}`);
  const movers = ids.map((id) => ({
    id,
    origin: id,
    name: id,
    motion: { kind: 'slide', direction: [-1, 0, 0], travel: 400 },
    carriedBy: null,
    rests: [
      { name: 'stowed', share: 0 },
      { name: 'open', share: 1 },
    ],
  })) as unknown as readonly Mover[];
  const bodies = ids.flatMap((id, i) =>
    [0, 1, 2, 3, 4].map((k) => ({
      id: `${id}/${k}`,
      origin: id,
      carcass: 'carcass-1',
      kind: 'panel',
      name: id,
      mover: id,
      shape: boxShape({ min: [100 + 60 * k, 110 * i, 0], max: [150 + 60 * k, 110 * i + 100, 100] }),
    })),
  ) as unknown as FitOut['bodies'];
  return {
    carcasses: [],
    openings: [],
    panels: [],
    masses: [],
    hardware: [],
    devices: [],
    rooms: [],
    gear: [],
    anchors: [],
    problems: [],
    bodies,
    movers,
  } as unknown as FitOut;
};

/** Everything anew for each run: nothing that was proven before serves. */
const motionChecks = (count: number) => () =>
  inspect({ design: emptyDesign('Bench', 'mm'), space: null, fitout: drawers(count), catalog, rules });

const way: Motion = { kind: 'slide', along: [-1, 0, 0], fromMm: 0, toMm: 700 };
const moving = [boxShape({ min: [60, 0, 0], max: [760, 500, 150] })];
const standing = Array.from({ length: 40 }, (_, i) =>
  boxShape({ min: [-800 + 40 * i, -30, 0], max: [-770 + 40 * i, -2, 150] }),
);

export const rows: readonly BenchRow[] = [
  {
    name: 'motion: opening order, large demo, nothing remembered',
    make: () => () => createFlow({ catalog, solids }).openingOrder(design),
  },
  { name: 'motion: checks of 20 drawers in a row', make: () => motionChecks(20) },
  { name: 'motion: checks of 200 drawers in a row', make: () => motionChecks(200) },
  { name: 'motion: is a slide past 40 bodies clear', make: () => () => travelIsClear(way, moving, standing, 0) },
  {
    name: 'motion: the same with its least gap',
    make: () => () => certifiedTravel(way, moving, standing, 0, { limit: 3 }),
  },
];
