import type { FittingKind } from '../../../design/index.ts';

interface KindWords {
  readonly name: string;
  /** For a sentence: "fit a drawer". */
  readonly withArticle: string;
  /** What it is for, in a line. */
  readonly purpose: string;
}

/** What each kind of fitting is called, and what it is for. */
export const KIND_WORDS: { readonly [Kind in FittingKind]: KindWords } = {
  drawer: { name: 'drawer', withArticle: 'a drawer', purpose: 'A box on side slides for small and loose gear.' },
  'slide-out': {
    name: 'slide-out',
    withArticle: 'a slide-out',
    purpose: 'A full-depth tray for heavy or long gear, lifted from above.',
  },
  'open-storage': {
    name: 'open storage',
    withArticle: 'open storage',
    purpose: 'A bay with shelves, and a net or a lip that keeps gear in.',
  },
  faceplate: {
    name: 'faceplate',
    withArticle: 'a faceplate',
    purpose: 'A plate with cut-outs for radios, switches and sockets.',
  },
  'apparatus-bracket': {
    name: 'apparatus bracket',
    withArticle: 'an apparatus bracket',
    purpose: 'Holds one breathing set ready to be taken.',
  },
  door: {
    name: 'door',
    withArticle: 'a door',
    purpose: 'A leaf or a roll shutter before a bay, with a latch, and a lock where it is to lock.',
  },
  board: {
    name: 'command board',
    withArticle: 'a command board',
    purpose: 'A writing board that turns out of its bay and stops at stated angles.',
  },
};
