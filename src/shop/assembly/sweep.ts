import { type Box, boxAround, boxVolume, dot, ROUNDING_SHARE, scale, type Vec3 } from '../../base/index.ts';
import {
  boxShape,
  type ConvexShape,
  clippedShape,
  convexVolume,
  halfSpacesOf,
  shapeBox,
  sweptShape,
} from '../../bodies/index.ts';

/** A convex piece with its box, and whether it fills that box. */
export interface Block {
  readonly shape: ConvexShape;
  readonly box: Box;
  readonly square: boolean;
}

/** A round bar is taken as the box around it. */
export const blockOf = (shape: ConvexShape): Block => {
  const box = shapeBox(shape);
  if (shape.radius > 0 || shape.faces.length === 0) return { shape: boxShape(box), box, square: true };
  const [own, around] = [convexVolume(shape).volumeMm3, boxVolume(box)];
  return { shape, box, square: Math.abs(around - own) <= around * ROUNDING_SHARE };
};

/**
 * What a joint may overlap and still go together (mm): far below any clearance that a shop would see, far above the
 * rounding of a few turned coordinates.
 */
const SLACK_MM = 0.02;

const apart = (a: Box, b: Box): boolean =>
  ([0, 1, 2] as const).some((i) => Math.min(a.max[i], b.max[i]) - Math.max(a.min[i], b.min[i]) <= SLACK_MM);

/** Whether two pieces share room; touching is not sharing. */
const share = (a: Block, b: Block): boolean => {
  if (apart(a.box, b.box)) return false;
  if (a.square && b.square) return true;
  const shrunk = halfSpacesOf(b.shape).map(({ normal, offset }) => ({ normal, offset: offset - SLACK_MM }));
  return clippedShape(a.shape, shrunk) !== null;
};

const sweptBlock = ({ shape, box, square }: Block, along: Vec3): Block => {
  const around = boxAround([
    box.min,
    box.max,
    ...[box.min, box.max].map((corner): Vec3 => [corner[0] + along[0], corner[1] + along[1], corner[2] + along[2]]),
  ]);
  const onAxis = along.filter((mm) => Math.abs(mm) > SLACK_MM).length === 1;
  if (square && onAxis) return { shape: boxShape(around), box: around, square: true };
  return { shape: sweptShape(shape, along), box: around, square: false };
};

export const anyShare = (some: readonly Block[], others: readonly Block[]): boolean =>
  some.some((a) => others.some((b) => share(a, b)));

/** A thing of several pieces with the box around them all. */
export interface Lump {
  readonly blocks: readonly Block[];
  readonly box: Box;
}

export const lumpOf = (blocks: readonly Block[]): Lump => ({
  blocks,
  box: boxAround(blocks.flatMap(({ box }) => [box.min, box.max])),
});

/** What a thing passes through on its way straight along `way` (length 1) for `reach`. */
export const sweptLump = ({ blocks }: Lump, way: Vec3, reach: number): Lump =>
  lumpOf(blocks.map((block) => sweptBlock(block, scale(way, reach))));

/** Whether pieces of two things share room; touching is not sharing. */
export const lumpsShare = (a: Lump, b: Lump): boolean => !apart(a.box, b.box) && anyShare(a.blocks, b.blocks);

/** From where to where a thing reaches along a way, mm. */
export const spanAlong = ({ blocks }: Lump, way: Vec3): readonly [number, number] => {
  const along = blocks.flatMap(({ shape }) => shape.vertices.map((vertex) => dot(vertex, way)));
  return [Math.min(...along), Math.max(...along)];
};
