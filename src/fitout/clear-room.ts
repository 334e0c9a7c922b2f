import { type Box, ROUNDING_MM, type Vec3 } from '../base/index.ts';
import { beyondPlane, type HalfSpace } from '../bodies/index.ts';
import { ACROSS, AXES, type Axis, common, DEEP, hasVolume, UP, withSpan } from './axes.ts';
import { wallsOf } from './fittings/room-behind.ts';
import type { Room } from './solved.ts';

/** The corner of a box that lies furthest along a direction. */
export const furthest = ({ min, max }: Box, normal: Vec3): Vec3 => {
  const at = (axis: Axis): number => (normal[axis] > 0 ? max : min)[axis];
  return [at(0), at(1), at(2)];
};

/** The box drawn in along one axis until it lies inside the half space. */
const drawnIn = (box: Box, half: HalfSpace, axis: Axis): Box => {
  const by = beyondPlane(half, furthest(box, half.normal)) / half.normal[axis];
  return by > 0
    ? withSpan(box, axis, box.min[axis], Math.max(box.min[axis], box.max[axis] - by))
    : withSpan(box, axis, Math.min(box.max[axis], box.min[axis] - by), box.max[axis]);
};

const sizeAlong = (box: Box, axis: Axis): number => box.max[axis] - box.min[axis];
const volume = (box: Box): number => AXES.reduce<number>((product, axis) => product * sizeAlong(box, axis), 1);
const short = (box: Box, least: Vec3): number =>
  AXES.reduce<number>((sum, axis) => sum + Math.max(0, least[axis] - sizeAlong(box, axis)), 0);

interface DrawnIn {
  readonly box: Box;
  readonly axis: Axis;
}

const bestOf = (room: Room, options: readonly DrawnIn[], least: Vec3): Box | null => {
  const fitted = room.opening.content.kind === 'fitted';
  const loses = ({ axis }: DrawnIn): number => (fitted && axis === ACROSS ? 1 : 0);
  const [best] = options.toSorted(
    (a, b) => short(a.box, least) - short(b.box, least) || loses(a) - loses(b) || volume(b.box) - volume(a.box),
  );
  return best?.box ?? null;
};

const within = (room: Room, box: Box): Room =>
  box === room.box ? room : { ...room, box, walls: { ...wallsOf(room, box), front: room.walls.front } };

/**
 * The largest box of a room that keeps clear of the chamfers: drawn in from each plane along whichever of its two axes
 * still holds the least size that the content needs. Where both do, a fitting keeps the walls beside it, which hold
 * most of them, and a plain room is as large as it can be.
 */
export const clearRoom = (room: Room, planes: readonly HalfSpace[], least: Vec3): Room => {
  const box = planes.reduce((left, half) => {
    if (beyondPlane(half, furthest(left, half.normal)) <= ROUNDING_MM) return left;
    const options = AXES.filter((axis) => Math.abs(half.normal[axis]) > ROUNDING_MM).map((axis) => ({
      box: drawnIn(left, half, axis),
      axis,
    }));
    return bestOf(room, options, least) ?? left;
  }, room.box);
  return within(room, box);
};

/**
 * The largest box of a room that keeps clear of a wheelhouse and its lining, in the same way: beside it, above it or
 * before it, never behind it, where no hand reaches. A room that lies wholly in it keeps nothing.
 */
export const clearOfWheel = (room: Room, taken: Box, least: Vec3): Room => {
  if (!common(room.box, taken)) return room;
  const options = AXES.flatMap((axis) => [
    { box: withSpan(room.box, axis, room.box.min[axis], taken.min[axis]), axis },
    ...(axis === DEEP ? [] : [{ box: withSpan(room.box, axis, taken.max[axis], room.box.max[axis]), axis }]),
  ]).filter(({ box }) => hasVolume(box));
  const nothing = withSpan(room.box, UP, room.box.max[UP], room.box.max[UP]);
  return within(room, bestOf(room, options, least) ?? nothing);
};
