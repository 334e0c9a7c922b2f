import type { FitOut } from '../../fitout/index.ts';
import { sayLength } from '../../says/index.ts';
import { fetchText } from '../papers/hardware-paper.ts';
import { countText, moneyText } from '../papers/price-paper.ts';
import { type ShopWorkInput, shopWork } from '../shop-work.ts';

/** What of the shop may go into a copy, each only when its maker ticks it. */
export const SHOP_EXTRAS = ['cut-list', 'hardware', 'price'] as const;
export type ShopExtra = (typeof SHOP_EXTRAS)[number];

export interface ReviewShop {
  readonly parts: readonly {
    readonly mark: string;
    readonly name: string;
    readonly quantity: number;
    readonly material: string;
    readonly size: string;
  }[];
  readonly hardware: readonly { readonly name: string; readonly count: string; readonly where: string }[];
  readonly price: {
    readonly rows: readonly { readonly what: string; readonly amount: string }[];
    readonly total: string;
    /** What it does not hold, and for how long it stands. */
    readonly notes: readonly string[];
  } | null;
}

type Work = Omit<ShopWorkInput, 'order'> & { readonly fitout: FitOut };

const NO_ORDER = { rows: [], gear: [] } as const;

/** The ticked lists in words; those that were not ticked are empty. */
export const reviewShop = (input: Work, wanted: readonly ShopExtra[]): ReviewShop => {
  const { drawings, hardware, price } = shopWork({ ...input, order: NO_ORDER });
  const { units } = input.design;
  return {
    parts: wanted.includes('cut-list')
      ? drawings.rows.map((row) => ({
          mark: row.mark,
          name: row.name,
          quantity: row.quantity,
          material: row.materialName,
          size: `${sayLength(row.cutLength, units)} × ${sayLength(row.cutWidth, units)}`,
        }))
      : [],
    hardware: wanted.includes('hardware')
      ? hardware.map((row) => ({ name: row.name, count: fetchText(row), where: row.where }))
      : [],
    price: wanted.includes('price')
      ? {
          rows: price.groups.map(({ group, hours, amount }) => ({
            what: hours === null ? group : `${group}, ${countText(hours)} h`,
            amount: moneyText(amount),
          })),
          total: `${moneyText(price.total)} ± ${moneyText(price.sigma)}`,
          notes: [`This price stands for ${price.validDays} days.`, ...price.missing],
        }
      : null,
  };
};
