import type { Vec3 } from '../../../../base/index.ts';
import type { DeepReadonly, Design, Gear, GearPlace, NodeId } from '../../../../design/index.ts';
import { type FitOut, type GearRoom, gearSize } from '../../../../fitout/index.ts';

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

interface Block {
  readonly from: Vec3;
  readonly size: Vec3;
}

const meet = (a: Block, b: Block): boolean =>
  ([0, 1, 2] as const).every((i) => a.from[i] < b.from[i] + b.size[i] && b.from[i] < a.from[i] + a.size[i]);

const blocksIn = (design: Design, room: Room, without: NodeId): readonly Block[] =>
  design.gear.flatMap((gear) =>
    gear.id !== without && gear.place && gear.place.opening === room.opening && gear.place.level === room.level
      ? [{ from: gear.place.at, size: gearSize(gear, gear.place) }]
      : [],
  );

/**
 * The place of an item in a room: as far to the left at the face as nothing else stands, then behind what stands
 * there. Where nothing is free it takes the near low left corner, and the inspection says what it meets.
 */
export const placeIn = (design: Design, room: Room, gear: Gear): GearPlace => {
  const start: GearPlace = {
    opening: room.opening,
    level: room.level,
    at: [0, 0, 0],
    stance: gear.place?.stance ?? 'upright',
    turnDeg: gear.place?.turnDeg ?? 0,
  };
  const size = gearSize(gear, start);
  const others = blocksIn(design, room, gear.id);
  const acrosses = [0, ...others.map((other) => other.from[0] + other.size[0])].toSorted((a, b) => a - b);
  const deeps = [0, ...others.map((other) => other.from[1] + other.size[1])].toSorted((a, b) => a - b);
  for (const deep of deeps)
    for (const across of acrosses) {
      const block: Block = { from: [across, deep, 0], size };
      const inside = across + size[0] <= room.size[0] && deep + size[1] <= room.size[1];
      if (inside && !others.some((other) => meet(block, other))) return { ...start, at: [across, deep, 0] };
    }
  return start;
};

/** The room of a choice, or null when the cabinet has changed meanwhile. */
export const roomOf = (fitOut: FitOut, key: string): Room | null =>
  fitOut.rooms.find((room) => placeKey(room) === key) ?? null;
