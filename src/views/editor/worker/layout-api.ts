import type { Board, Layout } from '../../../shop/index.ts';

/** One answer of the layout worker: the best so far of every board, in the order asked. */
export interface Improved {
  readonly layouts: readonly Layout[];
  /** False when nothing better exists and the worker has stopped by itself. */
  readonly goesOn: boolean;
}

/** What the page says to the worker: lay these out and keep at it. Ending the worker is the way to stop it. */
export interface ImproveRequest {
  readonly boards: readonly Board[];
  readonly seed: number;
}
