/** What a sum is spent on, in the order of the price. */
export const PRICE_GROUPS = [
  'sheets',
  'hardware',
  'mark-up',
  'shop hours',
  'electrical hours',
  'office hours',
] as const;
export type PriceGroup = (typeof PRICE_GROUPS)[number];

/** One line of the price: so many of something at so much each, with the place where both can be looked up. */
export interface PriceLine {
  readonly group: PriceGroup;
  readonly what: string;
  readonly count: number;
  /** What the count counts: `sheet`, `part`, `m²`. */
  readonly unit: string;
  /** Work: hours for one, and for all; null for what is bought. */
  readonly hoursEach: number | null;
  readonly hours: number | null;
  /** Price of one, or of one hour of work. */
  readonly each: number;
  /** To the cent, so that the lines add up to the total as printed. */
  readonly amount: number;
  /** Where count and figures come from: a layout, the pick list, a house rule by its id. */
  readonly from: string;
}
