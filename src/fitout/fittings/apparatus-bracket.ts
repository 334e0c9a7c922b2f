import { add, type Box, boxMiddle, boxSize, shift, type Vec3 } from '../../base/index.ts';
import type { FittingByKind } from '../../design/index.ts';
import { DEEP, largerOf } from '../axes.ts';
import type { CarcassContext } from '../context.ts';
import { nextSizeGrowth, stockedRoom } from '../gear-size.ts';
import { fastenersOf, hardwareOf, pieceOf } from '../hardware.ts';
import { badJoint } from '../problem.ts';
import { type FittingParts, NO_PARTS, type Room, together } from '../solved.ts';
import { PIECES } from '../standard-pieces.ts';
import type { FittingSolver } from './solver.ts';

type ApparatusBracket = FittingByKind['apparatus-bracket'];

/** A bracket is bolted at its four corners. */
const BOLTS = 4;

/** Across × deep × up of the bracket as it stands: its width across, its length deep, like a pack placed in it. */
const bracketSize = (fitting: ApparatusBracket, context: CarcassContext): Vec3 => {
  const [length, width, height] = context.catalog.hardware.get(fitting.bracket)?.sizeMm ?? [0, 0, 0];
  return [width, length, height];
};

/** The bracket at the rear end of the room, in the middle across: half way up the back, or on the floor. */
const bracketBox = (fitting: ApparatusBracket, { box }: Room, [across, deep, up]: Vec3): Box => {
  const middle = (box.min[0] + box.max[0]) / 2;
  const low = fitting.mounting === 'floor' ? box.min[2] : (box.min[2] + box.max[2] - up) / 2;
  return {
    min: [middle - across / 2, box.max[1] - deep, low],
    max: [middle + across / 2, box.max[1], low + up],
  };
};

const solveBracket = (fitting: ApparatusBracket, room: Room, context: CarcassContext): FittingParts => {
  const { id } = room.opening;
  const size = bracketSize(fitting, context);
  const [across, deep, up] = boxSize(room.box);
  const { record } = hardwareOf(context, fitting.bracket, id);
  const at = record?.sizeMm ? bracketBox(fitting, room, size) : room.box.min;
  const wall = fitting.mounting === 'floor' ? 'bottom' : 'back';
  const own: FittingParts = {
    ...NO_PARTS,
    rooms: [
      {
        opening: id,
        level: 0,
        carcass: context.carcass.id,
        mover: room.mover,
        pose: shift(room.box.min),
        size: [across, deep - size[DEEP], up],
        ...(fitting.nextSizeUp ? { growth: nextSizeGrowth(context, id) } : {}),
        keeps: 'bracket',
      },
    ],
    problems: room.walls[wall] === null ? [badJoint(id, [`bracket meets no panel at its ${wall}`])] : [],
  };
  const { mover } = room;
  const held = boxMiddle(room.box);
  return together([
    own,
    ...(['strap', 'lock'] as const).map((role) =>
      fitting[role] === null
        ? NO_PARTS
        : pieceOf(context, { id: `${id}/${role}`, origin: id, item: fitting[role], quantity: 1, at: held, mover }),
    ),
    pieceOf(context, { id: `${id}/bracket`, origin: id, item: fitting.bracket, quantity: 1, at, mover }),
    fastenersOf(context, { id: `${id}/bracket-bolts`, origin: id, item: PIECES.bracket, quantity: BOLTS, mover }),
  ]);
};

/**
 * A bracket for one breathing-apparatus pack, on the back or on the floor at the rear of its room, with a strap and a
 * positive lock. It is a solid of its record's size; the pack stands in what is left in front of it and comes straight
 * out. Where the next larger cylinder is to go on, the room is wanted that much larger.
 */
export const apparatusBracketSolver: FittingSolver<ApparatusBracket> = {
  leastRoom: (fitting, { opening, counting }, context) => {
    const [across, deep, up] = bracketSize(fitting, context);
    const worth = context.rule('least-inside');
    const bare = largerOf([across, deep + worth, up], [worth, 0, worth]);
    if (counting === 'built') return bare;
    const growth: Vec3 = fitting.nextSizeUp ? nextSizeGrowth(context, opening.id) : [0, 0, 0];
    const stocked = add(stockedRoom(context, opening.id), growth);
    return largerOf(bare, [stocked[0], stocked[1] + deep, stocked[2]]);
  },
  solve: solveBracket,
};
