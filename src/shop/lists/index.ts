// Lists that come in as CSV text: parts and sheets for any layout, sheets and offcuts for a design.
export { lengthFrom } from './cells.ts';
export { readDesignStock } from './design-stock.ts';
export { readPartsList, readStockList } from './layout-lists.ts';
export { stockLeft, stockLeftCsv, stockUsed } from './stock-left.ts';
