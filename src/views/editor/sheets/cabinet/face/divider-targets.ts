import type { Design, Opening } from '../../../../../design/index.ts';
import { type FitOut, gearSize } from '../../../../../fitout/index.ts';
import { heldGear } from '../held-gear.ts';
import type { Face, FaceDivider } from './face-model.ts';
import type { SnapTarget } from './snap-divider.ts';

/** Where a divider would stand in the face for a size of the room before it: across from the left, up from the bottom. */
export const placeOfFirst = (divider: FaceDivider, firstMm: number): number =>
  divider.along === 'columns'
    ? divider.rect.across - divider.firstMm + firstMm
    : divider.rect.up + divider.rect.height + divider.firstMm - firstMm;

/** The size of the room before it when the divider stands at a place of the face. */
export const firstAtPlace = (divider: FaceDivider, place: number): number =>
  divider.along === 'columns'
    ? place - divider.rect.across + divider.firstMm
    : divider.rect.up + divider.rect.height + divider.firstMm - place;

/** Dividers that run the same way elsewhere in the face, so that lines can be made to run through. */
const lineTargets = (face: Face, divider: FaceDivider): readonly SnapTarget[] =>
  face.dividers
    .filter(
      (other) => other.along === divider.along && (other.parent !== divider.parent || other.index !== divider.index),
    )
    .map((other) => {
      const place = other.along === 'columns' ? other.rect.across : other.rect.up + other.rect.height;
      return { firstMm: firstAtPlace(divider, place), says: 'in line' };
    });

interface GearTargets {
  readonly design: Design;
  readonly fitOut: FitOut;
  readonly first: Opening;
  readonly second: Opening;
  /** Hand room above gear, and the gap beside it. */
  readonly spareMm: { readonly up: number; readonly beside: number };
}

/** Sizes at which a room just takes what stands in it. */
const gearTargets = (divider: FaceDivider, { design, first, second, spareMm }: GearTargets): readonly SnapTarget[] => {
  const total = divider.firstMm + divider.secondMm;
  const needs = (opening: Opening): readonly { readonly mm: number; readonly name: string }[] =>
    heldGear(design, opening.id).flatMap((gear) => {
      if (!gear.place) return [];
      const size = gearSize(gear, gear.place);
      const mm =
        divider.along === 'columns'
          ? gear.place.at[0] + size[0] + spareMm.beside
          : gear.place.at[2] + size[2] + spareMm.up;
      return [{ mm, name: gear.name }];
    });
  return [
    ...needs(first).map(({ mm, name }) => ({ firstMm: mm, says: `takes ${name}` })),
    ...needs(second).map(({ mm, name }) => ({ firstMm: total - mm, says: `takes ${name}` })),
  ];
};

/** Least rooms that fittings need, as the fit-out worked them out. */
const leastTargets = (divider: FaceDivider, { fitOut, first, second }: GearTargets): readonly SnapTarget[] => {
  const axis = divider.along === 'columns' ? 0 : 2;
  const total = divider.firstMm + divider.secondMm;
  const least = (opening: Opening): number => fitOut.openings.find((one) => one.id === opening.id)?.least[axis] ?? 0;
  const [a, b] = [least(first), least(second)];
  return [
    ...(a > 0 ? [{ firstMm: a, says: 'least room' }] : []),
    ...(b > 0 ? [{ firstMm: total - b, says: 'least room' }] : []),
  ];
};

/** Everything a divider may rest on, the most wanted first. */
export const dividerTargets = (face: Face, divider: FaceDivider, sources: GearTargets): readonly SnapTarget[] => [
  { firstMm: (divider.firstMm + divider.secondMm) / 2, says: 'equal' },
  ...lineTargets(face, divider),
  ...leastTargets(divider, sources),
  ...gearTargets(divider, sources),
];
