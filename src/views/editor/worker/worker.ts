import { expose } from 'comlink';
import wasmAddress from 'manifold-3d/manifold.wasm?url';
import { bad } from '../../../base/index.ts';
import { loadSolids } from '../../../bodies/index.ts';
import { standardCatalog } from '../../../catalog/index.ts';
import type { Design } from '../../../design/index.ts';
import { createFlow, type Flow } from '../../../flow.ts';
import { highsProgram, type Inspection, type ProgramSolver } from '../../../inspection/index.ts';
import type { Answer, EngineWorker, Judgement } from './api.ts';
import { createReceiver, createSender } from './difference.ts';
import { loadSolver } from './load-solver.ts';

let flow: Promise<Flow> | null = null;
const designs = createReceiver<Design>();
const answers = createSender<Answer>();
let given: Judgement['space'] | null = null;

const theFlow = (): Promise<Flow> => {
  flow ??= loadSolids(() => wasmAddress).then((solids) => createFlow({ catalog: standardCatalog(), solids }));
  return flow;
};

/** HiGHS comes only when an arrangement is asked for. */
const programSolver = async (): Promise<ProgramSolver> => highsProgram(await loadSolver());

const answer = async (
  design: Design,
  edit: number,
  judge: (flow: Flow, design: Design) => Inspection,
): Promise<Answer> => {
  const ready = await theFlow();
  const began = performance.now();
  const space = ready.space(design);
  const known = space === given;
  given = space;
  const inspection = judge(ready, design);
  const order = ready.openingOrder(design);
  return { edit, space: known ? null : space, inspection, order, ms: performance.now() - began };
};

const engine: EngineWorker = {
  start: async () => {
    await theFlow();
  },
  judge: async (change, edit) =>
    answers.tell(await answer(designs.hear(change), edit, (ready, design) => ready.inspection(design))),
  arrange: async (design, wishes) => (await theFlow()).arrangement(design, wishes, await programSolver()),
  carryIn: async (design) => (await theFlow()).carryIn(design),
  largestBox: async (design, spot) => (await theFlow()).largestBox(design, spot) ?? bad('no-space'),
  judgeWithWaysOut: async (change, edit) => {
    const design = designs.hear(change);
    const judged = await answer(design, edit, (ready, heard) => ready.inspectionWithWaysOut(heard));
    return answers.tell({ ...judged, carry: (await theFlow()).carryIn(design) });
  },
};

expose(engine);
