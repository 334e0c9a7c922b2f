import { type Box, boxSize, ROUNDING_MM, shift, type Vec3 } from '../base/index.ts';
import type { HalfSpace } from '../bodies/index.ts';
import { AXES, type Axis, withAxis } from './axes.ts';
import { clearOfWheel, clearRoom } from './clear-room.ts';
import type { CarcassContext } from './context.ts';
import { divide } from './divide.ts';
import { solverOf } from './fittings/index.ts';
import type { FitProblem, SolvedOpening } from './parts.ts';
import { tooSmall } from './problem.ts';
import { type FittingParts, NO_PARTS, type Room, together } from './solved.ts';

export interface SolvedRooms extends Omit<FittingParts, 'inner'> {
  /** Every opening, each before what it holds. */
  readonly openings: readonly SolvedOpening[];
}

const emptyRoom = (room: Room, context: CarcassContext): FittingParts => ({
  ...NO_PARTS,
  rooms: [
    {
      opening: room.opening.id,
      level: 0,
      carcass: context.carcass.id,
      mover: room.mover,
      pose: shift(room.box.min),
      size: boxSize(room.box),
      keeps: room.keeps,
    },
  ],
});

/** The room grown to the least from its near low left corner, so that a fitting too big for it still shows. */
const grown = (room: Room, least: Vec3): Room => {
  const size = boxSize(room.box);
  const max = AXES.reduce<Vec3>(
    (corner, axis) => withAxis(corner, axis, room.box.min[axis] + Math.max(size[axis], least[axis])),
    room.box.max,
  );
  return { ...room, box: { min: room.box.min, max }, fits: false };
};

const solveFitted = (room: Room, context: CarcassContext): FittingParts => {
  const { content } = room.opening;
  if (content.kind !== 'fitted') return NO_PARTS;
  const { fitting } = content;
  const solver = solverOf(fitting);
  const least = solver.leastRoom(fitting, { opening: room.opening, counting: 'built' }, context);
  const size = boxSize(room.box);
  const short = AXES.filter((axis) => size[axis] < least[axis] - ROUNDING_MM);
  const refusal = (axis: Axis): FitProblem => tooSmall(room.opening.id, axis, least[axis], size[axis], [fitting.kind]);
  const parts = solver.solve(fitting, short.length > 0 ? grown(room, least) : room, context);
  return { ...parts, problems: [...short.map(refusal), ...parts.problems] };
};

const solveRoom = (room: Room, context: CarcassContext): FittingParts => {
  const { content } = room.opening;
  if (content.kind === 'empty') return emptyRoom(room, context);
  return content.kind === 'divided' ? divide(room, content, context) : solveFitted(room, context);
};

/** What stands in the way of the rooms of a carcass: its chamfers as planes, and its wheelhouses as boxes. */
export interface InTheWay {
  readonly planes: readonly HalfSpace[];
  readonly boxes: readonly Box[];
}

/** A room that no board parts any further, clear of the corners. What a mover holds is clear as the mover is. */
const leafRoom = (room: Room, { planes, boxes }: InTheWay, context: CarcassContext): Room => {
  const { content } = room.opening;
  if (planes.length + boxes.length === 0 || room.mover !== null || content.kind === 'divided') return room;
  const least: Vec3 =
    content.kind === 'fitted'
      ? solverOf(content.fitting).leastRoom(content.fitting, { opening: room.opening, counting: 'built' }, context)
      : [0, 0, 0];
  return boxes.reduce((left, box) => clearOfWheel(left, box, least), clearRoom(room, planes, least));
};

/** A room and everything inside it, worked off a list so that no depth of nesting is too deep. */
export const solveRooms = (
  root: Room,
  context: CarcassContext,
  inTheWay: InTheWay = { planes: [], boxes: [] },
): SolvedRooms => {
  const openings: SolvedOpening[] = [];
  const solved: FittingParts[] = [];
  const waiting: Room[] = [root];
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    const room = leafRoom(next, inTheWay, context);
    openings.push({
      id: room.opening.id,
      carcass: context.carcass.id,
      parent: room.parent,
      depth: room.depth,
      content: room.opening.content.kind,
      name: room.opening.name,
      from: room.box.min,
      size: boxSize(room.box),
      least: context.least(room.opening, 'stocked', room.material),
      mover: room.mover,
    });
    const parts = solveRoom(room, context);
    solved.push(parts);
    waiting.push(...parts.inner.toReversed());
  }
  const { inner: _inner, ...parts } = together(solved);
  return { ...parts, openings };
};
