import type { Vec3 } from '../../../../base/index.ts';
import { type Design, type Gear, type GearPlace, openingsFrom } from '../../../../design/index.ts';
import { type FitOut, gearSize } from '../../../../fitout/index.ts';
import { type Block, firstFreeSpot } from './first-free-spot.ts';

type Room = FitOut['rooms'][number];

export interface Stowed {
  readonly place: GearPlace;
  /** False where nothing was free: it then stands at the near low left corner, and the inspection says what it meets. */
  readonly free: boolean;
}

/** The rooms that gear can stand in when it is let go over an opening: its own and those inside it, in order. */
export const roomsIn = (design: Design, fitOut: FitOut, openingId: string): readonly Room[] => {
  const carcass = design.cabinet.carcasses.find((one) => openingsFrom(one.opening).some((o) => o.id === openingId));
  const from = carcass && openingsFrom(carcass.opening).find((opening) => opening.id === openingId);
  const inside = new Set<string>(from ? openingsFrom(from).map((opening) => opening.id) : []);
  return fitOut.rooms.filter((room) => inside.has(room.opening));
};

const standingIn = (fitOut: FitOut, room: Room, but: string): readonly Block[] =>
  fitOut.gear
    .filter((gear) => gear.opening === room.opening && gear.level === room.level && gear.gear !== but)
    .map(({ from, size }) => ({ from, size }));

type Pose = Pick<GearPlace, 'stance' | 'turnDeg'>;

/** Ways to lay an item, the present one first; what must stay upright is only turned. */
const posesToTry = (gear: Gear): readonly Pose[] => {
  const stance = gear.place?.stance ?? 'upright';
  const turn = gear.place?.turnDeg ?? 0;
  const turned = turn === 90 || turn === 270 ? 0 : 90;
  const upright: readonly Pose[] = [
    { stance, turnDeg: turn },
    { stance, turnDeg: turned },
  ];
  if (gear.needs.includes('upright')) return upright;
  const others = (['upright', 'on-side', 'on-back'] as const).filter((other) => other !== stance);
  return [
    ...upright,
    ...others.flatMap((other) => [0, 90].map((t) => ({ stance: other, turnDeg: t === 0 ? 0 : 90 }) as const)),
  ];
};

/**
 * Where an item goes that is let go over an opening: the first free spot of its first room that has one, as it lies
 * now or, failing that, turned or laid down where its needs allow. Null when no gear can stand in the opening.
 */
export const stowIn = (design: Design, fitOut: FitOut, gear: Gear, openingId: string, gapMm: number): Stowed | null => {
  const rooms = roomsIn(design, fitOut, openingId);
  const [first] = rooms;
  if (!first) return null;
  const placeIn = (room: Room, pose: Pose, at: Vec3): GearPlace => ({
    opening: room.opening,
    level: room.level,
    at,
    ...pose,
  });
  for (const pose of posesToTry(gear))
    for (const room of rooms) {
      const size = gearSize(gear, placeIn(room, pose, [0, 0, 0]));
      const at = firstFreeSpot(room.size, standingIn(fitOut, room, gear.id), size, gapMm);
      if (at) return { place: placeIn(room, pose, at), free: true };
    }
  const [pose] = posesToTry(gear);
  return { place: placeIn(first, pose ?? { stance: 'upright', turnDeg: 0 }, [0, 0, 0]), free: false };
};

/** The name of an opening for people: its own, or what it holds. */
export const openingName = (design: Design, id: string): string => {
  const found = design.cabinet.carcasses
    .flatMap((carcass) => openingsFrom(carcass.opening))
    .find((opening) => opening.id === id);
  return found?.name || id.replace('-', ' ');
};
