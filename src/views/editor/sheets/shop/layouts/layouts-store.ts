import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import {
  type Board,
  boardLayout,
  layoutSheets,
  type SheetLayouts,
  STANDARD_BUDGET,
  sheetLayoutsOf,
} from '../../../../../shop/index.ts';
import type { Improved, ImproveRequest } from '../../../worker/layout-api.ts';

interface LayoutsState {
  /** Says what the layouts are of: equal jobs have equal layouts. Empty before the first. */
  readonly of: string;
  readonly layouts: SheetLayouts | null;
  readonly improving: boolean;
  /** What the worker could not do, in words; null when all is well. */
  readonly trouble: string | null;
  /** The sheet that is looked at, counted from 0 over all boards. */
  readonly shown: number;
}

const store = createStore<LayoutsState>()(() => ({ of: '', layouts: null, improving: false, trouble: null, shown: 0 }));
let worker: Worker | null = null;

export const useLayouts = (): LayoutsState => useStore(store);
export const showSheet = (shown: number): void => store.setState({ shown });

/** What makes two sets of jobs the same for the saw. Moving the cabinet changes no part: improved layouts stay. */
export const jobsKey = (boards: readonly Board[]): string => JSON.stringify(boards);

/** Layouts of these jobs if they are there; null while they are still to be made. */
export const layoutsFor = (key: string): SheetLayouts | null => {
  const { of, layouts } = store.getState();
  return of === key ? layouts : null;
};

export const stopImproving = (): void => {
  worker?.terminate();
  worker = null;
  store.setState({ improving: false });
};

/** The first layouts, as the packet would make them. */
export const layOut = (boards: readonly Board[], key: string): void => {
  if (store.getState().of === key) return;
  stopImproving();
  const layouts = layoutSheets(boards, STANDARD_BUDGET);
  const shown = Math.min(store.getState().shown, Math.max(0, layouts.sheets + layouts.offcuts - 1));
  store.setState({ of: key, layouts, trouble: null, shown });
};

/** Parts placed count most, then price, then the worth of kept offcuts: an answer of the worker that is worse than what is shown is not taken. */
const isBetter = (now: SheetLayouts, before: SheetLayouts): boolean => {
  const kept = ({ boards }: SheetLayouts): number => boards.reduce((sum, { layout }) => sum + layout.keptValue, 0);
  if (now.unplaced !== before.unplaced) return now.unplaced < before.unplaced;
  if (now.price !== before.price) return now.price < before.price;
  if (kept(now) !== kept(before)) return kept(now) > kept(before);
  // The same layouts, known to be nearer to the best there can be.
  return now.boards.some(({ proof }, i) => proof !== before.boards[i]?.proof);
};

/** Keeps looking for better layouts in a worker until stopped, or until none exist. */
export const keepImproving = (boards: readonly Board[], key: string): void => {
  stopImproving();
  const mine = new Worker(new URL('../../../worker/layout-worker.ts', import.meta.url), {
    type: 'module',
    name: 'sheet layouts',
  });
  worker = mine;
  store.setState({ improving: true, trouble: null });
  mine.addEventListener('message', ({ data }: MessageEvent<Improved>) => {
    const { of, layouts } = store.getState();
    if (worker !== mine || of !== key || layouts === null) return;
    const found = sheetLayoutsOf(
      boards.flatMap((board, i) => {
        const layout = data.layouts[i];
        return layout === undefined ? [] : [boardLayout(board, layout)];
      }),
    );
    if (isBetter(found, layouts))
      store.setState({
        layouts: found,
        shown: Math.min(store.getState().shown, Math.max(0, found.sheets + found.offcuts - 1)),
      });
    if (!data.goesOn) stopImproving();
  });
  mine.addEventListener('error', (event) => {
    if (worker !== mine) return;
    stopImproving();
    store.setState({ trouble: event.message || 'the layout worker could not be loaded' });
  });
  const request: ImproveRequest = { boards, seed: STANDARD_BUDGET.seed };
  mine.postMessage(request);
};
