import { middle, type Vec3 } from '../../base/index.ts';
import type { Hardware } from '../../catalog/index.ts';
import { DEEP, withAxis } from '../axes.ts';
import type { HoleWish } from '../board.ts';
import type { CarcassContext } from '../context.ts';
import { fastenersOf, hardwareOf, pieceOf } from '../hardware.ts';
import type { PartId } from '../parts.ts';
import { badJoint } from '../problem.ts';
import { type FittingParts, NO_PARTS, together } from '../solved.ts';
import { PIECES } from '../standard-pieces.ts';
import { alongEdge, hungAt, hungLow, type Leaf, overLeaf } from './leaf.ts';

const MM_PER_METRE = 1000;

/** What the other flange is screwed to: a board, and where its surface lies on the axis over the leaf. */
export interface HingeWall {
  readonly board: PartId;
  readonly thickness: number;
  readonly at: number;
  /** Where it begins behind the face. */
  readonly from: number;
}

/** The board of the room beside the hung edge, or null where there is none. */
export const hingeWall = ({ hung, room }: Leaf): HingeWall | null => {
  const wall = room.walls[hung];
  const at = (hungLow(hung) ? room.box.min : room.box.max)[overLeaf(hung)];
  return wall && { board: wall.board.id, thickness: wall.board.material.thicknessMm, at, from: room.box.min[DEEP] };
};

/** `count` places spread evenly from `first` to `length − first`. */
const spread = (length: number, first: number, count: number): readonly number[] =>
  Array.from({ length: count }, (_, i) => first + ((length - 2 * first) * i) / (count - 1));

/** Places along an edge, the outer ones `first` from its ends and none further apart than `pitch`. */
const placesAlong = (length: number, first: number, pitch: number): readonly number[] => {
  const from = Math.min(first, length / 4);
  return spread(length, from, 1 + Math.max(1, Math.ceil((length - 2 * from) / pitch)));
};

/** Centres of single hinges along an edge; empty for a hinge by the metre, which takes the whole edge. */
const centresOf = ({ by }: Hardware, length: number, { rule }: CarcassContext): readonly number[] =>
  by === 'metre' ? [] : placesAlong(length, rule('hinge-first'), rule('hinge-apart'));

/** Screws of one flange along the edge: at the pitch of a piano hinge, or two to each single hinge. */
export const hingeScrews = (hinge: Hardware, length: number, context: CarcassContext): readonly number[] => {
  const pitch = context.rule('hinge-screw-pitch');
  if (hinge.by === 'metre') return placesAlong(length, pitch / 2, pitch);
  const half = (hinge.sizeMm?.[0] ?? 0) / 4;
  return centresOf(hinge, length, context).flatMap((at) => [at - half, at + half]);
};

const holesOf = (
  context: CarcassContext,
  leaf: Leaf,
  hinge: Hardware,
  wall: HingeWall | null,
  places: readonly number[],
): readonly HoleWish[] => {
  const { box, hung, room, sheet } = leaf;
  const [over, along] = [overLeaf(hung), alongEdge(hung)];
  // The middle of a flange: a quarter of the open width from the line.
  const flange = (hinge.sizeMm?.[1] ?? 0) / 4;
  const common = { diameter: context.rule('hinge-screw-hole'), why: `${hinge.id} screw` };
  const deep = (thickness: number): number => Math.min(context.rule('pilot-depth'), thickness / 2);
  return places.flatMap((place): readonly HoleWish[] => {
    const edge = withAxis(withAxis(box.min, along, box.min[along] + place), over, hungAt(leaf));
    const onLeaf = withAxis(edge, over, edge[over] + (hungLow(hung) ? flange : -flange));
    const own: HoleWish = { ...common, board: `${room.opening.id}/front`, at: onLeaf, depth: deep(sheet.thicknessMm) };
    if (!wall || !room.fits) return [own];
    const onWall: Vec3 = withAxis(withAxis(edge, over, wall.at), DEEP, wall.from + flange);
    return [own, { ...common, board: wall.board, at: onWall, depth: deep(wall.thickness) }];
  });
};

/**
 * The hinges of a leaf: on the pick list by the piece or by the metre of the hung edge, their mass on the hinge line,
 * and screw holes in the outer face of the leaf and in the board beside it. They take no room worth counting. Single
 * hinges stand the first distance of the house rules from the ends and no further apart than it lets them.
 */
export const hingeParts = (context: CarcassContext, leaf: Leaf, item: string, wall: HingeWall | null): FittingParts => {
  const { box, hung, room } = leaf;
  const { id } = room.opening;
  const { record, problems } = hardwareOf(context, item, id);
  if (!record) return { ...NO_PARTS, problems };
  const [over, along] = [overLeaf(hung), alongEdge(hung)];
  const length = box.max[along] - box.min[along];
  const quantity = record.by === 'metre' ? length / MM_PER_METRE : centresOf(record, length, context).length;
  const edge = withAxis(box.min, over, hungAt(leaf));
  const at = middle(edge, withAxis(edge, along, box.max[along]));
  const places = hingeScrews(record, length, context);
  const mover = leaf.carrier;
  const own: FittingParts = {
    ...NO_PARTS,
    holes: holesOf(context, leaf, record, wall, places),
    problems: wall ? [] : [badJoint(id, [`${record.id} meets no panel at its ${hung}`])],
  };
  return together([
    own,
    pieceOf(context, { id: `${id}/hinge`, origin: id, item, quantity, at, mover }),
    fastenersOf(context, {
      id: `${id}/hinge-screws`,
      origin: id,
      item: PIECES.hinge,
      quantity: places.length * 2,
      mover,
    }),
  ]);
};
