import { useEffect, useMemo } from 'react';
import { type Board, type SheetLayouts, sheetJobs } from '../../../../../shop/index.ts';
import type { ShopLists } from '../shop-lists.ts';
import { jobsKey, keepImproving, layOut, layoutsFor, stopImproving, useLayouts } from './layouts-store.ts';

export interface SheetLayoutsInUse {
  readonly boards: readonly Board[];
  /** Null for the moment until the first layouts are there. */
  readonly layouts: SheetLayouts | null;
  readonly shown: number;
  readonly improving: boolean;
  readonly trouble: string | null;
  readonly improve: () => void;
  readonly stop: () => void;
}

/** After the window has drawn itself; browsers that cannot tell when they rest get a short wait. */
const whenIdle = (run: () => void): (() => void) => {
  if (typeof requestIdleCallback !== 'function') {
    const timer = setTimeout(run, 0);
    return () => clearTimeout(timer);
  }
  const waiting = requestIdleCallback(run, { timeout: 500 });
  return () => cancelIdleCallback(waiting);
};

/** Layouts of the present design: the first ones at once, better ones for as long as a person lets the worker look. */
export const useSheetLayouts = (lists: ShopLists): SheetLayoutsInUse => {
  const { rows } = lists.drawings;
  const { catalog, rules, design } = lists.input;
  const { stock } = design;
  const state = useLayouts();
  const boards = useMemo(() => sheetJobs(rows, catalog, rules, stock), [rows, catalog, rules, stock]);
  const key = useMemo(() => jobsKey(boards), [boards]);
  useEffect(() => whenIdle(() => layOut(boards, key)), [boards, key]);
  return {
    boards,
    layouts: state.of === key ? layoutsFor(key) : null,
    shown: state.shown,
    improving: state.improving,
    trouble: state.trouble,
    improve: () => keepImproving(boards, key),
    stop: stopImproving,
  };
};
