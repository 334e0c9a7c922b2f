import { type Box, ROUNDING_MM, radians, type Vec3 } from '../../base/index.ts';
import type { Material } from '../../catalog/index.ts';
import type { FittingByKind, Opening } from '../../design/index.ts';
import { ACROSS, largerOf, UP, withAxis } from '../axes.ts';
import type { CarcassContext, Counting } from '../context.ts';
import { pieceOf } from '../hardware.ts';
import type { FitProblem, PartId } from '../parts.ts';
import { badJoint } from '../problem.ts';
import { type FittingParts, NO_PARTS, type Room, together } from '../solved.ts';
import { stockOf } from '../stock.ts';
import { gasSprings, type SpringPlan, springPlan, springReach, springRecord } from './gas-springs.ts';
import { hingeParts, hingeWall } from './hinges.ts';
import {
  alongEdge,
  edgeNeed,
  edgePieces,
  edgeRadius,
  type Hung,
  hungLow,
  type Leaf,
  leafBoard,
  overLeaf,
  overWithin,
  proudOf,
  reachOf,
  turningOut,
} from './leaf.ts';
import { roomBehind } from './room-behind.ts';
import { clearUnder, shutterMake, shutterNeed, shutterParts } from './shutter.ts';
import type { FittingSolver } from './solver.ts';

type Door = FittingByKind['door'];

/** What does not depend on the room: sheet, allowances, and how much of the room the door itself takes. */
interface Make {
  readonly sheet: Material;
  readonly reveal: number;
  readonly gap: number;
  readonly proud: number;
  /** How far the leaf reaches past the opening on each side; negative where it stands inside it. */
  readonly cover: number;
  /** How far its outer face stands before the face. */
  readonly outer: number;
  /** Null for a shutter. */
  readonly hung: Hung | null;
  /** From the face to where the inside begins: the leaf and what latch and lock reach behind it, and a gap. */
  readonly behind: number;
  /** Taken beside the inside on each side by gas springs. */
  readonly beside: number;
  readonly springs: SpringPlan | null;
  readonly wantsSprings: boolean;
}

const piecesOf = (fitting: Door) =>
  [
    ['latch', fitting.latch],
    ['lock', fitting.lock],
  ] as const;

/** True where a leaf can lie over the face: the opening is at the face of the carcass itself. */
const atFace = ({ box, walls, mover }: Room): boolean =>
  mover === null && walls.front === null && box.min[1] <= ROUNDING_MM;

/** An overlay leaf where there is no face to lie over; it is built as an inset one. */
const noFace = (fitting: Door, room: Room): readonly FitProblem[] =>
  fitting.hung === 'roll' || fitting.front === 'inset' || atFace(room)
    ? []
    : [badJoint(room.opening.id, ['overlay door has no carcass face to lie over'])];

const makeOf = (wish: Door, context: CarcassContext, room?: Room): Make => {
  const fitting: Door = room && !atFace(room) ? { ...wish, front: 'inset' } : wish;
  const { catalog, carcass, rule } = context;
  const sheet = stockOf(catalog, fitting.material, carcass.id).material;
  const hung = fitting.hung === 'roll' ? null : fitting.hung;
  const overlay = hung !== null && fitting.front === 'overlay';
  const t = sheet.thicknessMm;
  const [proud, reveal, gap] = [proudOf(context), rule('reveal-front'), rule('gap-moving-parts')];
  const cover = overlay ? (context.material.thicknessMm - reveal) / 2 : -reveal;
  // An overlay leaf stands the reveal before the face, on its buffers.
  const outer = overlay ? t + reveal : 0;
  const reach = edgeNeed(context, hung ?? 'top', piecesOf(fitting))[1];
  const record = hung === 'top' ? springRecord(context, fitting.stay) : null;
  const springs =
    record && springPlan(context, record, radians(fitting.opensDeg), { depth: t + proud, above: Math.max(0, cover) });
  return {
    sheet,
    reveal,
    gap,
    proud,
    cover,
    outer,
    hung,
    behind: Math.max(0, Math.max(t, reach) - outer + gap),
    beside: springs ? 2 * springs.radius + gap : 0,
    springs,
    wantsSprings: record !== null,
  };
};

/** Least room from the hung side to the free one: leaf, latch and lock keep the gap on their way past the frame. */
const overNeed = (fitting: Door, hung: Hung, make: Make, context: CarcassContext): number => {
  const { sheet, reveal, gap, proud, cover } = make;
  const t = sheet.thicknessMm;
  const pieces = edgeRadius(context, { hung, hinge: fitting.hinge, least: t }, piecesOf(fitting));
  const leaf = Math.max(reachOf(context.rule('least-inside'), t, proud), pieces);
  // The leaf swings past what stands a reveal beyond it, latch and lock past the side of the opening.
  return Math.max(leaf + gap - reveal - 2 * cover, pieces + gap - cover);
};

const leafNeed = (fitting: Door, hung: Hung, make: Make, inside: Vec3, context: CarcassContext): Vec3 => {
  const { springs, behind, beside, cover, outer, proud } = make;
  const along = edgeNeed(context, hung, piecesOf(fitting))[alongEdge(hung)] - 2 * cover;
  const leaf = withAxis(
    withAxis([0, 0, 0], alongEdge(hung), along),
    overLeaf(hung),
    overNeed(fitting, hung, make, context),
  );
  const [springDeep, springDown] = springs ? springReach(springs) : [0, 0];
  return [
    Math.max(inside[0] + 2 * beside, leaf[0]),
    Math.max(behind + inside[1], springDeep - outer - proud),
    Math.max(inside[2], leaf[2], springDown - cover),
  ];
};

