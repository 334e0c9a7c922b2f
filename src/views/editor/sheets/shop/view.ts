import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';

export const SHOP_PARTS = ['cut list', 'sheet layouts', 'drawings', 'hardware', 'masses'] as const;
export type ShopPart = (typeof SHOP_PARTS)[number];

/** Which list of the packet is open: kept while a person looks at other steps. */
const view = createStore<{ readonly part: ShopPart }>()(() => ({ part: 'cut list' }));

export const useShopPart = (): ShopPart => useStore(view, (state) => state.part);
export const showShopPart = (part: ShopPart): void => view.setState({ part });
