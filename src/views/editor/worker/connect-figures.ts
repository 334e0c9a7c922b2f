import { wrap } from 'comlink';
import type { Design } from '../../../design/index.ts';
import type { Figure } from '../../../revision/index.ts';
import type { FiguresDesk } from './figures-api.ts';

/** Designs are values: what was reckoned of one holds for as long as anyone has it. */
const known = new WeakMap<Design, readonly Figure[]>();

export const knownFigures = (design: Design): readonly Figure[] | null => known.get(design) ?? null;

/** Reckons the figures of the designs one after the other in a worker of its own; ending it is the way to stop. */
export const reckonFigures = (designs: readonly Design[], onDone: () => void, onTrouble: () => void): (() => void) => {
  const worker = new Worker(new URL('./figures-worker.ts', import.meta.url), { type: 'module', name: 'figures' });
  let live = true;
  const end = (): void => {
    live = false;
    worker.terminate();
  };
  const broke = (): void => {
    if (!live) return;
    end();
    onTrouble();
  };
  worker.addEventListener('error', broke);
  const desk = wrap<FiguresDesk>(worker);
  const work = async (): Promise<void> => {
    for (const design of designs) {
      if (known.has(design)) continue;
      known.set(design, await desk.figures(design));
    }
    if (!live) return;
    end();
    onDone();
  };
  work().catch(broke);
  return end;
};
