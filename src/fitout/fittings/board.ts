import { type Box, boxSize, ROUNDING_MM, type Vec3 } from '../../base/index.ts';
import type { Opening } from '../../design/index.ts';
import { ACROSS, DEEP, UP, withAxis } from '../axes.ts';
import type { CarcassContext } from '../context.ts';
import { hardwareOf, pieceOf } from '../hardware.ts';
import type { FitProblem, PartId } from '../parts.ts';
import { badJoint, mmWords, rulesFight } from '../problem.ts';
import type { SlideOption } from '../slide-choice.ts';
import { type FittingParts, NO_PARTS, type Room, together } from '../solved.ts';
import { PIECES } from '../standard-pieces.ts';
import { stockOf, unknown } from '../stock.ts';
import { type CarriageJob, carriageParts, carriageSlide, carriageWall } from './board-carriage.ts';
import { boardFace } from './board-face.ts';
import {
  type BoardMake,
  boardMake,
  boardNeed,
  boardSize,
  type CommandBoard,
  latchOf,
  leastBoard,
  swingSize,
} from './board-make.ts';
import { gasSprings } from './gas-springs.ts';
import { hingeParts, hingeWall } from './hinges.ts';
import { edgePieces, hungAt, hungLow, type Leaf, leafBoard, overLeaf, turningOut } from './leaf.ts';
import { roomBehind } from './room-behind.ts';
import type { FittingSolver } from './solver.ts';

/** The board stowed: at the hinge and on the floor of the opening, or under its top and in the middle across. */
const leafBox = (fitting: CommandBoard, room: Room, make: BoardMake, option: SlideOption | null, least: Vec3): Box => {
  const { min, max } = room.box;
  const { reveal, sheet, hung } = make;
  const [across, , up] = boxSize(room.box);
  const atHinge = option ? option.slide.sideSpaceMm : reveal;
  const [toSide, toFloor] = [across - atHinge, up - reveal];
  const free: Vec3 =
    hung === 'top' ? [across - 2 * reveal, 0, swingSize(make, toFloor)] : [swingSize(make, toSide), 0, up - 2 * reveal];
  const size = boardSize(fitting, least, free);
  const x =
    hung === 'top'
      ? (min[ACROSS] + max[ACROSS] - size[ACROSS]) / 2
      : hung === 'left'
        ? min[ACROSS] + atHinge
        : max[ACROSS] - atHinge - size[ACROSS];
  const z = hung === 'top' ? max[UP] - reveal - size[UP] : min[UP] + reveal;
  return {
    min: [x, min[DEEP], z],
    max: [x + size[ACROSS], min[DEEP] + sheet.thicknessMm, z + size[UP]],
  };
};

/** From the hung edge of the board to the frame on its free side. */
const toFrame = (room: Room, { hung }: BoardMake, box: Box): number => {
  const over = overLeaf(hung);
  return hungLow(hung) ? room.box.max[over] - box.min[over] : box.max[over] - room.box.min[over];
};

/** A size that the user set and that what lies on the board does not fit on. */
const tooTight = (fitting: CommandBoard, least: Vec3, at: Opening['id']): readonly FitProblem[] => {
  const wishes = [
    [ACROSS, fitting.widthMm, 'wide'],
    [UP, fitting.heightMm, 'high'],
  ] as const;
  return wishes.flatMap(([axis, wish, word]) =>
    wish === null || wish >= least[axis] - ROUNDING_MM
      ? []
      : [
          rulesFight(at, axis, least[axis], wish, [
            `board ${mmWords(wish)} ${word}`,
            `what lies on it ${mmWords(least[axis])}`,
          ]),
        ],
  );
};

const unknownParts = (fitting: CommandBoard, context: CarcassContext, at: Opening['id']): readonly FitProblem[] => [
  ...stockOf(context.catalog, fitting.material, at).problems,
  ...(fitting.worklight !== null && !context.catalog.devices.has(fitting.worklight)
    ? [unknown('unknown-device', at, fitting.worklight)]
    : []),
];

