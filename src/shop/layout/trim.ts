import { type LayoutJob, NO_TRIM, type StockSheet, type Trim } from './job.ts';

/** The trim of one sheet: its own, none for an offcut in hand, else that of the job. */
export const trimOf = (job: LayoutJob, stock: StockSheet): Trim =>
  stock.trim ?? (stock.offcut === true ? NO_TRIM : job.trim);
