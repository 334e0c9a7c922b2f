import type { CaseId } from '../inspection/index.ts';

/** Who and what is aboard, as the end of a sentence or the head of a column. */
const CASES: { readonly [Id in CaseId]: string } = {
  received: 'as received',
  fitted: 'cabinet and gear, nobody aboard',
  'trays-out': 'parked, every drawer and tray out',
  driver: 'the driver aboard',
  crew: 'full crew',
  'crew-fuel': 'full crew and full tank',
};

const isCase = (id: string): id is CaseId => id in CASES;

/** A loading case by its id; the id itself for one that is not a standard case. */
export const sayCase = (id: string): string => (isCase(id) ? CASES[id] : id);