const insideRoom = (
  fitting: CommandBoard,
  room: Room,
  make: BoardMake,
  option: SlideOption | null,
  context: CarcassContext,
): Room => {
  const { min, max } = room.box;
  const carriage = option ? option.slide.sideSpaceMm + make.carriage + make.gap : 0;
  const beside = (side: 'left' | 'right'): number => make.beside + (fitting.hinge === side ? carriage : 0);
  const box: Box = {
    min: [min[ACROSS] + beside('left'), min[DEEP] + make.behind, min[UP]],
    max: [max[ACROSS] - beside('right'), max[DEEP], max[UP]],
  };
  return roomBehind(room, fitting.inside, box, 'closed', context);
};

const restsOf = (fitting: CommandBoard) => [
  { name: 'stowed', deg: 0 },
  ...[...new Set(fitting.stopsDeg)].sort((a, b) => a - b).map((deg) => ({ name: `${deg}°`, deg })),
];

/** How far from a place that a ratchet holds a stop may lie and still be held there. */
const HELD_DEG = 0.5;

/** What holds the board at its stops, at its hinge line; a stop between two places that it holds is a problem. */
const ratchetParts = (fitting: CommandBoard, leaf: Leaf, context: CarcassContext): FittingParts => {
  const { id } = leaf.room.opening;
  const { record } = hardwareOf(context, fitting.ratchet, id);
  const at = withAxis(leaf.box.min, overLeaf(leaf.hung), hungAt(leaf));
  const step = record?.stepDeg;
  const between =
    step === undefined
      ? []
      : fitting.stopsDeg.filter((deg) => Math.abs(deg - Math.round(deg / step) * step) > HELD_DEG);
  return together([
    fitting.ratchet === null
      ? NO_PARTS
      : pieceOf(context, {
          id: `${id}/ratchet`,
          origin: id,
          item: fitting.ratchet,
          quantity: 1,
          at,
          mover: leaf.carrier,
        }),
    {
      problems: between.map((deg) =>
        badJoint(id, [`stop at ${deg}°`, `${record?.name ?? fitting.ratchet}, not there`]),
      ),
    },
  ]);
};

const nameOf = (opening: Opening, context: CarcassContext): string =>
  opening.name === '' ? `${context.carcass.name} board`.trim() : opening.name;

const solveBoard = (fitting: CommandBoard, room: Room, context: CarcassContext): FittingParts => {
  const make = boardMake(fitting, context);
  const { opening } = room;
  const { id } = opening;
  const least = leastBoard(fitting, make, context);
  const option = make.carriage > 0 ? carriageSlide(fitting, room, make, context) : null;
  const name = nameOf(opening, context);
  const mover: PartId = `${id}/board`;
  const job: CarriageJob | null = option && { fitting, room, make, option, name, mover: `${id}/carriage-slide` };
  const box = leafBox(fitting, room, make, option, least);
  const leaf: Leaf = {
    room,
    hung: make.hung,
    name,
    sheet: make.sheet,
    box,
    mover,
    carrier: job ? job.mover : room.mover,
    proud: make.proud,
    radius: toFrame(room, make, box) - make.gap,
  };
  const own: FittingParts = {
    ...NO_PARTS,
    assemblies: [{ assembly: mover, mover, boards: [leafBoard(leaf, context.carcass.edgeBand)] }],
    movers: [turningOut(leaf, Math.max(...fitting.stopsDeg), restsOf(fitting))],
    inner: [insideRoom(fitting, room, make, option, context)],
    problems: [...unknownParts(fitting, context, id), ...tooTight(fitting, least, id)],
  };
  return together([
    job ? carriageParts(job, context) : NO_PARTS,
    own,
    hingeParts(context, leaf, PIECES.boardHinge, job ? carriageWall(job, context) : hingeWall(leaf)),
    edgePieces(context, leaf, latchOf(fitting)),
    boardFace(fitting, leaf, make, context),
    ratchetParts(fitting, leaf, context),
    fitting.springs !== null && make.wantsSprings ? gasSprings(context, leaf, fitting.springs, make.springs) : NO_PARTS,
  ]);
};

/**
 * A command board that stands flat in the face with its working face inward: it turns about an upright edge or its
 * upper edge, or is brought out of the face by a carriage first and turns then. It holds the stops that it is given.
 */
export const boardSolver: FittingSolver<CommandBoard> = {
  leastRoom: (fitting, { counting }, context) => boardNeed(fitting, counting, context).room,
  solve: solveBoard,
};
