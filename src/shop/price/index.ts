export { type Price, type PriceInput, type PriceMover, priceOf } from './price.ts';
export { priceCsv, priceTable } from './price-csv.ts';
export type { PriceGroup, PriceLine } from './price-line.ts';
