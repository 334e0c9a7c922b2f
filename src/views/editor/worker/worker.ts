import { expose } from 'comlink';
import wasmAddress from 'manifold-3d/manifold.wasm?url';
import { bad } from '../../../base/index.ts';
import { loadSolids } from '../../../bodies/index.ts';
import { standardCatalog } from '../../../catalog/index.ts';
import type { Design } from '../../../design/index.ts';
import { createFlow, type Flow } from '../../../flow.ts';
import { highsProgram, type Inspection, type ProgramSolver } from '../../../inspection/index.ts';
import type { Answer, Engine, Judgement } from './api.ts';
import { loadSolver } from './load-solver.ts';
import { shareUnchanged } from './share.ts';

let flow: Promise<Flow> | null = null;
let last: Design | null = null;
let given: Judgement['space'] | null = null;

const theFlow = (): Promise<Flow> => {
  flow ??= loadSolids(() => wasmAddress).then((solids) => createFlow({ catalog: standardCatalog(), solids }));
  return flow;
};

/** HiGHS comes only when an arrangement is asked for. */
const programSolver = async (): Promise<ProgramSolver> => highsProgram(await loadSolver());

const answer = async (
  copy: Design,
  edit: number,
  judge: (flow: Flow, design: Design) => Inspection,
): Promise<Answer> => {
  const ready = await theFlow();
  const began = performance.now();
  const design = shareUnchanged(last, copy);
  last = design;
  const space = ready.space(design);
  const known = space === given;
  given = space;
  const inspection = judge(ready, design);
  const order = ready.openingOrder(design);
  return { edit, space: known ? null : space, inspection, order, ms: performance.now() - began };
};

const engine: Engine = {
  start: async () => {
    await theFlow();
  },
  judge: (design, edit) => answer(design, edit, (ready, shared) => ready.inspection(shared)),
  arrange: async (design, wishes) => (await theFlow()).arrangement(design, wishes, await programSolver()),
  carryIn: async (design) => (await theFlow()).carryIn(design),
  largestBox: async (design, spot) => (await theFlow()).largestBox(design, spot) ?? bad('no-space'),
  judgeWithWaysOut: async (design, edit) => {
    const judged = await answer(design, edit, (ready, shared) => ready.inspectionWithWaysOut(shared));
    return { ...judged, carry: (await theFlow()).carryIn(last ?? design) };
  },
};

expose(engine);
