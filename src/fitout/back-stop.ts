import type { Box } from '../base/index.ts';
import { DEEP } from './axes.ts';
import type { CarcassContext } from './context.ts';
import { hardwareOf, pieceOf } from './hardware.ts';
import { tooSmall } from './problem.ts';
import { type FittingParts, NO_PARTS, type Room, together } from './solved.ts';

/**
 * A pair of stops on the sides of the room right behind a box or tray, which take it when the vehicle is struck from
 * the front. They stay with the carcass. Less room behind than they are deep is a problem.
 */
export const backStops = (context: CarcassContext, room: Room, outside: Box, item: string | null): FittingParts => {
  const { id } = room.opening;
  const { record, problems } = hardwareOf(context, item, id);
  if (!record?.sizeMm) return { ...NO_PARTS, problems };
  const [wide, deep, high] = record.sizeMm;
  const [from, low] = [outside.max[1], outside.min[2]];
  const free = room.box.max[1] - from;
  const up = Math.min(high, room.box.max[2] - low);
  const place = (side: 'left' | 'right'): Box => {
    const x = side === 'left' ? room.box.min[0] : room.box.max[0] - wide;
    return { min: [x, from, low], max: [x + wide, from + deep, low + up] };
  };
  const { mover } = room;
  return together([
    ...(['left', 'right'] as const).map((side) =>
      pieceOf(context, { id: `${id}/stop-${side}`, origin: id, item, quantity: 1, at: place(side), mover }),
    ),
    { problems: deep > free ? [tooSmall(id, DEEP, deep, free, [record.id])] : [] },
  ]);
};
