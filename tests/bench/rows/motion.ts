import { readFileSync } from 'node:fs';
import {
  boxShape,
  certifiedTravel,
  gapBetween,
  loadSolids,
  type Motion,
  motionPose,
  shapeAt,
  TRAVEL_TOLERANCE_MM,
  travelIsClear,
} from '../../../src/bodies/index.ts';
import { houseRules, standardCatalog } from '../../../src/catalog/index.ts';
import { changeFitting, type Design, emptyDesign, type NodeId, readDesign } from '../../../src/design/index.ts';
import { createFitOutSolver, type FitOut, type Mover } from '../../../src/fitout/index.ts';
import { createFlow } from '../../../src/flow.ts';
import { inspect } from '../../../src/inspection/index.ts';
import { makeJob } from '../../../src/inspection/job.ts';
import type { RuleId } from '../../../src/inspection/rule-ids.ts';
import { RULES } from '../../../src/inspection/rules/index.ts';
import { allMovers, shownShares } from '../../../src/views/editor/bay/motion/all-movers.ts';
import { pullRange } from '../../../src/views/editor/bay/motion/pull-range.ts';
import { pulledShare } from '../../../src/views/editor/bay/motion/pulled-share.ts';
import { pullPath } from '../../../src/views/editor/bay/pointer/pull-path.ts';
import { moverPoses } from '../../../src/views/motion-pose.ts';
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
    braces: [],
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

/** Everything that follows what moves. */
const OF_MOTION: readonly RuleId[] = [
  'hatch-closed',
  'closure-swing',
  'low-roof',
  'mover-travel',
  'mover-pairs',
  'working-triple',
  'hand-room',
  'device-out',
  'gear-out',
  'first-due',
];

const flow = createFlow({ catalog, solids });
const made = flow.space(design);
const space = made.ok ? made.value : null;
const solved = flow.fitOut(design);
const limits = flow.rules(design);
const judged = (of: Design, fitout: FitOut, within: typeof space): unknown => {
  const job = makeJob({ design: of, space: within, fitout, catalog, rules: limits });
  return OF_MOTION.map((id) => RULES[id](job));
};

/** Copies of everything that results are remembered by. */
const cold = (): readonly [FitOut, typeof space] => [structuredClone(solved), structuredClone(space)];

/** One drawer of the large demo with another height of its box each time, so that nothing of it is remembered. */
const DRAWER = 'opening-5' as NodeId;
let turn = 0;
const edited = (): Design => {
  turn += 1;
  return changeFitting(design, DRAWER, (fitting) => {
    if ('boxHeightMm' in fitting) fitting.boxHeightMm = 60 + (turn % 4000) / 100;
  });
};
const solver = createFitOutSolver(catalog);
judged(design, solver(design, limits), space);

const shares = shownShares({}, space);
const movers = allMovers(solved, space);
const poses = moverPoses(movers, shares);
const ground = { fitOut: solved, space, movers, poses };
const held = movers.find(({ origin }) => origin === DRAWER);
if (!held) throw new Error('the large demo has no such drawer');
const pull = {
  pathAt: pullPath(held, poses, [60, 0, 300]),
  project: ([x, y, z]: readonly [number, number, number]): readonly [number, number] => [y - x / 3, z - x / 4],
  startShare: 0,
  startPointer: [0, 300],
} as const;

/** A turn past one obstacle, and the same looked at on samples no further apart than the tolerance. */
const swing: Motion = { kind: 'turn', point: [0, 0, 0], axis: [0, 0, 1], fromRad: 0, toRad: Math.PI / 2 };
const leaf = boxShape({ min: [10, -20, 0], max: [600, 0, 700] });
const post = boxShape({ min: [500, 430, 0], max: [540, 470, 700] });
const onSamples = (): number => {
  const steps = Math.ceil((Math.hypot(600, 20) * (Math.PI / 2)) / TRAVEL_TOLERANCE_MM);
  let least = Infinity;
  for (let i = 0; i <= steps; i++) {
    const at = shapeAt(leaf, motionPose(swing, ((Math.PI / 2) * i) / steps));
    least = Math.min(least, gapBetween(at, post).distance);
  }
  return least;
};

export const rows: readonly BenchRow[] = [
  {
    name: 'motion: opening order, large demo, nothing remembered',
    make: () => () => createFlow({ catalog, solids }).openingOrder(design),
  },
  {
    name: 'motion: all checks of motion, large demo, from cold, with the copy below',
    make: () => () => judged(design, ...cold()),
  },
  { name: 'motion: the copy that makes it cold', make: () => cold },
  {
    name: 'motion: cabinet solved and all checks of motion after one edit of one drawer',
    make: () => () => {
      const next = edited();
      return judged(next, solver(next, limits), space);
    },
  },
  { name: 'motion: taking hold of a drawer: how far it goes', make: () => () => pullRange(held, 0, ground) },
  { name: 'motion: one move of a drawer in the hand', make: () => () => pulledShare(pull, [-60, 250], 0.2) },
  {
    name: 'motion: a turn past a post, certified',
    make: () => () => certifiedTravel(swing, [leaf], [post], 0),
  },
  { name: 'motion: the same by the plain twin, on samples 0.05 mm apart', make: () => onSamples, roundMs: 1 },
  { name: 'motion: checks of 20 drawers in a row', make: () => motionChecks(20) },
  { name: 'motion: checks of 200 drawers in a row', make: () => motionChecks(200) },
  { name: 'motion: is a slide past 40 bodies clear', make: () => () => travelIsClear(way, moving, standing, 0) },
  {
    name: 'motion: the same with its least gap',
    make: () => () => certifiedTravel(way, moving, standing, 0, { limit: 3 }),
  },
];
