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
  edgeSwing,
  type Hung,
  type Leaf,
  leafBoard,
  overLeaf,
  swingSize,
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
  /** Null for a shutter. */
  readonly hung: Hung | null;
  readonly overlay: boolean;
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
  const outer = overlay ? t : 0;
  const reach = edgeNeed(context, hung ?? 'top', piecesOf(fitting))[1];
  const record = hung === 'top' ? springRecord(context, fitting.stay) : null;
  const springs = record && springPlan(context, record, radians(fitting.opensDeg), t);
  return {
    sheet,
    reveal: rule('reveal-front'),
    hung,
    overlay,
    behind: Math.max(t, reach) - outer + rule('gap-moving-parts'),
    beside: springs ? 2 * springs.radius + rule('gap-moving-parts') : 0,
    springs,
    wantsSprings: record !== null,
  };
};

/** How far an overlay leaf reaches past the opening, or how far an inset one stays inside it (negative out). */
const inwardOf = ({ overlay, reveal }: Make, context: CarcassContext): number =>
  overlay ? -(context.material.thicknessMm - reveal) / 2 : reveal;

const leafNeed = (fitting: Door, hung: Hung, make: Make, inside: Vec3, context: CarcassContext): Vec3 => {
  const { sheet, overlay, reveal, springs, behind, beside } = make;
  const inward = 2 * inwardOf(make, context);
  const swing = overlay ? 0 : swingSize(sheet.thicknessMm, 0, reveal);
  const over = Math.max(swing, edgeSwing(context, hung, piecesOf(fitting), inward / 2));
  const leaf = withAxis(edgeNeed(context, hung, piecesOf(fitting)), overLeaf(hung), over);
  const [springDeep, springDown] = springs ? springReach(springs) : [0, 0];
  return [
    Math.max(inside[0] + 2 * beside, leaf[0] + inward),
    Math.max(behind + inside[1], springDeep - (overlay ? sheet.thicknessMm : 0)),
    Math.max(inside[2], leaf[2] + inward, springDown + inward / 2),
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

const leafBox = ({ box }: Room, make: Make, context: CarcassContext): Box => {
  const { min, max } = box;
  const inward = inwardOf(make, context);
  const face = make.overlay ? min[1] - make.sheet.thicknessMm : min[1];
  return {
    min: [min[0] + inward, face, min[2] + inward],
    max: [max[0] - inward, face + make.sheet.thicknessMm, max[2] - inward],
  };
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
  const leafOf = (edge: Hung): Leaf => ({
    ...common,
    hung: edge,
    box: leafBox(room, make, context),
    beyond: inwardOf(make, context),
  });
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
