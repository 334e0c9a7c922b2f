// takes: a fitting in an opening
// gives: for every kind of fitting its words and its settings form
// knows: the page
import { apparatusBracketView } from './apparatus-bracket.tsx';
import { boardView } from './board.tsx';
import { doorView } from './door.tsx';
import { drawerView } from './drawer.tsx';
import { faceplateView } from './faceplate.tsx';
import type { FittingViews } from './fitting-view.ts';
import { openStorageView } from './open-storage.tsx';
import { slideOutView } from './slide-out.tsx';

export { HardwareField, MaterialField } from './catalog-fields.tsx';
export { KIND_WORDS } from './kind-words.ts';

/** What the views know of every kind of fitting. A new kind is added here; the compiler lists what it still owes. */
export const FITTING_VIEWS: FittingViews = {
  drawer: drawerView,
  'slide-out': slideOutView,
  'open-storage': openStorageView,
  faceplate: faceplateView,
  'apparatus-bracket': apparatusBracketView,
  door: doorView,
  board: boardView,
};
