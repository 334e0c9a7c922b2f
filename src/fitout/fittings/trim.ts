import { type Box, boxAt, boxSize, shift, type Vec3 } from '../../base/index.ts';
import type { Material } from '../../catalog/index.ts';
import type { FittingByKind } from '../../design/index.ts';
import { ACROSS, DEEP, largerOf, RIGHT, TO_FACE, UP, UPWARD, withSpan } from '../axes.ts';
import type { Board, CutoutWish } from '../board.ts';
import type { CarcassContext } from '../context.ts';
import { stockedRoom } from '../gear-size.ts';
import { pieceOf } from '../hardware.ts';
import type { GearRoom } from '../parts.ts';
import { badJoint } from '../problem.ts';
import { type FittingParts, NO_PARTS, type Room, together } from '../solved.ts';
import { stockOf } from '../stock.ts';
import type { FittingSolver } from './solver.ts';

type Trim = FittingByKind['trim'];

interface Make {
  readonly sheet: Material;
  /** Wood round each hole. */
  readonly edge: number;
  readonly ledgeDeep: number;
  /** Upper face of the ledge above the floor, which it cannot lie lower than on. */
  readonly ledgeUp: number;
  /** The backing of the slot; zero where there is none. */
  readonly backing: number;
}

const makeOf = (fitting: Trim, context: CarcassContext): Make => {
  const sheet = stockOf(context.catalog, fitting.material, context.carcass.id).material;
  const edge = context.rule('cutout-edge');
  const ledgeDeep = fitting.cups > 0 ? fitting.cupDiameterMm + 2 * edge : context.rule('least-inside');
  const ledgeUp = Math.max(fitting.ledgeUpMm, sheet.thicknessMm);
  return { sheet, edge, ledgeDeep, ledgeUp, backing: fitting.slotMm > 0 ? sheet.thicknessMm : 0 };
};

/** The square that each hole for a drink touches, from the floor to the ceiling of the opening. */
const cupBoxes = (fitting: Trim, { box }: Room, { edge }: Make): readonly Box[] => {
  const { min, max } = box;
  const pitch = (max[ACROSS] - min[ACROSS]) / Math.max(1, fitting.cups);
  const d = fitting.cupDiameterMm;
  return Array.from({ length: fitting.cups }, (_, i) =>
    boxAt([min[ACROSS] + (i + 1 / 2) * pitch - d / 2, min[DEEP] + edge, min[UP]], [d, d, max[UP] - min[UP]]),
  );
};

const boardsOf = (fitting: Trim, room: Room, make: Make, context: CarcassContext): readonly Board[] => {
  const { opening, box } = room;
  const { min, max } = box;
  const into = (side: 'left' | 'right'): number => (room.fits ? (room.walls[side]?.housing ?? 0) : 0);
  const wide = withSpan(box, ACROSS, min[ACROSS] - into('left'), max[ACROSS] + into('right'));
  const owner = opening.name === '' ? context.carcass.name : opening.name;
  const common = {
    origin: opening.id,
    material: make.sheet,
    along: RIGHT,
    seat: 'dado',
    side: null,
    band: null,
  } as const;
  const top = min[UP] + make.ledgeUp;
  const ledge: Board = {
    ...common,
    id: `${opening.id}/ledge`,
    role: 'ledge',
    name: `${owner} ledge`.trim(),
    box: withSpan(withSpan(wide, UP, top - make.sheet.thicknessMm, top), DEEP, min[DEEP], min[DEEP] + make.ledgeDeep),
    face: UPWARD,
  };
  if (make.backing === 0) return [ledge];
  const from = min[DEEP] + make.ledgeDeep + fitting.slotMm;
  const backing: Board = {
    ...common,
    id: `${opening.id}/backing`,
    role: 'backing',
    name: `${owner} backing`.trim(),
    box: withSpan(wide, DEEP, from, from + make.backing),
    face: TO_FACE,
  };
  return [ledge, backing];
};

const cutoutsOf = (ledge: Board | undefined, cups: readonly Box[]): readonly CutoutWish[] =>
  ledge
    ? cups.map((cup) => ({
        board: ledge.id,
        origin: ledge.origin,
        box: withSpan(cup, UP, ledge.box.min[UP], ledge.box.max[UP]),
        shape: 'circle',
        cornerRadius: 0,
        why: 'drink holder',
      }))
    : [];

const roomsOf = (
  fitting: Trim,
  room: Room,
  make: Make,
  cups: readonly Box[],
  context: CarcassContext,
): readonly GearRoom[] => {
  const { min } = room.box;
  const from = min[DEEP] + make.ledgeDeep;
  const slot = fitting.slotMm > 0 ? [withSpan(room.box, DEEP, from, from + fitting.slotMm)] : [];
  return [...cups, ...slot].map((box, level) => ({
    opening: room.opening.id,
    level,
    carcass: context.carcass.id,
    mover: room.mover,
    pose: shift(box.min),
    size: boxSize(box),
    keeps: level === cups.length && fitting.clip !== null ? 'bracket' : 'lip',
  }));
};

const solveTrim = (fitting: Trim, room: Room, context: CarcassContext): FittingParts => {
  const { id } = room.opening;
  const make = makeOf(fitting, context);
  const boards = boardsOf(fitting, room, make, context);
  const cups = cupBoxes(fitting, room, make);
  const open = (['left', 'right'] as const).filter((side) => room.walls[side] === null);
  const own: FittingParts = {
    ...NO_PARTS,
    assemblies: [{ assembly: room.fits ? room.assembly : `${id}/loose`, mover: room.mover, boards }],
    cutouts: cutoutsOf(boards[0], cups),
    rooms: roomsOf(fitting, room, make, cups, context),
    problems: [
      ...stockOf(context.catalog, fitting.material, id).problems,
      ...(open.length > 0 ? [badJoint(id, [`ledge meets no panel at its ${open.join(' and ')}`])] : []),
    ],
  };
  const { min, max } = room.box;
  const backing = boards[1];
  const at: Vec3 = [(min[ACROSS] + max[ACROSS]) / 2, backing?.box.min[DEEP] ?? min[DEEP], max[UP]];
  const clip = backing ? fitting.clip : null;
  return together([
    own,
    clip === null
      ? NO_PARTS
      : pieceOf(context, { id: `${id}/clip`, origin: id, item: clip, quantity: 1, at, mover: room.mover }),
  ]);
};

/**
 * A ledge across the opening with holes that keep drinks upright on its floor, levels 0 and up from the left; behind
 * it a slot for clip-boards before a backing with a clip, which is the last level.
 */
export const trimSolver: FittingSolver<Trim> = {
  leastRoom: (fitting, { opening, counting }, context) => {
    const make = makeOf(fitting, context);
    const worth = context.rule('least-inside');
    const { cups, cupDiameterMm, slotMm } = fitting;
    const bare: Vec3 = [
      Math.max(worth, cups * (cupDiameterMm + 2 * make.edge)),
      make.ledgeDeep + slotMm + make.backing,
      make.ledgeUp + worth,
    ];
    if (counting === 'built') return bare;
    const slot = slotMm > 0 ? stockedRoom(context, opening.id, cups)[ACROSS] : 0;
    const high = Array.from({ length: cups + 1 }, (_, level) => stockedRoom(context, opening.id, level)[UP]);
    return largerOf(bare, [slot, 0, Math.max(0, ...high)]);
  },
  solve: solveTrim,
};
