// takes: a fitting in an opening
// gives: for every kind of fitting its words and its settings form, each form fetched when it is first shown
// knows: the page
import { type FunctionComponent, lazy } from 'react';
import type { FittingFormProps, FittingView, FittingViews } from './fitting-view.ts';
import { KIND_WORDS } from './kind-words.ts';

export { HardwareField, MaterialField } from './catalog-fields.tsx';
export { KIND_WORDS } from './kind-words.ts';

const form = <F>(fetched: () => Promise<FittingView<F>>): FunctionComponent<FittingFormProps<F>> =>
  lazy(async () => ({ default: (await fetched()).Form }));

/** What the views know of every kind of fitting. A new kind is added here; the compiler lists what it still owes. */
export const FITTING_VIEWS: FittingViews = {
  drawer: { ...KIND_WORDS.drawer, Form: form(async () => (await import('./drawer.tsx')).drawerView) },
  'slide-out': { ...KIND_WORDS['slide-out'], Form: form(async () => (await import('./slide-out.tsx')).slideOutView) },
  'open-storage': {
    ...KIND_WORDS['open-storage'],
    Form: form(async () => (await import('./open-storage.tsx')).openStorageView),
  },
  faceplate: { ...KIND_WORDS.faceplate, Form: form(async () => (await import('./faceplate.tsx')).faceplateView) },
  'apparatus-bracket': {
    ...KIND_WORDS['apparatus-bracket'],
    Form: form(async () => (await import('./apparatus-bracket.tsx')).apparatusBracketView),
  },
  door: { ...KIND_WORDS.door, Form: form(async () => (await import('./door.tsx')).doorView) },
  board: { ...KIND_WORDS.board, Form: form(async () => (await import('./board.tsx')).boardView) },
};
