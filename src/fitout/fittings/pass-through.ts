import { type Box, boxMiddle, boxSize, shift, type Vec3 } from '../../base/index.ts';
import { boxShape } from '../../bodies/index.ts';
import type { FittingByKind } from '../../design/index.ts';
import {
  ACROSS,
  type Axis,
  BACKWARD,
  DEEP,
  type Direction,
  LEFT,
  RIGHT,
  TO_FACE,
  UP,
  withAxis,
  withSpan,
} from '../axes.ts';
import type { Board, CutoutWish } from '../board.ts';
import type { CarcassContext } from '../context.ts';
import { stockedRoom } from '../gear-size.ts';
import { fastenersOf, hardwareOf, pieceOf, screwsAlong } from '../hardware.ts';
import { badJoint } from '../problem.ts';
import { type FittingParts, NO_PARTS, type Room, together } from '../solved.ts';
import { PIECES } from '../standard-pieces.ts';
import { stockOf } from '../stock.ts';
import type { FittingSolver } from './solver.ts';

type PassThrough = FittingByKind['pass-through'];

const MM_PER_METRE = 1000;

interface Way {
  /** The axis through the wall, whether the wall is at its high end, and the axis along the wall. */
  readonly through: Axis;
  readonly high: boolean;
  readonly wide: Axis;
  /** Where the frame looks, into the opening, and the way that its length runs. */
  readonly face: Direction;
  readonly along: Direction;
}

const WAYS: { readonly [S in PassThrough['through']]: Way } = {
  left: { through: ACROSS, high: false, wide: DEEP, face: RIGHT, along: BACKWARD },
  right: { through: ACROSS, high: true, wide: DEEP, face: LEFT, along: BACKWARD },
  back: { through: DEEP, high: true, wide: ACROSS, face: TO_FACE, along: RIGHT },
};

interface Job {
  readonly fitting: PassThrough;
  readonly room: Room;
  readonly way: Way;
  readonly context: CarcassContext;
  readonly frameThick: number;
}

const frameThick = (fitting: PassThrough, context: CarcassContext): number =>
  stockOf(context.catalog, fitting.frameMaterial, context.carcass.id).material.thicknessMm;

/** The clear hole in the middle of the wall, its lower edge the width of the frame above the floor; the room's whole length through. */
const clearHole = ({ fitting, room, way, context }: Job): Box => {
  const { min, max } = room.box;
  const middle = (min[way.wide] + max[way.wide]) / 2;
  const low = min[UP] + context.rule('pass-frame-width');
  const wide = withSpan(room.box, way.wide, middle - fitting.widthMm / 2, middle + fitting.widthMm / 2);
  return withSpan(wide, UP, low, low + fitting.heightMm);
};

/** A box larger by `by` along the wall and up, between two places on the axis through it. */
const around = (hole: Box, way: Way, by: number, from: number, to: number): Box =>
  withSpan(
    withSpan(
      withSpan(hole, way.wide, hole.min[way.wide] - by, hole.max[way.wide] + by),
      UP,
      hole.min[UP] - by,
      hole.max[UP] + by,
    ),
    way.through,
    from,
    to,
  );

const frameBoard = (job: Job, hole: Box): Board => {
  const { fitting, room, way, context } = job;
  const { opening } = room;
  const wallAt = (way.high ? room.box.max : room.box.min)[way.through];
  const inner = way.high ? wallAt - job.frameThick : wallAt + job.frameThick;
  const owner = opening.name === '' ? context.carcass.name : opening.name;
  return {
    id: `${opening.id}/frame`,
    origin: opening.id,
    role: 'frame',
    name: `${owner} frame`.trim(),
    material: stockOf(context.catalog, fitting.frameMaterial, opening.id).material,
    box: around(hole, way, context.rule('pass-frame-width'), Math.min(wallAt, inner), Math.max(wallAt, inner)),
    along: way.along,
    face: way.face,
    seat: 'rabbet',
    side: null,
    band: null,
  };
};

/** The same hole through the frame and through the wall, larger than the clear one by the edge trim. */
const cutouts = ({ room, way, fitting, context }: Job, hole: Box, frame: Board): readonly CutoutWish[] => {
  const wall = room.walls[fitting.through];
  const boards = [frame, ...(wall && room.fits ? [wall.board] : [])];
  return boards.map(({ id, box }) => ({
    board: id,
    origin: room.opening.id,
    box: around(hole, way, context.rule('edge-trim-thickness'), box.min[way.through], box.max[way.through]),
    shape: 'rectangle',
    cornerRadius: context.rule('router-diameter') / 2,
    why: 'pass-through',
  }));
};

