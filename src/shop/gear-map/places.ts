import type { GearMapData, ReviewCarcass, ReviewGear, ReviewOpening } from '../review-copy/review-data.ts';

/** A compartment at the face of a carcass by its number, with all that lives in or behind it; what is first due first. */
export interface GearPlace {
  readonly number: number;
  readonly room: ReviewOpening;
  readonly gear: readonly ReviewGear[];
}

export interface CarcassPlaces {
  readonly carcass: ReviewCarcass;
  readonly places: readonly GearPlace[];
}

/** The opening at the face behind which an opening lies. */
const faceOf = (byId: ReadonlyMap<string, ReviewOpening>, id: string | null): ReviewOpening | null => {
  let at = id === null ? undefined : byId.get(id);
  for (let guard = byId.size; at && at.face === null && guard > 0; guard--)
    at = at.parent === null ? undefined : byId.get(at.parent);
  return at?.face ? at : null;
};

/** Rows that differ by less than this stand side by side for the eye. */
const SAME_ROW_MM = 20;

/** As one reads: from the top, then from the left. */
const inReadingOrder = (a: ReviewOpening, b: ReviewOpening): number => {
  if (a.face === null || b.face === null) return 0;
  const down = b.face.from[1] + b.face.size[1] - (a.face.from[1] + a.face.size[1]);
  return Math.abs(down) > SAME_ROW_MM ? down : a.face.from[0] - b.face.from[0];
};

const firstDueFirst = (a: ReviewGear, b: ReviewGear): number => Number(b.firstDue) - Number(a.firstDue);

/** The opening at the face that each opening lies at or behind; none for what no face shows. */
export const frontOpenings = (data: Pick<GearMapData, 'openings'>): ReadonlyMap<string, string> => {
  const byId = new Map(data.openings.map((opening) => [opening.id, opening]));
  return new Map(
    data.openings.flatMap(({ id }) => {
      const front = faceOf(byId, id);
      return front ? [[id, front.id] as const] : [];
    }),
  );
};

/**
 * Every compartment that is seen at a face, numbered through the whole cabinet so that one number means one place on
 * every paper, with what lives in it.
 */
export const gearPlaces = (data: GearMapData): readonly CarcassPlaces[] => {
  const fronts = frontOpenings(data);
  let number = 0;
  return data.carcasses.map((carcass) => ({
    carcass,
    places: data.openings
      .filter((opening) => opening.carcass === carcass.id && opening.face !== null)
      .sort(inReadingOrder)
      .map((room) => ({
        number: ++number,
        room,
        gear: data.gear
          .filter(({ opening }) => opening !== null && fronts.get(opening) === room.id)
          .sort(firstDueFirst),
      })),
  }));
};

/** Gear without a place, or in a place that no face shows. */
export const homelessGear = (data: GearMapData, carcasses: readonly CarcassPlaces[]): readonly ReviewGear[] => {
  const housed = new Set(carcasses.flatMap(({ places }) => places.flatMap(({ gear }) => gear.map(({ id }) => id))));
  return data.gear.filter(({ id }) => !housed.has(id));
};
