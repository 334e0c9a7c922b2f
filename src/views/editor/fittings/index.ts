// takes: a fitting in an opening
// gives: for every kind of fitting its words and its settings form, each form fetched when it is first shown
// knows: the page
import { type FunctionComponent, lazy } from 'react';
import type { FittingFormProps, FittingView, FittingViews } from './fitting-view.ts';
import { KIND_WORDS } from './kind-words.ts';

export { HardwareField, MaterialField } from './catalog-fields.tsx';

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
  'extinguisher-cradle': {
    ...KIND_WORDS['extinguisher-cradle'],
    Form: form(async () => (await import('./extinguisher-cradle.tsx')).extinguisherCradleView),
  },
  'cylinder-clamp': {
    ...KIND_WORDS['cylinder-clamp'],
    Form: form(async () => (await import('./cylinder-clamp.tsx')).cylinderClampView),
  },
  'tool-clamp': {
    ...KIND_WORDS['tool-clamp'],
    Form: form(async () => (await import('./tool-clamp.tsx')).toolClampView),
  },
  'pass-through': {
    ...KIND_WORDS['pass-through'],
    Form: form(async () => (await import('./pass-through.tsx')).passThroughView),
  },
  'charger-bay': {
    ...KIND_WORDS['charger-bay'],
    Form: form(async () => (await import('./charger-bay.tsx')).chargerBayView),
  },
  valuables: { ...KIND_WORDS.valuables, Form: form(async () => (await import('./valuables.tsx')).valuablesView) },
  'map-slot': { ...KIND_WORDS['map-slot'], Form: form(async () => (await import('./map-slot.tsx')).mapSlotView) },
  'tablet-mount': {
    ...KIND_WORDS['tablet-mount'],
    Form: form(async () => (await import('./tablet-mount.tsx')).tabletMountView),
  },
  trim: { ...KIND_WORDS.trim, Form: form(async () => (await import('./trim.tsx')).trimView) },
};