/** How far gear may reach beyond the wall: nowhere where there is none, and never out of what moves. */
const reachBeyond = ({ room, fitting }: Job): number =>
  room.walls[fitting.through] === null || room.mover !== null ? 0 : fitting.beyondMm;

/** From the far end of the opening through the hole to as far beyond the wall as gear may reach. */
const tunnel = (job: Job, hole: Box): { readonly whole: Box; readonly beyond: Box } => {
  const { room, way, fitting } = job;
  const wall = room.walls[fitting.through]?.board.box ?? room.box;
  const far = (way.high ? wall.max : wall.min)[way.through];
  const { min, max } = room.box;
  const end = way.high ? far + reachBeyond(job) : far - reachBeyond(job);
  return {
    whole: way.high
      ? withSpan(hole, way.through, min[way.through], end)
      : withSpan(hole, way.through, end, max[way.through]),
    beyond: withSpan(hole, way.through, Math.min(far, end), Math.max(far, end)),
  };
};

/** The room beyond the wall belongs to what passes through: until gear stands there it is kept free as air. */
const keptFree = (job: Job, beyond: Box): FittingParts => {
  const { room, context } = job;
  const { id } = room.opening;
  if (reachBeyond(job) <= 0 || context.gearIn(id).length > 0) return NO_PARTS;
  const common = { origin: id, carcass: context.carcass.id, mover: room.mover };
  const shape = boxShape(beyond);
  return {
    ...NO_PARTS,
    bodies: [{ ...common, id: `${id}/beyond`, kind: 'plug-room', name: 'room beyond the wall', shape }],
  };
};

const solvePassThrough = (fitting: PassThrough, room: Room, context: CarcassContext): FittingParts => {
  const job: Job = { fitting, room, way: WAYS[fitting.through], context, frameThick: frameThick(fitting, context) };
  const { id } = room.opening;
  const { mover } = room;
  const restraint = hardwareOf(context, fitting.restraint, id);
  const hole = clearHole(job);
  const frame = frameBoard(job, hole);
  const { whole, beyond } = tunnel(job, hole);
  const [across, deep, up] = boxSize(frame.box);
  const length = job.way.wide === ACROSS ? across : deep;
  const own: FittingParts = {
    ...NO_PARTS,
    assemblies: [{ assembly: `${id}/frame`, mover, boards: [frame] }],
    cutouts: cutouts(job, hole, frame),
    rooms: [
      {
        opening: id,
        level: 0,
        carcass: context.carcass.id,
        mover,
        pose: shift(whole.min),
        size: boxSize(whole),
        keeps: restraint.record ? 'strap' : 'nothing',
      },
    ],
    problems: [
      ...stockOf(context.catalog, fitting.frameMaterial, id).problems,
      ...(room.walls[fitting.through] === null
        ? [badJoint(id, [`pass-through meets no panel at its ${fitting.through}`])]
        : []),
      ...(mover !== null && fitting.beyondMm > 0 ? [badJoint(id, ['nothing may reach out of what moves'])] : []),
    ],
  };
  const edge = (2 * (fitting.widthMm + fitting.heightMm)) / MM_PER_METRE;
  const at: Vec3 = withAxis(hole.min, job.way.through, (job.way.high ? room.box.max : room.box.min)[job.way.through]);
  return together([
    own,
    keptFree(job, beyond),
    fitting.restraint === null
      ? NO_PARTS
      : pieceOf(context, {
          id: `${id}/restraint`,
          origin: id,
          item: fitting.restraint,
          quantity: 1,
          at: boxMiddle(room.box),
          mover,
        }),
    pieceOf(context, { id: `${id}/edge-trim`, origin: id, item: fitting.edgeTrim, quantity: edge, at, mover }),
    fastenersOf(context, {
      id: `${id}/frame-screws`,
      origin: id,
      item: PIECES.hinge,
      quantity: 2 * (screwsAlong(context, length) + screwsAlong(context, up)),
      mover,
    }),
  ]);
};

/**
 * A hole right through a side or the back, with a frame on this side and its edges covered. Gear stands in the opening
 * and reaches through; as far as it may reach beyond the wall, that room is its own.
 */
export const passThroughSolver: FittingSolver<PassThrough> = {
  leastRoom: (fitting, { opening, counting }, context) => {
    const { through, wide } = WAYS[fitting.through];
    const frame = 2 * context.rule('pass-frame-width');
    const thick = frameThick(fitting, context);
    const stocked = counting === 'stocked' ? stockedRoom(context, opening.id)[through] - fitting.beyondMm : 0;
    const bare = withAxis([0, 0, fitting.heightMm + frame], wide, fitting.widthMm + frame);
    return withAxis(bare, through, Math.max(thick + context.rule('least-inside'), stocked));
  },
  solve: solvePassThrough,
};
