import { type Box, radians, type Vec3 } from '../../base/index.ts';
import type { Material } from '../../catalog/index.ts';
import { ACROSS, type Axis, DEEP, RIGHT, TO_FACE, UP, UPWARD, withAxis } from '../axes.ts';
import type { Board } from '../board.ts';
import type { CarcassContext } from '../context.ts';
import { frontPiece, isLetIn } from '../let-in.ts';
import type { Mover, PartId } from '../parts.ts';
import { type FittingParts, NO_PARTS, type Room, together } from '../solved.ts';

/** The edge that a leaf turns about. */
export type Hung = 'left' | 'right' | 'top' | 'bottom';

/** A flat leaf that turns out of the face about a line before its outer edge on the hung side. */
export interface Leaf {
  readonly room: Room;
  readonly hung: Hung;
  readonly name: string;
  readonly sheet: Material;
  /** Stowed, in carcass coordinates. */
  readonly box: Box;
  readonly mover: PartId;
  /** What carries it: the mover that its room moves with, or a carriage of its own. */
  readonly carrier: PartId | null;
  /** How far the hinge line stands before the outer face. */
  readonly proud: number;
  /** How far from the hinge line anything may reach that swings past the frame on the free side. */
  readonly radius: number;
}

/** True when the leaf turns about an upright line. */
export const isUpright = (hung: Hung): boolean => hung === 'left' || hung === 'right';

/** The axis that runs from the hung edge to the free one, and the axis that both edges lie along. */
export const overLeaf = (hung: Hung): Axis => (isUpright(hung) ? ACROSS : UP);
export const alongEdge = (hung: Hung): Axis => (isUpright(hung) ? UP : ACROSS);

/** True when the hung edge is the low one on its axis. */
export const hungLow = (hung: Hung): boolean => hung === 'left' || hung === 'bottom';

/** Position of the hung edge on the axis over the leaf, and of the free one. */
export const hungAt = ({ hung, box }: Pick<Leaf, 'hung' | 'box'>): number =>
  (hungLow(hung) ? box.min : box.max)[overLeaf(hung)];
export const freeAt = ({ hung, box }: Pick<Leaf, 'hung' | 'box'>): number =>
  (hungLow(hung) ? box.max : box.min)[overLeaf(hung)];

/** Something `over` from the hung edge and `deep` behind the outer face: how far it is from the hinge line. */
export const reachOf = (over: number, deep: number, proud: number): number => Math.hypot(over, deep + proud);

/** How far from the hung edge something `deep` behind the outer face may reach so that it stays within the radius. */
export const overWithin = (radius: number, deep: number, proud: number): number =>
  Math.sqrt(Math.max(0, radius ** 2 - (deep + proud) ** 2));

/**
 * The hinge line stands half the gap between moving parts before the outer face, so that a leaf folded right back keeps
 * the gap from the frame.
 */
export const proudOf = ({ rule }: Pick<CarcassContext, 'rule'>): number => rule('gap-moving-parts') / 2;

export const leafBoard = ({ room, hung, name, sheet, box }: Leaf, band: string | null): Board => ({
  id: `${room.opening.id}/front`,
  origin: room.opening.id,
  role: 'front',
  name: `${name} front`,
  material: sheet,
  box,
  along: isUpright(hung) ? UPWARD : RIGHT,
  face: TO_FACE,
  seat: 'rabbet',
  side: hung === 'left' || hung === 'right' ? hung : null,
  band: band === null ? null : { item: band, on: 'all-edges' },
});

/** About these a positive turn takes the leaf out of the face. */
const AXES_OUT: { readonly [H in Hung]: Vec3 } = {
  left: [0, 0, -1],
  right: [0, 0, 1],
  top: [-1, 0, 0],
  bottom: [1, 0, 0],
};

