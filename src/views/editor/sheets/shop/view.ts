import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';

export const SHOP_PARTS = ['cut list', 'sheet layouts', 'drawings', 'hardware', 'price', 'masses', 'papers'] as const;
export type ShopPart = (typeof SHOP_PARTS)[number];

/** The paper that is looked at first. */
export const FIRST_PAPER = 'first-page';

/** Which list of the packet is open: kept while a person looks at other steps. */
const view = createStore<{ readonly part: ShopPart; readonly paper: string }>()(() => ({
  part: 'cut list',
  paper: FIRST_PAPER,
}));

export const useShopPart = (): ShopPart => useStore(view, (state) => state.part);
export const showShopPart = (part: ShopPart): void => view.setState({ part });

/** Which paper of the packet is looked at. */
export const useShopPaper = (): string => useStore(view, (state) => state.paper);
export const showShopPaper = (paper: string): void => view.setState({ paper });
