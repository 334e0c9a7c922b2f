import { wrap } from 'comlink';
import type { Design } from '../../../design/index.ts';
import type { Answer, Engine, EngineWorker } from './api.ts';
import type { Connection } from './client.ts';
import { createReceiver, createSender } from './difference.ts';

/** The worker's door as the page knows it: keeps what crossed last, both ways, for as long as the worker lives. */
export const engineOf = (worker: EngineWorker): Engine => {
  const designs = createSender<Design>();
  const answers = createReceiver<Answer>();
  return {
    start: () => worker.start(),
    judge: async (design, edit) => answers.hear(await worker.judge(designs.tell(design), edit)),
    judgeWithWaysOut: async (design, edit) => answers.hear(await worker.judgeWithWaysOut(designs.tell(design), edit)),
    carryIn: (design) => worker.carryIn(design),
    largestBox: (design, spot) => worker.largestBox(design, spot),
    arrange: (design, wishes) => worker.arrange(design, wishes),
  };
};

/** Starts the worker and gives its door. `onDeath` hears when it cannot be loaded or breaks outside of a question. */
export const connectWorker = (onDeath: (why: string) => void): Connection => {
  const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module', name: 'inspection' });
  worker.addEventListener('error', (event) => onDeath(event.message || 'the inspection could not be loaded'));
  worker.addEventListener('messageerror', () => onDeath('an answer of the inspection could not be read'));
  return { engine: engineOf(wrap<EngineWorker>(worker)), end: () => worker.terminate() };
};
