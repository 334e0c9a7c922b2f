import { type Box, boxSize, type Pose, type Vec3 } from '../../base/index.ts';
import { boxShape } from '../../bodies/index.ts';
import type { Material } from '../../catalog/index.ts';
import type { FittingByKind } from '../../design/index.ts';
import { RIGHT, TO_FACE } from '../axes.ts';
import type { Board } from '../board.ts';
import type { CarcassContext } from '../context.ts';
import type { Body, Mover, PartId } from '../parts.ts';
import { platePanel } from '../plate-panel.ts';
import { type FittingParts, NO_PARTS, type Room, together } from '../solved.ts';
import { edgeNeed, edgePieces, type Leaf } from './leaf.ts';

type Door = FittingByKind['door'];

/** What a roll shutter is made with. */
export interface ShutterMake {
  readonly sheet: Material;
  readonly reveal: number;
  readonly railHeight: number;
  /** Core of the roll, what each turn adds to its radius, and the air round it. */
  readonly core: number;
  readonly layer: number;
  readonly air: number;
}

const piecesOf = (fitting: Door) =>
  [
    ['latch', fitting.latch],
    ['lock', fitting.lock],
  ] as const;

export const shutterMake = (fitting: Door, sheet: Material, context: CarcassContext): ShutterMake => ({
  sheet,
  reveal: context.rule('reveal-front'),
  railHeight: Math.max(context.rule('shutter-rail'), edgeNeed(context, 'top', piecesOf(fitting))[2]),
  core: context.rule('shutter-core'),
  layer: sheet.thicknessMm + context.rule('shutter-layer-spare'),
  air: context.rule('shutter-air'),
});

/**
 * Side of the box that takes the roll of a curtain: the turns lie on each other round the core, so that π/4 (D² − d²)
 * is the length of the curtain times the thickness of a turn.
 */
export const coilSize = ({ core, layer, air }: ShutterMake, curtain: number): number =>
  2 * air + Math.sqrt(core ** 2 + (4 * layer * curtain) / Math.PI);

/** Clear height under the box in a room of this height: height = clear + box of that clear height. */
export const clearUnder = (make: ShutterMake, height: number): number => {
  const { core, layer, air } = make;
  const k = (4 * layer) / Math.PI;
  // (c − 2 air)² = core² + k (height − c), solved for the box c.
  const b = k - 4 * air;
  const rest = 4 * air ** 2 - core ** 2 - k * height;
  const coil = (-b + Math.sqrt(b ** 2 - 4 * rest)) / 2;
  return Math.max(0, height - coil);
};

/** Across × deep × up of the least room round what stands behind the curtain. */
export const shutterNeed = (
  fitting: Door,
  make: ShutterMake,
  inside: Vec3,
  behind: number,
  context: CarcassContext,
) => {
  const pieces = edgeNeed(context, 'top', piecesOf(fitting));
  const across = Math.max(inside[0], pieces[0] + 2 * make.reveal);
  const clear = Math.max(inside[2], make.railHeight + 2 * make.reveal + context.rule('shutter-slat'));
  const coil = coilSize(make, clear);
  return [across, Math.max(behind + inside[1], coil), clear + coil] as const;
};

export interface ShutterJob {
  readonly fitting: Door;
  readonly room: Room;
  readonly make: ShutterMake;
  readonly name: string;
  readonly mover: PartId;
}

/** Slats of equal width, none narrower than the house rule, from the rail up to the box. */
const slats = ({ room, make, name, mover }: ShutterJob, from: number, to: number, context: CarcassContext) => {
  const count = Math.max(1, Math.floor((to - from) / context.rule('shutter-slat')));
  const width = (to - from) / count;
  const { id } = room.opening;
  const x = room.box.min[0] + make.reveal;
  const length = boxSize(room.box)[0] - 2 * make.reveal;
  return Array.from({ length: count }, (_, i): FittingParts => {
    const pose: Pose = {
      turn: [
        [1, 0, 0],
        [0, 0, 1],
        [0, -1, 0],
      ],
      at: [x, room.box.min[1] + make.sheet.thicknessMm, from + i * width],
    };
    const slat = platePanel(
      {
        id: `${id}/slat-${i + 1}`,
        origin: id,
        role: 'slat',
        name: `${name} slat`,
        sheet: make.sheet,
        size: [length, width],
        cuts: [],
        pose,
        mover,
      },
      context,
    );
    // A slat goes round the roll, which no rigid body does: solids are checked with the rail and the box alone.
    return { ...slat, bodies: [] };
  });
};

/**
 * A roll shutter: slats and a bottom rail cut from sheet, and a box at the top that takes the roll. The rail slides up
 * to the underside of the box and carries latch and lock; the slats go with it.
 */
export const shutterParts = (job: ShutterJob, context: CarcassContext): FittingParts => {
  const { fitting, room, make, name, mover } = job;
  const { min, max } = room.box;
  const { id } = room.opening;
  const { reveal, railHeight, sheet } = make;
  const clear = clearUnder(make, max[2] - min[2]);
  const under = min[2] + clear;
  const rail: Box = {
    min: [min[0] + reveal, min[1], min[2] + reveal],
    max: [max[0] - reveal, min[1] + sheet.thicknessMm, min[2] + reveal + railHeight],
  };
  const board: Board = {
    id: `${id}/front`,
    origin: id,
    role: 'front',
    name: `${name} bottom rail`,
    material: sheet,
    box: rail,
    along: RIGHT,
    face: TO_FACE,
    seat: 'rabbet',
    side: null,
    band: null,
  };
  const coil = coilSize(make, clear);
  const box: Body = {
    id: `${id}/coil`,
    origin: id,
    carcass: context.carcass.id,
    kind: 'hardware',
    name: `${name} roll`,
    shape: boxShape({ min: [min[0], min[1], under], max: [max[0], min[1] + coil, max[2]] }),
    mover: room.mover,
  };
  const up: Mover = {
    id: mover,
    origin: id,
    name,
    motion: { kind: 'slide', direction: [0, 0, 1], travel: Math.max(0, under - reveal - rail.max[2]) },
    carriedBy: room.mover,
    rests: [
      { name: 'closed', share: 0 },
      { name: 'open', share: 1 },
    ],
  };
  // Latch and lock stand in the rail as in a leaf that is hung at the top.
  const leaf: Leaf = {
    room,
    hung: 'top',
    name,
    sheet,
    box: rail,
    mover,
    carrier: room.mover,
    proud: 0,
    radius: Infinity,
  };
  return together([
    { ...NO_PARTS, assemblies: [{ assembly: mover, mover, boards: [board] }], bodies: [box], movers: [up] },
    ...slats(job, rail.max[2], under, context),
    edgePieces(context, leaf, piecesOf(fitting)),
  ]);
};
