import { boxMiddle, type Vec3 } from '../../base/index.ts';
import type { Board, HoleWish } from '../board.ts';
import type { CarcassContext } from '../context.ts';
import { pieceOf } from '../hardware.ts';
import { type FittingParts, type Room, together } from '../solved.ts';
import { PIECES } from '../standard-pieces.ts';
import { holeBelow } from './storage-levels.ts';

const PINS_A_SHELF = 4;

/** Holes of a row that the shelves may lie on: each shelf's own, and so many above and below it. */
const holesInUse = (room: Room, shelves: readonly Board[], context: CarcassContext): readonly number[] => {
  const { rule } = context;
  const floor = room.box.min[2];
  const last = Math.floor((room.box.max[2] - floor) / rule('shelf-pin-pitch') - 1 / 2);
  const spare = rule('shelf-pin-spare-holes');
  const used = shelves.flatMap(({ box, material }) => {
    const own = holeBelow(box.max[2] - floor, material.thicknessMm, context);
    return Array.from({ length: 2 * spare + 1 }, (_, i) => own - spare + i);
  });
  return [...new Set(used)].filter((hole) => hole >= 1 && hole <= last).sort((a, b) => a - b);
};

/** Two rows of blind holes in the side of the opening, one near the front and one near the rear of the shelves. */
const rowsIn = (
  room: Room,
  side: 'left' | 'right',
  shelves: readonly Board[],
  context: CarcassContext,
): readonly HoleWish[] => {
  const wall = room.walls[side];
  const [shelf] = shelves;
  if (!wall || !shelf || !room.fits) return [];
  const { rule } = context;
  const setIn = rule('shelf-pin-set-in');
  const x = side === 'left' ? room.box.min[0] : room.box.max[0];
  return [shelf.box.min[1] + setIn, shelf.box.max[1] - setIn].flatMap((deep) =>
    holesInUse(room, shelves, context).map((hole): HoleWish => {
      const at: Vec3 = [x, deep, room.box.min[2] + hole * rule('shelf-pin-pitch')];
      return {
        board: wall.board.id,
        at,
        diameter: rule('shelf-pin-hole'),
        depth: Math.min(rule('pilot-depth'), wall.board.material.thicknessMm / 2),
        why: 'shelf pin',
      };
    }),
  );
};

/** What adjustable shelves lie on: pins that hold them down, and rows of holes in the sides. */
export const shelfPins = (room: Room, shelves: readonly Board[], context: CarcassContext): FittingParts => {
  const { id } = room.opening;
  return together([
    { holes: (['left', 'right'] as const).flatMap((side) => rowsIn(room, side, shelves, context)) },
    ...shelves.map((shelf) =>
      pieceOf(context, {
        id: `${shelf.id}/pins`,
        origin: id,
        item: PIECES.shelfPin,
        quantity: PINS_A_SHELF,
        at: boxMiddle(shelf.box),
        mover: room.mover,
      }),
    ),
  ]);
};
