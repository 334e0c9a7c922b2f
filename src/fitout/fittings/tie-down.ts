import { boxAt, boxMiddle, ROUNDING_MM } from '../../base/index.ts';
import type { FittingByKind } from '../../design/index.ts';
import type { CutoutWish } from '../board.ts';
import type { CarcassContext } from '../context.ts';
import { pieceOf } from '../hardware.ts';
import type { PartId } from '../parts.ts';
import { type FittingParts, NO_PARTS, type Room, together } from '../solved.ts';
import type { TrayBoards } from './tray-boards.ts';

type SlideOut = FittingByKind['slide-out'];

/** Length of a slot for the straps of a tray; nothing on a plain deck. */
export const slotLength = ({ tieDown }: SlideOut, { catalog, rule }: CarcassContext): number =>
  tieDown ? (catalog.hardware.get(tieDown.strap)?.sizeMm?.[1] ?? 0) + rule('tie-slot-spare') : 0;

/**
 * Slots along both sides of a deck, in the middle of its length, and the straps that go through them. The slots lie within the rails of under-mount slides, so that a strap passes beside those.
 */
export const tieDownParts = (
  fitting: SlideOut,
  room: Room,
  tray: TrayBoards,
  railWide: number,
  context: CarcassContext,
  mover: PartId,
): FittingParts => {
  const { tieDown } = fitting;
  if (!tieDown) return NO_PARTS;
  const { id } = room.opening;
  const { rule } = context;
  const wide = rule('tie-slot-width');
  const long = slotLength(fitting, context);
  const deck = tray.deck.box;
  const clear = tray.inside;
  const setIn = rule('tie-slot-set-in');
  const left = clear.min[0] + railWide + setIn;
  const right = clear.max[0] - railWide - setIn - wide;
  const run = clear.max[1] - clear.min[1];
  const count = Math.floor((run - long + ROUNDING_MM) / tieDown.everyMm) + 1;
  const first = clear.min[1] + (run - (count - 1) * tieDown.everyMm) / 2;
  const slots = [left, right].flatMap((x) =>
    Array.from({ length: Math.max(0, count) }, (_, i): CutoutWish => {
      const middle = first + i * tieDown.everyMm;
      return {
        board: tray.deck.id,
        origin: id,
        box: boxAt([x, middle - long / 2, deck.min[2]], [wide, long, deck.max[2] - deck.min[2]]),
        shape: 'rectangle',
        cornerRadius: wide / 2,
        why: 'strap',
      };
    }),
  );
  const inner = fitting.inside.id;
  return together([
    { cutouts: slots },
    pieceOf(context, {
      id: `${inner}/straps`,
      origin: inner,
      item: tieDown.strap,
      quantity: tieDown.straps,
      at: boxMiddle({ min: clear.min, max: [clear.max[0], clear.max[1], clear.min[2]] }),
      mover,
    }),
  ]);
};
