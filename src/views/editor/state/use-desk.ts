import { createContext, useContext } from 'react';
import { useStore } from 'zustand';
import type { Desk, DeskStore } from './desk.ts';

export const DeskContext = createContext<DeskStore | null>(null);

/** The desk of the surrounding window. Throws outside of one. */
export const useDeskStore = (): DeskStore => {
  const store = useContext(DeskContext);
  if (!store) throw new Error('useDeskStore: no window around this component');
  return store;
};

export const useDesk = <T>(pick: (desk: Desk) => T): T => useStore(useDeskStore(), pick);
