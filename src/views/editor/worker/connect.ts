import { wrap } from 'comlink';
import type { Engine } from './api.ts';
import type { Connection } from './client.ts';

/** Starts the worker and gives its door. `onDeath` hears when it cannot be loaded or breaks outside of a question. */
export const connectWorker = (onDeath: (why: string) => void): Connection => {
  const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module', name: 'inspection' });
  worker.addEventListener('error', (event) => onDeath(event.message || 'the inspection could not be loaded'));
  worker.addEventListener('messageerror', () => onDeath('an answer of the inspection could not be read'));
  const engine = wrap<Engine>(worker);
  return { engine, end: () => worker.terminate() };
};
