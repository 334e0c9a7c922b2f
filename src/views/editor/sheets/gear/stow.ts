import type { DeepReadonly, Design, Gear, GearPlace, NodeId } from '../../../../design/index.ts';
import { type FitOut, type GearRoom, gearSize } from '../../../../fitout/index.ts';
import { type Block, firstFreeSpot } from '../cabinet/first-free-spot.ts';

type Room = DeepReadonly<GearRoom>;

/** Where gear can stand, with words for a list of choices. */
export interface StowChoice {
  /** `opening/level`. */
  readonly key: string;
  readonly opening: NodeId;
  readonly level: number;
  readonly label: string;
  readonly carcass: string;
}

export const placeKey = (place: Pick<GearPlace, 'opening' | 'level'> | null): string =>
  place ? `${place.opening}/${place.level}` : '';

const levelWords = (rooms: readonly Room[], room: Room): string => {
  const levels = rooms.filter((other) => other.opening === room.opening).length;
  return levels > 1 ? `, level ${room.level + 1}` : '';
};

/** Every room that gear can stand in, in the order of the cabinet. */
export const stowChoices = (fitOut: FitOut, nameOf: (id: string) => string): readonly StowChoice[] => {
  const carcasses = new Map<string, string>(fitOut.carcasses.map((carcass) => [carcass.id, carcass.name]));
  return fitOut.rooms.map((room) => {
    return {
      key: placeKey(room),
      opening: room.opening,
      level: room.level,
      label: `${nameOf(room.opening)}${levelWords(fitOut.rooms, room)}`,
      carcass: carcasses.get(room.carcass) ?? room.carcass,
    };
  });
};

const standingIn = (design: Design, room: Room, without: NodeId): readonly Block[] =>
  design.gear.flatMap((gear) =>
    gear.id !== without && gear.place && gear.place.opening === room.opening && gear.place.level === room.level
      ? [{ from: gear.place.at, size: gearSize(gear, gear.place) }]
      : [],
  );

/**
 * The place of an item in a room, as it lies now: the first free spot, `gapMm` from walls and from what stands there.
 * Where nothing is free it takes the near low left corner, and the inspection says what it meets.
 */
export const placeIn = (design: Design, room: Room, gear: Gear, gapMm: number): GearPlace => {
  const corner: GearPlace = {
    opening: room.opening,
    level: room.level,
    at: [0, 0, 0],
    stance: gear.place?.stance ?? 'upright',
    turnDeg: gear.place?.turnDeg ?? 0,
  };
  const spot = firstFreeSpot(room.size, standingIn(design, room, gear.id), gearSize(gear, corner), gapMm);
  return spot ? { ...corner, at: spot } : corner;
};

/** The room of a choice, or null when the cabinet has changed meanwhile. */
export const roomOf = (fitOut: FitOut, key: string): Room | null =>
  fitOut.rooms.find((room) => placeKey(room) === key) ?? null;