/** The leaf as a mover: it turns about its outer edge, and holds the rests given in degrees. */
export const turningOut = (
  leaf: Leaf,
  travelDeg: number,
  rests: readonly { readonly name: string; readonly deg: number }[],
): Mover => ({
  id: leaf.mover,
  origin: leaf.room.opening.id,
  name: leaf.name,
  motion: {
    kind: 'turn',
    point: withAxis(withAxis(leaf.box.min, overLeaf(leaf.hung), hungAt(leaf)), DEEP, leaf.box.min[DEEP] - leaf.proud),
    axis: AXES_OUT[leaf.hung],
    travelRad: radians(travelDeg),
  },
  carriedBy: leaf.carrier,
  rests: rests.map(({ name, deg }) => ({ name, share: deg / travelDeg })),
});

type EdgeItem = readonly [role: string, item: string | null];

const sizesOf = (context: CarcassContext, items: readonly EdgeItem[]): readonly Vec3[] =>
  items.flatMap(([, item]) => (item === null ? [] : [context.catalog.hardware.get(item)?.sizeMm ?? [0, 0, 0]]));

/** Across × up that latch and lock take side by side along the free edge, and how far they reach in from the face. */
export const edgeNeed = (context: CarcassContext, hung: Hung, items: readonly EdgeItem[]): Vec3 => {
  const sizes = sizesOf(context, items);
  const most = (axis: Axis): number => Math.max(0, ...sizes.map((size) => size[axis]));
  const sum = (axis: Axis): number => sizes.reduce((total, size) => total + size[axis], 0);
  // On the front a piece lies with its length across, its width up and its height into the leaf.
  return isUpright(hung) ? [most(0), most(2), sum(1)] : [sum(0), most(2), most(1)];
};

/** How far from the hung edge the screw holes of a hinge reach: the middle of a flange, a quarter of the open width. */
export const hingeReach = ({ catalog, rule }: CarcassContext, hinge: string): number =>
  (catalog.hardware.get(hinge)?.sizeMm?.[1] ?? 0) / 4 + rule('hinge-screw-hole') / 2;

/**
 * Greatest distance of latch and lock from the hinge line where each lies on the leaf as near to it as it can: what is
 * let in keeps off the screws of the hinge.
 */
export const edgeRadius = (
  context: CarcassContext,
  { hung, hinge, least }: { readonly hung: Hung; readonly hinge: string; readonly least: number },
  items: readonly EdgeItem[],
): number =>
  items
    .map(([, item]) => {
      const record = item === null ? null : (context.catalog.hardware.get(item) ?? null);
      const size = record?.sizeMm ?? [0, 0, 0];
      const from = isLetIn(record) ? hingeReach(context, hinge) : 0;
      return item === null
        ? 0
        : reachOf(from + size[isUpright(hung) ? 0 : 1], Math.max(size[2], least), proudOf(context));
    })
    .reduce((most, each) => Math.max(most, each), 0);

/** Latch and lock in the middle of the free edge, as near to it as they swing past the frame, reaching in from the outer face. */
export const edgePieces = (context: CarcassContext, leaf: Leaf, items: readonly EdgeItem[]): FittingParts => {
  const { hung, box, room, mover } = leaf;
  const { id } = room.opening;
  const [over, along] = [overLeaf(hung), alongEdge(hung)];
  const inward = hungLow(hung) ? -1 : 1;
  const total = edgeNeed(context, hung, items)[along];
  const across = box.max[over] - box.min[over];
  let from = (box.min[along] + box.max[along] - total) / 2;
  const pieces = items.flatMap(([role, item]): readonly FittingParts[] => {
    if (item === null) return [];
    const size = context.catalog.hardware.get(item)?.sizeMm ?? null;
    const [length, width] = size ?? [0, 0];
    const [overSize, alongSize] = isUpright(hung) ? [length, width] : [width, length];
    const middle = withAxis(box.min, along, from + alongSize / 2);
    const reach = Math.min(across, overWithin(leaf.radius, size?.[2] ?? 0, leaf.proud));
    const at = withAxis(middle, over, freeAt(leaf) + inward * (across - reach + overSize / 2));
    from += alongSize;
    const boards = [leafBoard(leaf, null)];
    return [frontPiece(context, { id: `${id}/${role}`, origin: id, item, mover, at, boards }, 'inward')];
  });
  return pieces.length > 0 ? together(pieces) : NO_PARTS;
};
