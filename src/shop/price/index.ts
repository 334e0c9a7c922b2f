export { type Price, type PriceInput, type PriceMover, priceOf } from './price.ts';
export { priceCsv, priceTable } from './price-csv.ts';
export { PRICE_GROUPS, type PriceGroup, type PriceLine } from './price-line.ts';