const leastRoom = (fitting: Door, counting: Counting, context: CarcassContext): Vec3 => {
  const make = makeOf(fitting, context);
  const worth = context.rule('least-inside');
  const inside = largerOf([worth, worth, worth], context.least(fitting.inside, counting, context.material));
  return make.hung === null
    ? shutterNeed(fitting, shutterMake(fitting, make.sheet, context), inside, make.behind, context)
    : leafNeed(fitting, make.hung, make, inside, context);
};

/** The leaf stowed, narrower at its free edge by what its inner corner needs to swing past what is beside it. */
const leafBox = ({ box }: Room, hung: Hung, make: Make): Box => {
  const { min, max } = box;
  const { cover, reveal, gap, proud, sheet } = make;
  const face = min[1] - make.outer;
  const full: Box = {
    min: [min[0] - cover, face, min[2] - cover],
    max: [max[0] + cover, face + sheet.thicknessMm, max[2] + cover],
  };
  const over = overLeaf(hung);
  const beside = full.max[over] - full.min[over] + reveal;
  const size = overWithin(beside - gap, sheet.thicknessMm, proud);
  return hungLow(hung)
    ? { min: full.min, max: withAxis(full.max, over, full.min[over] + size) }
    : { min: withAxis(full.min, over, full.max[over] - size), max: full.max };
};

/** The room behind the door, with the walls of the opening but where something stands between. */
const insideRoom = (fitting: Door, room: Room, make: Make, context: CarcassContext): Room => {
  const { min, max } = room.box;
  const top =
    make.hung === null ? min[UP] + clearUnder(shutterMake(fitting, make.sheet, context), max[2] - min[2]) : max[2];
  const box: Box = {
    min: [min[ACROSS] + make.beside, min[1] + make.behind, min[UP]],
    max: [max[ACROSS] - make.beside, max[1], top],
  };
  return roomBehind(room, fitting.inside, box, 'closed', context);
};

/** Gas springs of a leaf hung at the top; anything else that holds a leaf open, one at each end of it. */
const stayParts = (fitting: Door, leaf: Leaf, make: Make, context: CarcassContext): FittingParts => {
  const { stay } = fitting;
  if (stay === null) return NO_PARTS;
  if (make.wantsSprings) return gasSprings(context, leaf, stay, make.springs);
  const { id } = leaf.room.opening;
  const along = alongEdge(leaf.hung);
  const upright = along === UP;
  const middle = (leaf.box.min[along] + leaf.box.max[along]) / 2;
  const at = withAxis(leaf.box.min, along, middle);
  // A side-hung leaf is held by one stay, a flap by one at each end.
  const quantity = upright ? 1 : 2;
  return pieceOf(context, { id: `${id}/stay`, origin: id, item: stay, quantity, at, mover: leaf.room.mover });
};

const leafParts = (fitting: Door, leaf: Leaf, make: Make, context: CarcassContext): FittingParts => {
  const { mover } = leaf;
  const rests = [
    { name: 'closed', deg: 0 },
    { name: 'open', deg: fitting.opensDeg },
  ];
  const own: FittingParts = {
    ...NO_PARTS,
    assemblies: [{ assembly: mover, mover, boards: [leafBoard(leaf, context.carcass.edgeBand)] }],
    movers: [turningOut(leaf, fitting.opensDeg, rests)],
  };
  return together([
    own,
    hingeParts(context, leaf, fitting.hinge, hingeWall(leaf)),
    edgePieces(context, leaf, piecesOf(fitting)),
    stayParts(fitting, leaf, make, context),
  ]);
};

const nameOf = (opening: Opening, context: CarcassContext): string =>
  opening.name === '' ? `${context.carcass.name} door`.trim() : opening.name;

const solveDoor = (fitting: Door, room: Room, context: CarcassContext): FittingParts => {
  const make = makeOf(fitting, context, room);
  const { opening } = room;
  const mover: PartId = `${opening.id}/door`;
  const name = nameOf(opening, context);
  const { sheet, hung } = make;
  const common = { room, name, sheet, mover, carrier: room.mover };
  const leafOf = (edge: Hung): Leaf => {
    const over = overLeaf(edge);
    const clear = room.box.max[over] - room.box.min[over];
    return {
      ...common,
      hung: edge,
      box: leafBox(room, edge, make),
      proud: make.proud,
      radius: clear + make.cover - make.gap,
    };
  };
  const front =
    hung === null
      ? shutterParts({ fitting, room, make: shutterMake(fitting, sheet, context), name, mover }, context)
      : leafParts(fitting, leafOf(hung), make, context);
  const problems = [...stockOf(context.catalog, fitting.material, opening.id).problems, ...noFace(fitting, room)];
  return together([{ inner: [insideRoom(fitting, room, make, context)], problems }, front]);
};

/**
 * A door before an opening: a leaf that turns about its outer edge on the hung side, or a roll shutter. What stands
 * behind it stays with the carcass, as deep as the leaf and the reach of its latch leave.
 */
export const doorSolver: FittingSolver<Door> = {
  leastRoom: (fitting, { counting }, context) => leastRoom(fitting, counting, context),
  solve: solveDoor,
};
