import type { Box } from '../../base/index.ts';
import { sameLength } from '../../base/index.ts';
import type { Opening } from '../../design/index.ts';
import { ACROSS, type Axis, DEEP, UP } from '../axes.ts';
import type { CarcassContext } from '../context.ts';
import type { GearRoom } from '../parts.ts';
import type { Room, Side, Walls } from '../solved.ts';

const PLANES: readonly (readonly [Side, Axis, 'min' | 'max'])[] = [
  ['left', ACROSS, 'min'],
  ['right', ACROSS, 'max'],
  ['back', DEEP, 'max'],
  ['bottom', UP, 'min'],
  ['top', UP, 'max'],
];

/** The walls that a smaller box in the room still stands against; none where nothing may be joined to them. */
export const wallsOf = (room: Room, box: Box): Walls => {
  const kept = PLANES.map(([side, axis, end]) => {
    const touches = room.fits && sameLength(box[end][axis], room.box[end][axis]);
    return [side, touches ? room.walls[side] : null] as const;
  });
  return { front: null, ...Object.fromEntries(kept) } as Walls;
};

/**
 * The room behind something that closes the face: it stays with the carcass, its dividers are of the carcass material,
 * and they join what it still stands against.
 */
export const roomBehind = (
  room: Room,
  opening: Opening,
  box: Box,
  keeps: GearRoom['keeps'],
  context: CarcassContext,
): Room => {
  const { material } = context;
  const same = room.material === material;
  return {
    ...room,
    opening,
    parent: room.opening.id,
    depth: room.depth + 1,
    box,
    walls: wallsOf(room, box),
    assembly: room.fits ? room.assembly : `${room.opening.id}/loose`,
    material,
    housing: same ? room.housing : context.rule('dado-depth-share') * material.thicknessMm,
    keeps,
  };
};
