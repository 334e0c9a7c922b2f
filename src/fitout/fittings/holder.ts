import { add, type Box, boxAt, boxSize, middle, shift, type Vec3 } from '../../base/index.ts';
import type { Hardware } from '../../catalog/index.ts';
import type { Lying } from '../../design/index.ts';
import { ACROSS, AXES, type Axis, DEEP, largerOf, UP, withAxis } from '../axes.ts';
import type { HoleWish } from '../board.ts';
import type { CarcassContext, Counting } from '../context.ts';
import { gearSize, stockedRoom } from '../gear-size.ts';
import { fastenersOf, hardwareOf, pieceOf } from '../hardware.ts';
import type { FitProblem } from '../parts.ts';
import { badJoint, mmWords } from '../problem.ts';
import { type FittingParts, NO_PARTS, type Room, together } from '../solved.ts';
import { PIECES } from '../standard-pieces.ts';

/** One piece that holds a long thing: across the thing × along it × out from what it is bolted to. */
export interface HolderPiece {
  readonly role: string;
  readonly item: string;
  readonly across: number;
  readonly along: number;
  readonly out: number;
  /** Of `out`, what stands behind the thing that is held; the rest goes round it. */
  readonly saddle: number;
}

/** Something bolted to a wall of its opening that holds one item of gear. */
export interface Holder {
  readonly lying: Lying;
  /** From the near or lower end of what is held to the other. */
  readonly pieces: readonly HolderPiece[];
  /** The piece that the girth of what is held is compared with, or null. */
  readonly grip: string | null;
}

type HolderWall = 'back' | 'left' | 'right' | 'bottom';
interface Lie {
  readonly along: Axis;
  readonly out: Axis;
  readonly wall: HolderWall;
}

const LIES: { readonly [L in Lying]: Lie } = {
  'upright-back': { along: UP, out: DEEP, wall: 'back' },
  'upright-left': { along: UP, out: ACROSS, wall: 'left' },
  'upright-right': { along: UP, out: ACROSS, wall: 'right' },
  'across-back': { along: ACROSS, out: DEEP, wall: 'back' },
  'across-floor': { along: ACROSS, out: UP, wall: 'bottom' },
  'deep-left': { along: DEEP, out: ACROSS, wall: 'left' },
  'deep-right': { along: DEEP, out: ACROSS, wall: 'right' },
  'deep-floor': { along: DEEP, out: UP, wall: 'bottom' },
};
const BOLTS_A_PIECE = 2;

const crossOf = ({ along, out }: Lie): Axis => AXES.find((axis) => axis !== along && axis !== out) ?? ACROSS;

/** True where the wall is at the high end of its axis. */
const atHigh = (wall: HolderWall): boolean => wall === 'back' || wall === 'right';

const most = (pieces: readonly HolderPiece[], size: 'across' | 'out' | 'saddle'): number =>
  pieces.reduce((largest, piece) => Math.max(largest, piece[size]), 0);

/** What stands behind the thing, from the record: all of the piece less the largest thing that it goes round. */
export const saddleOf = (record: Hardware | undefined, out: number): number => out - (record?.holdsMm?.[1] ?? 0);

/** A record as a piece lying on its base: length across, width along, height out; nothing for an unknown one. */
export const clampPiece = (context: CarcassContext, role: string, item: string): HolderPiece => {
  const record = context.catalog.hardware.get(item);
  const [across, along, out] = record?.sizeMm ?? [0, 0, 0];
  return { role, item, across, along, out, saddle: saddleOf(record, out) };
};

const sized = (lie: Lie, along: number, across: number, out: number): Vec3 =>
  withAxis(withAxis(withAxis([0, 0, 0], lie.along, along), crossOf(lie), across), lie.out, out);

/** Least room of a holder: its pieces one after the other, and what it holds with hand room where that is counted. */
export const holderRoom = (
  holder: Holder,
  opening: Room['opening'],
  counting: Counting,
  context: CarcassContext,
): Vec3 => {
  const lie = LIES[holder.lying];
  const worth = context.rule('least-inside');
  const { pieces } = holder;
  const saddle = most(pieces, 'saddle');
  const along = pieces.reduce((sum, piece) => sum + piece.along, 0);
  const bare = sized(
    lie,
    Math.max(worth, along),
    Math.max(worth, most(pieces, 'across')),
    Math.max(saddle + worth, most(pieces, 'out')),
  );
  if (counting === 'built') return bare;
  const stocked = stockedRoom(context, opening.id);
  return largerOf(bare, withAxis(stocked, lie.out, stocked[lie.out] + saddle));
};

/** How far the gear in the opening reaches, or null where there is none. */
const heldSize = (context: CarcassContext, room: Room): Vec3 | null => {
  const list = context.gearIn(room.opening.id).flatMap(({ place, ...gear }) => {
    return place ? [add(place.at, gearSize({ ...gear, place }, place))] : [];
  });
  return list.length > 0 ? list.reduce(largerOf, [0, 0, 0]) : null;
};

/**
 * Where the thing lies: against the saddles, in the middle of the wall, standing on the floor where it is upright and
 * with its end at the front where it lies deep. All that is free while nothing is placed yet.
 */
