import { boxAt, type Vec3 } from '../../base/index.ts';
import type { CutoutWish } from '../board.ts';
import type { CarcassContext } from '../context.ts';
import { fastenersOf, hardwareOf, pieceOf } from '../hardware.ts';
import { type FittingParts, NO_PARTS, type Room, together } from '../solved.ts';
import { PIECES } from '../standard-pieces.ts';

const SCREWS_A_VENT = 4;
const WATTS_OF_THE_RULE = 50;

/** Vents in the back of a bay: as many in a low row as in a high one, or a low row alone under a fan. */
export interface BayVents {
  readonly count: number;
  readonly inRow: number;
  readonly rows: number;
  /** Length across × width up of one vent, and how far it stands into the bay. */
  readonly size: readonly [number, number];
  readonly deep: number;
  /** How much of the vent lies on the wall round its hole, and the room between vents. */
  readonly flange: number;
}

const NO_VENTS: BayVents = { count: 0, inRow: 0, rows: 0, size: [0, 0], deep: 0, flange: 0 };

/**
 * The vents that a current asks for: all the power taken turns to heat, and each of the two rows has the free area of
 * the house rules for it. At least one low and one high, unless a fan stands in for the high ones.
 */
export const bayVents = (item: string | null, amps: number, hasFan: boolean, context: CarcassContext): BayVents => {
  const record = item === null ? undefined : context.catalog.hardware.get(item);
  if (!record?.sizeMm || record.freeMm2 === undefined) return NO_VENTS;
  const watts = amps * context.rule('supply-volts');
  const areaMm2 = (watts / WATTS_OF_THE_RULE) * context.rule('vent-area-per-50w');
  const inRow = Math.max(1, Math.ceil(areaMm2 / record.freeMm2));
  const [length, width, height] = record.sizeMm;
  const rows = hasFan ? 1 : 2;
  return { count: rows * inRow, inRow, rows, size: [length, width], deep: height, flange: context.rule('vent-flange') };
};

/** Across × up that the vents need: a row beside each other, rows above each other, a flange's width around each. */
export const ventNeed = ({ count, inRow, rows, size, flange }: BayVents): readonly [number, number] =>
  count === 0 ? [0, 0] : [inRow * (size[0] + flange) + flange, rows * (size[1] + flange) + flange];

/** Middles of the vents across and up: shared out over the width, close to floor and ceiling. */
const middlesOf = ({ inRow, rows, size, flange }: BayVents, { box }: Room): readonly (readonly [number, number])[] => {
  const { min, max } = box;
  const heights = [min[2] + flange + size[1] / 2, max[2] - flange - size[1] / 2].slice(0, rows);
  const pitch = (max[0] - min[0]) / inRow;
  return heights.flatMap((up) => Array.from({ length: inRow }, (_, i) => [min[0] + (i + 1 / 2) * pitch, up] as const));
};

/** The vents on the inner face of the back, a hole through it behind each, and their screws. */
export const ventParts = (vents: BayVents, item: string | null, room: Room, context: CarcassContext): FittingParts => {
  const { id } = room.opening;
  if (vents.count === 0) return { ...NO_PARTS, problems: hardwareOf(context, item, id).problems };
  const { size, deep, flange } = vents;
  const { mover } = room;
  const back = room.fits ? room.walls.back : null;
  const inner = room.box.max[1];
  const middles = middlesOf(vents, room);
  const cutouts = middles.flatMap(([x, z]): readonly CutoutWish[] => {
    if (!back) return [];
    const hole: Vec3 = [size[0] - 2 * flange, back.board.box.max[1] - inner, size[1] - 2 * flange];
    return [
      {
        board: back.board.id,
        origin: id,
        box: boxAt([x - hole[0] / 2, inner, z - hole[2] / 2], hole),
        shape: 'rectangle',
        cornerRadius: context.rule('router-diameter') / 2,
        why: 'vent',
      },
    ];
  });
  return together([
    { cutouts },
    ...middles.map(([x, z], i) =>
      pieceOf(context, {
        id: `${id}/vent-${i + 1}`,
        origin: id,
        item,
        quantity: 1,
        at: boxAt([x - size[0] / 2, inner - deep, z - size[1] / 2], [size[0], deep, size[1]]),
        mover,
      }),
    ),
    fastenersOf(context, {
      id: `${id}/vent-screws`,
      origin: id,
      item: PIECES.hinge,
      quantity: SCREWS_A_VENT * vents.count,
      mover,
    }),
  ]);
};
