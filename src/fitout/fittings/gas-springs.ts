import { boxAround, type Vec2, type Vec3 } from '../../base/index.ts';
import { capsuleShape } from '../../bodies/index.ts';
import type { Hardware } from '../../catalog/index.ts';
import type { CarcassContext } from '../context.ts';
import { hardwareOf, pieceOf } from '../hardware.ts';
import { badJoint } from '../problem.ts';
import { type FittingParts, NO_PARTS, together } from '../solved.ts';
import type { Leaf } from './leaf.ts';

/** Where a spring is fixed, from the hinge line: deep into the carcass, and down from it. */
export interface SpringPlan {
  readonly radius: number;
  /** On the wall, and on the leaf while it is closed. */
  readonly wall: Vec2;
  readonly leaf: Vec2;
}

/** The record of a gas spring that takes room, or null where there is none. */
export const springRecord = (context: CarcassContext, item: string | null): Hardware | null => {
  const record = item === null ? undefined : context.catalog.hardware.get(item);
  return record?.kind === 'gas-spring' && record.sizeMm ? record : null;
};

/**
 * Where a spring of the record is fixed so that it is just at full length when the leaf stands open and has closed by
 * its stroke when it is shut. It acts on the leaf one stroke below the hinge line and `depth` behind it, which lies `above` the opening; the point on
 * the wall is the deeper one that is both distances away. Null where no point is, as for a leaf that hardly turns.
 */
export const springPlan = (
  context: CarcassContext,
  record: Hardware,
  opensRad: number,
  { depth, above }: { readonly depth: number; readonly above: number },
): SpringPlan | null => {
  const [full, thick] = record.sizeMm ?? [0, 0];
  const stroke = full * context.rule('gas-spring-stroke-share');
  const radius = thick / 2;
  const closed: Vec2 = [depth + radius, stroke];
  // Turned out of the face: down goes to the front, deep goes down.
  const [sin, cos] = [Math.sin(opensRad), Math.cos(opensRad)];
  const open: Vec2 = [closed[0] * cos - closed[1] * sin, closed[0] * sin + closed[1] * cos];
  const wall = farPoint(closed, full - stroke, open, full);
  return wall && wall[1] >= radius + above ? { radius, wall, leaf: closed } : null;
};

/** The deeper of the two points that are `ra` from a and `rb` from b. */
const farPoint = (a: Vec2, ra: number, b: Vec2, rb: number): Vec2 | null => {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const apart = Math.hypot(dx, dy);
  const along = (apart ** 2 + ra ** 2 - rb ** 2) / (2 * apart);
  const square = ra ** 2 - along ** 2;
  if (!(apart > 0 && square >= 0)) return null;
  const off = Math.sqrt(square);
  const foot: Vec2 = [a[0] + (dx * along) / apart, a[1] + (dy * along) / apart];
  const [x, y] = [(off * dy) / apart, (off * dx) / apart];
  return foot[0] + x > foot[0] - x ? [foot[0] + x, foot[1] - y] : [foot[0] - x, foot[1] + y];
};

/** How deep and how far down from the hinge line the springs reach. */
export const springReach = ({ radius, wall, leaf }: SpringPlan): Vec2 => [
  Math.max(wall[0], leaf[0]) + radius,
  Math.max(wall[1], leaf[1]) + radius,
];

/**
 * A pair of gas springs, one along each wall, as capsules between their points while the leaf is closed. They stay
 * with the carcass. A leaf that does not reach the springs, or a plan that cannot be met, is a problem.
 */
export const gasSprings = (
  context: CarcassContext,
  leaf: Leaf,
  item: string,
  plan: SpringPlan | null,
): FittingParts => {
  const { room, box } = leaf;
  const { id } = room.opening;
  const { record, problems } = hardwareOf(context, item, id);
  if (!record) return { ...NO_PARTS, problems };
  const { mover } = room;
  if (!plan)
    return together([
      pieceOf(context, { id: `${id}/springs`, origin: id, item, quantity: 2, at: box.min, mover }),
      { problems: [badJoint(id, [`${record.id} finds no place for the turn of the leaf`])] },
    ]);
  const short = (['left', 'right'] as const).filter((side) => room.walls[side] === null);
  const beside = [room.box.min[0] + plan.radius, room.box.max[0] - plan.radius] as const;
  const covered = beside[0] >= box.min[0] && beside[1] <= box.max[0];
  const point = (across: number, [deep, down]: Vec2): Vec3 => [
    across,
    box.min[1] - leaf.proud + deep,
    box.max[2] - down,
  ];
  const each = beside.map((across, i): FittingParts => {
    const part = `${id}/spring-${i === 0 ? 'left' : 'right'}`;
    const [from, to] = [point(across, plan.wall), point(across, plan.leaf)];
    const piece = pieceOf(context, { id: part, origin: id, item, quantity: 1, at: boxAround([from, to]), mover });
    return {
      ...piece,
      bodies: piece.bodies.map((body) => ({ ...body, shape: capsuleShape(from, to, plan.radius) })),
    };
  });
  return together([
    ...each,
    {
      problems: [
        ...short.map((side) => badJoint(id, [`${record.id} meets no panel at its ${side}`])),
        ...(covered ? [] : [badJoint(id, [`${record.id} stands beside the leaf`])]),
      ],
    },
  ]);
};
