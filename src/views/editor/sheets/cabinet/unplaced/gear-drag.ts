import { createStore, type StoreApi } from 'zustand/vanilla';

/** A piece of gear in the hand: which one, where the pointer is on the page, and the opening under it. */
export interface Carried {
  readonly gear: string;
  readonly x: number;
  readonly y: number;
  readonly over: string | null;
}

/** The hand of the cabinet sheet: empty, or carrying one piece of gear. */
export type GearDrag = StoreApi<{ readonly carried: Carried | null }>;

export const createGearDrag = (): GearDrag => createStore(() => ({ carried: null }));

/** Marks of the elements that gear can be let go over. */
export const DROP_ATTRIBUTE = 'data-takes-gear';

/** The opening under a place of the page that takes gear; 'list' for the list of gear without a place. */
export const takerUnder = (x: number, y: number): string | null => {
  const element = document.elementFromPoint(x, y)?.closest(`[${DROP_ATTRIBUTE}]`);
  return element?.getAttribute(DROP_ATTRIBUTE) ?? null;
};
