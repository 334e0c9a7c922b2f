import { type Figure, figuresOf } from '../revision/index.ts';
import { type ShopWorkInput, shopWork } from './shop-work.ts';

/** Neither sheets nor price ask what is opened first, which takes a while to work out. */
const NO_ORDER = { rows: [], gear: [] } as const;

/** Masses, axles, margins, sheets and price of one design, for comparing it with another. Lays the sheets out. */
export const designFigures = (input: Omit<ShopWorkInput, 'space' | 'order'>): readonly Figure[] => {
  const { layouts, price } = shopWork({ ...input, space: null, order: NO_ORDER });
  return figuresOf({
    fitout: input.fitout,
    inspection: input.inspection,
    sheets: layouts.sheets,
    price: price.total,
  });
};
