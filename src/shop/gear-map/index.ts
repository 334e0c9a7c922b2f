import type { Drawing } from '../drawing/drawing.ts';
import type { GearMapData } from '../review-copy/review-data.ts';
import { compartmentLabelPages } from './compartment-label-pages.ts';
import { crewCardPages } from './crew-card-pages.ts';
import { gearMapPages } from './gear-map-pages.ts';

export { type CarcassPlaces, frontOpenings, type GearPlace, gearPlaces } from './places.ts';
export { compartmentLabelPages, crewCardPages, gearMapPages };

/** A paper that hangs in the vehicle, by the name of its file. */
interface Card {
  readonly name: 'gear-map' | 'crew-card' | 'compartment-labels';
  readonly about: string;
  readonly draw: (data: GearMapData) => readonly Drawing[];
}

export const CARDS: readonly Card[] = [
  { name: 'gear-map', about: 'gear map: a page a face, where everything lives', draw: gearMapPages },
  { name: 'crew-card', about: 'crew card: every item, its place and what is opened first', draw: crewCardPages },
  { name: 'compartment-labels', about: 'a label for each compartment, to cut out', draw: compartmentLabelPages },
];