const heldBox = (room: Room, lie: Lie, saddle: number, held: Vec3 | null): Box => {
  const { min, max } = room.box;
  const high = atHigh(lie.wall);
  const free: Box = high
    ? { min, max: withAxis(max, lie.out, max[lie.out] - saddle) }
    : { min: withAxis(min, lie.out, min[lie.out] + saddle), max };
  if (!held) return free;
  const space = boxSize(free);
  const size: Vec3 = [Math.min(held[0], space[0]), Math.min(held[1], space[1]), Math.min(held[2], space[2])];
  const from = AXES.reduce<Vec3>((at, axis) => {
    const spare = space[axis] - size[axis];
    if (axis === lie.out) return withAxis(at, axis, free.min[axis] + (high ? spare : 0));
    if (axis === lie.along && axis !== ACROSS) return at;
    return withAxis(at, axis, free.min[axis] + spare / 2);
  }, free.min);
  return boxAt(from, size);
};

interface PlacedPiece {
  readonly piece: HolderPiece;
  readonly box: Box;
}

/** The saddles against the wall, shared out evenly along what is held and no further than the room. */
const placePieces = (holder: Holder, room: Room, lie: Lie, held: Box): readonly PlacedPiece[] => {
  const { along, out, wall } = lie;
  const cross = crossOf(lie);
  const across = (held.min[cross] + held.max[cross]) / 2;
  const { pieces } = holder;
  const total = pieces.reduce((sum, piece) => sum + piece.along, 0);
  const length = Math.max(total, held.max[along] - held.min[along]);
  const low = Math.min(held.min[along], room.box.max[along] - length);
  const air = (length - total) / (pieces.length + 1);
  let at = low + air;
  return pieces.map((piece) => {
    const size = sized(lie, piece.along, piece.across, piece.saddle);
    const side = atHigh(wall) ? room.box.max[out] - piece.saddle : room.box.min[out];
    const from = withAxis(withAxis(withAxis(room.box.min, along, at), cross, across - piece.across / 2), out, side);
    at += piece.along + air;
    return { piece, box: boxAt(from, size) };
  });
};

/** Two bolt holes through the wall behind each piece. */
const boltHoles = (
  placed: readonly PlacedPiece[],
  room: Room,
  lie: Lie,
  context: CarcassContext,
): readonly HoleWish[] => {
  const wall = room.walls[lie.wall];
  if (!wall || !room.fits) return [];
  const cross = crossOf(lie);
  return placed.flatMap(({ piece, box }) => {
    const centre = withAxis(middle(box.min, box.max), lie.out, (atHigh(lie.wall) ? box.max : box.min)[lie.out]);
    return [-piece.across / 4, piece.across / 4].map((off) => ({
      board: wall.board.id,
      at: withAxis(centre, cross, centre[cross] + off),
      diameter: context.rule('clamp-bolt-hole'),
      depth: null,
      why: `${piece.item} bolt`,
    }));
  });
};

/** What is held must be as thick as the piece goes round. */
const girthProblems = (holder: Holder, room: Room, lie: Lie, context: CarcassContext): readonly FitProblem[] => {
  const record = holder.grip === null ? undefined : context.catalog.hardware.get(holder.grip);
  const range = record?.holdsMm;
  if (!record || !range) return [];
  const { id } = room.opening;
  return context.gearIn(id).flatMap((gear) => {
    if (!gear.place) return [];
    const size = gearSize(gear, gear.place);
    const girth = Math.min(size[crossOf(lie)], size[lie.out]);
    if (girth >= range[0] && girth <= range[1]) return [];
    const words = [
      `${record.name} goes round ${mmWords(range[0])} to ${mmWords(range[1])}`,
      `${gear.name} is ${mmWords(girth)}`,
    ];
    return [badJoint(id, words, girth < range[0] ? range[0] : range[1], girth)];
  });
};

/** A holder in its room: saddles, bolts and their holes, and the room of what it holds, which is as large as that. */
export const solveHolder = (holder: Holder, room: Room, context: CarcassContext): FittingParts => {
  const lie = LIES[holder.lying];
  const { mover, opening } = room;
  const { id } = opening;
  const held = heldBox(room, lie, most(holder.pieces, 'saddle'), heldSize(context, room));
  const known = holder.pieces.filter(({ item }) => context.catalog.hardware.get(item)?.sizeMm);
  const unknown = holder.pieces.flatMap(({ item }) => hardwareOf(context, item, id).problems);
  const placed = placePieces({ ...holder, pieces: known }, room, lie, held);
  const own: FittingParts = {
    ...NO_PARTS,
    holes: boltHoles(placed, room, lie, context),
    rooms: [
      {
        opening: id,
        level: 0,
        carcass: context.carcass.id,
        mover,
        pose: shift(held.min),
        size: boxSize(held),
        keeps: 'bracket',
      },
    ],
    problems: [
      ...unknown.filter(({ because }, i) => unknown.findIndex((other) => other.because[0] === because[0]) === i),
      ...(room.walls[lie.wall] === null ? [badJoint(id, [`holder meets no panel at its ${lie.wall}`])] : []),
      ...girthProblems(holder, room, lie, context),
    ],
  };
  return together([
    own,
    ...placed.map(({ piece, box }) =>
      pieceOf(context, { id: `${id}/${piece.role}`, origin: id, item: piece.item, quantity: 1, at: box, mover }),
    ),
    fastenersOf(context, {
      id: `${id}/clamp-bolts`,
      origin: id,
      item: PIECES.clamp,
      quantity: BOLTS_A_PIECE * placed.length,
      mover,
    }),
  ]);
};
