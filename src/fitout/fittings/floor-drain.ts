import { boxAt, type Vec3 } from '../../base/index.ts';
import type { CarcassContext } from '../context.ts';
import { hardwareOf, pieceOf } from '../hardware.ts';
import { badJoint } from '../problem.ts';
import { type FittingParts, NO_PARTS, type Room, together } from '../solved.ts';

/** A drain in the middle of the floor of a room, let into a round hole right through it. */
export const floorDrain = (item: string | null, room: Room, context: CarcassContext): FittingParts => {
  if (item === null) return NO_PARTS;
  const { id } = room.opening;
  const { min, max } = room.box;
  const floor = room.walls.bottom;
  const at: Vec3 = [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2, min[2]];
  const hole = hardwareOf(context, item, id).record?.holeMm ?? 0;
  const through = floor ? min[2] - floor.board.box.min[2] : 0;
  const low: Vec3 = [at[0] - hole / 2, at[1] - hole / 2, min[2] - through];
  return together([
    pieceOf(context, { id: `${id}/drain`, origin: id, item, quantity: 1, at, mover: room.mover }),
    {
      cutouts:
        floor && room.fits && hole > 0
          ? [
              {
                board: floor.board.id,
                origin: id,
                box: boxAt(low, [hole, hole, through]),
                shape: 'circle',
                cornerRadius: 0,
                why: 'drain',
              },
            ]
          : [],
      problems: floor ? [] : [badJoint(id, ['drain meets no panel below'])],
    },
  ]);
};
