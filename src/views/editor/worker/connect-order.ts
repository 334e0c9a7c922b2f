import { proxy, wrap } from 'comlink';
import type { Design } from '../../../design/index.ts';
import type { FitOut } from '../../../fitout/index.ts';
import type { Drawing } from '../../../shop/index.ts';
import type { OrderDesk } from './order-api.ts';

/** Fit-outs are values: what was drawn of one in a design holds for as long as anyone has both. */
const known = new WeakMap<FitOut, { readonly design: Design; readonly sheets: readonly Drawing[] }>();

interface Wanted {
  readonly design: Design;
  readonly fitout: FitOut;
}

export const knownOrder = ({ design, fitout }: Wanted): readonly Drawing[] | null => {
  const found = known.get(fitout);
  return found?.design === design ? found.sheets : null;
};

/** Draws the order of assembly in a worker of its own; ending it is the way to stop. Rejects with AbortError when stopped. */
export const drawOrder = (
  wanted: Wanted,
  tell: (step: number, of: number) => void,
  signal: AbortSignal,
): Promise<readonly Drawing[]> => {
  const before = knownOrder(wanted);
  if (before !== null) return Promise.resolve(before);
  return new Promise((resolve, reject) => {
    signal.throwIfAborted();
    const worker = new Worker(new URL('./order-worker.ts', import.meta.url), { type: 'module', name: 'order' });
    const end = (): void => {
      signal.removeEventListener('abort', stop);
      worker.terminate();
    };
    const stop = (): void => {
      end();
      reject(signal.reason);
    };
    const broke = (fault: unknown): void => {
      end();
      reject(fault instanceof Error ? fault : new Error('the part of the program that draws it did not start'));
    };
    signal.addEventListener('abort', stop);
    worker.addEventListener('error', broke);
    const said = (step: number, of: number): void => {
      if (!signal.aborted) tell(step, of);
    };
    wrap<OrderDesk>(worker)
      .sheets(wanted.design, wanted.fitout, proxy(said))
      .then((sheets) => {
        const drawn = sheets ?? [];
        known.set(wanted.fitout, { design: wanted.design, sheets: drawn });
        end();
        resolve(drawn);
      }, broke);
  });
};
