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
  'extinguisher-cradle': {
    name: 'extinguisher cradle',
    withArticle: 'an extinguisher cradle',
    purpose: 'Holds one extinguisher upright, its pin to the front.',
  },
  'cylinder-clamp': {
    name: 'cylinder clamp',
    withArticle: 'a cylinder clamp',
    purpose: 'Bands that hold one spare cylinder, upright or lying.',
  },
  'tool-clamp': {
    name: 'tool clamp',
    withArticle: 'a tool clamp',
    purpose: 'Clamps along the shaft of one long tool, its edge covered.',
  },
  'pass-through': {
    name: 'pass-through',
    withArticle: 'a pass-through',
    purpose: 'A framed hole in a side or the back, so that long tools reach into the next room.',
  },
  'charger-bay': {
    name: 'charger bay',
    withArticle: 'a charger bay',
    purpose: 'Chargers for radios, tablets and batteries, with vents for their heat.',
  },
  valuables: {
    name: 'locked slide-out',
    withArticle: 'a locked slide-out',
    purpose: 'A lined, covered box behind a lock for what must not be lost.',
  },
  'map-slot': {
    name: 'map slots',
    withArticle: 'map slots',
    purpose: 'Narrow slots for maps, plans and binders.',
  },
  'tablet-mount': {
    name: 'tablet mount',
    withArticle: 'a tablet mount',
    purpose: 'A screen on an arm that swings out and turns to whoever reads it.',
  },
  trim: {
    name: 'drink and board trim',
    withArticle: 'a drink and board trim',
    purpose: 'A ledge that keeps drinks upright, with a slot and a clip for boards.',
  },
};
