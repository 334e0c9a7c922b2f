import { type Carcass, type Design, type NodeId, openingsFrom } from '../../../../../design/index.ts';
import type { FaceRoom } from './face-model.ts';

/** The room of the face in which each opening lies: itself, or what is fitted in it. Other openings have none. */
export const roomsAround = (carcass: Carcass, rooms: readonly FaceRoom[]): ReadonlyMap<string, NodeId> => {
  const openings = new Map(openingsFrom(carcass.opening).map((opening) => [opening.id, opening]));
  return new Map(
    rooms.flatMap(({ id }) => {
      const opening = openings.get(id);
      return opening ? openingsFrom(opening).map((inside) => [inside.id as string, id] as const) : [];
    }),
  );
};

/** What the gear in a room comes to. */
export interface RoomLoad {
  readonly count: number;
  readonly massKg: number;
}

const EMPTY: RoomLoad = { count: 0, massKg: 0 };

/** The load of each room that holds gear. */
export const roomLoads = (gear: Design['gear'], roomOf: ReadonlyMap<string, NodeId>): ReadonlyMap<string, RoomLoad> => {
  const loads = new Map<string, RoomLoad>();
  for (const { place, massKg } of gear) {
    const room = place ? roomOf.get(place.opening) : undefined;
    if (room === undefined) continue;
    const before = loads.get(room) ?? EMPTY;
    loads.set(room, { count: before.count + 1, massKg: before.massKg + massKg });
  }
  return loads;
};
