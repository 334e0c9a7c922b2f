import { type Box, boxSize, inverse, type Pose, placed, type Vec2, type Vec3 } from '../base/index.ts';
import type { HalfSpace } from '../bodies/index.ts';
import type { Material } from '../catalog/index.ts';
import type { NodeId } from '../design/index.ts';
import { AXES, type Axis, DEEP, type Direction, third, vectorOf } from './axes.ts';
import type { EdgeBands, PanelFace, PartId } from './parts.ts';

/**
 * A rectangular panel while its assembly is being solved: a box in carcass coordinates that includes whatever is
 * housed in its neighbours. The order of boards in an assembly says who gives way: a board is recessed for every
 * later board that stands in it.
 */
export interface Board {
  readonly id: PartId;
  readonly origin: NodeId;
  readonly role: string;
  readonly name: string;
  readonly material: Material;
  readonly box: Box;
  /** Where panel x points: along the grain. */
  readonly along: Direction;
  /** Where face a looks. */
  readonly face: Direction;
  /** What is cut for this board in the boards it stands in. */
  readonly seat: 'dado' | 'groove' | 'rabbet';
  /** The side of its assembly that it stands on, where it has one. */
  readonly side: 'left' | 'right' | null;
  /** Edge band on the edge that looks out of the open face, on all four edges, or none. */
  readonly band: { readonly item: string; readonly on: 'face-edge' | 'all-edges' } | null;
  /** Planes that cut it, in carcass coordinates; the box reaches to the longest points of what is left. */
  readonly clips?: readonly HalfSpace[];
  /** Boxes cut right out of it from an edge, in carcass coordinates. */
  readonly notches?: readonly Box[];
}

/** A hole wanted in a board at a point of its surface, in carcass coordinates. */
export interface HoleWish {
  readonly board: PartId;
  readonly at: Vec3;
  readonly diameter: number;
  /** Null goes through. */
  readonly depth: number | null;
  readonly why: string;
}

/** An opening wanted right through a board: the box that it takes out of it, in carcass coordinates. */
export interface CutoutWish {
  readonly board: PartId;
  /** The node that wants it, where a problem with it is told. */
  readonly origin: NodeId;
  readonly box: Box;
  /** Round ones touch the box on all sides. */
  readonly shape: 'rectangle' | 'circle';
  readonly cornerRadius: number;
  readonly why: string;
}

export const boardAcross = (board: Board): Direction => third(board.face, board.along);

/** Length (panel x), width (panel y) and thickness (panel z). */
export const boardSize = (board: Board): Vec3 => {
  const size = boxSize(board.box);
  return [size[board.along.axis], size[boardAcross(board).axis], size[board.face.axis]];
};

/** From panel coordinates to carcass coordinates. */
export const boardPose = (board: Board): Pose => {
  const directions = [board.along, boardAcross(board), board.face];
  const start = (axis: Axis): number =>
    directions.some((direction) => direction.axis === axis && direction.sign > 0)
      ? board.box.min[axis]
      : board.box.max[axis];
  const [x, y, z] = [vectorOf(board.along), vectorOf(boardAcross(board)), vectorOf(board.face)];
  return { turn: [x, y, z], at: [start(0), start(1), start(2)] };
};

/** A box of carcass coordinates in panel coordinates. */
export const inPanel = (board: Board, box: Box): Box => {
  const back = inverse(boardPose(board));
  const [a, b] = [placed(back, box.min), placed(back, box.max)];
  const low = (axis: Axis): number => Math.min(a[axis], b[axis]);
  const high = (axis: Axis): number => Math.max(a[axis], b[axis]);
  return { min: [low(0), low(1), low(2)], max: [high(0), high(1), high(2)] };
};

/** A box of panel coordinates in carcass coordinates. */
export const inCarcass = (board: Board, box: Box): Box => {
  const pose = boardPose(board);
  const [a, b] = [placed(pose, box.min), placed(pose, box.max)];
  const low = (axis: Axis): number => Math.min(a[axis], b[axis]);
  const high = (axis: Axis): number => Math.max(a[axis], b[axis]);
  return { min: [low(0), low(1), low(2)], max: [high(0), high(1), high(2)] };
};

/** The point of a hole in panel coordinates and the face it starts from. */
export const holeInPanel = (board: Board, at: Vec3): { readonly at: Vec2; readonly face: PanelFace } => {
  const [x, y, z] = placed(inverse(boardPose(board)), at);
  return { at: [x, y], face: z * 2 > boardSize(board)[2] ? 'a' : 'b' };
};

const BARE: EdgeBands = { l1: null, l2: null, w1: null, w2: null };

/** Bands by edge. */
export const boardBands = (board: Board): EdgeBands => {
  const { band, along } = board;
  if (band === null) return BARE;
  const { item, on } = band;
  if (on === 'all-edges') return { l1: item, l2: item, w1: item, w2: item };
  const across = boardAcross(board);
  if (across.axis === DEEP) return across.sign > 0 ? { ...BARE, l1: item } : { ...BARE, l2: item };
  if (along.axis === DEEP) return along.sign > 0 ? { ...BARE, w1: item } : { ...BARE, w2: item };
  return BARE;
};

/** The edge band of a carcass as a band on face edges. */
export const faceBand = (item: string | null): Board['band'] => (item === null ? null : { item, on: 'face-edge' });

/** True when every size of the board is a size. */
export const isBoard = (board: Board): boolean => AXES.every((axis) => board.box.max[axis] > board.box.min[axis]);
