import { useEffect, useReducer, useState } from 'react';
import type { DrawingsInput } from '../../../../../shop/index.ts';
import { drawOrder, knownOrder } from '../../../worker/connect-order.ts';

/** How far the drawing of the assembly order is: nobody asked, under way, there, stopped by the person, or failed. */
export type OrderState =
  | { readonly is: 'idle' | 'there' | 'stopped' }
  | { readonly is: 'drawing'; readonly says: string; readonly stop: () => void }
  | { readonly is: 'failed'; readonly says: string };

export const orderWords = (step: number, of: number): string =>
  of === 0 ? 'Working out the order of assembly…' : `Drawing the order of assembly: step ${step} of ${of}…`;

/** Sees to it that the order of assembly is drawn once it is wanted; the second value draws it again after a stop. */
export const useOrder = (input: DrawingsInput, wanted: boolean): readonly [OrderState, () => void] => {
  const [state, setState] = useState<OrderState>({ is: 'idle' });
  const [attempt, again] = useReducer((count: number) => count + 1, 0);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a further attempt is what draws it again
  useEffect(() => {
    if (!wanted) return undefined;
    if (knownOrder(input) !== null) {
      setState({ is: 'there' });
      return undefined;
    }
    const stopper = new AbortController();
    const stop = (): void => {
      stopper.abort();
      setState({ is: 'stopped' });
    };
    const say = (step: number, of: number): void => setState({ is: 'drawing', says: orderWords(step, of), stop });
    say(0, 0);
    drawOrder(input, say, stopper.signal).then(
      () => setState({ is: 'there' }),
      (fault: unknown) => {
        if (!stopper.signal.aborted)
          setState({ is: 'failed', says: fault instanceof Error ? fault.message : String(fault) });
      },
    );
    return () => stopper.abort();
  }, [input, wanted, attempt]);
  return [wanted && knownOrder(input) !== null ? { is: 'there' } : state, again];
};
