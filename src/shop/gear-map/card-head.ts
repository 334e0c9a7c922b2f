import type { PaperHead } from '../paper/index.ts';
import type { GearMapData } from '../review-copy/review-data.ts';

const CAUTION =
  'Where things live, no approval: close and latch everything before driving; local codes and orders decide.';

/** Head and foot of what hangs in the vehicle. */
export const cardHead = ({ title, customer, signed, units }: GearMapData, paper: string): PaperHead => ({
  title: paper,
  designTitle: title,
  customer,
  revision: signed,
  units,
  caution: CAUTION,
});
