import { add, cross, ROUNDING_MM, scale, subtract, type Vec3 } from '../../base/index.ts';

/** One anchor of a group: where it is, and whether it stands in the floor or in a wall. */
export interface GroupAnchor {
  readonly at: Vec3;
  readonly on: 'floor' | 'wall';
}

/** What a carcass stands on: a rectangle of the floor, its edges being the lines that it tips about. */
export interface Footprint {
  readonly min: readonly [number, number];
  readonly max: readonly [number, number];
  readonly z: number;
}

export interface PointForce {
  readonly at: Vec3;
  readonly force: Vec3;
}

/** What holds a carcass under one force: by anchor in their order, and where the floor bears. Forces on the carcass. */
export interface GroupForces {
  readonly anchors: readonly Vec3[];
  readonly bearing: readonly PointForce[];
}

const NONE: Vec3 = [0, 0, 0];
const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

/** Moments of the anchors below this (mm²) hold no turn: they stand in one place or on one line. */
const NO_ARM_MM2 = ROUNDING_MM;

/** Forces on a list of anchors, added up step by step. */
type Sum = readonly Vec3[];
const plus = (sum: Sum, force: (i: number) => Vec3): Sum => sum.map((own, i) => add(own, force(i)));

/** The level part of a force along x or y: tipping about the edge that it pushes towards, then sliding, then turning. */
const underPush = (
  anchors: readonly GroupAnchor[],
  foot: Footprint,
  push: number,
  axis: 0 | 1,
  centre: Vec3,
): GroupForces | null => {
  const way = Math.sign(push);
  const toe = way > 0 ? foot.max[axis] : foot.min[axis];
  const lever = ({ at, on }: GroupAnchor): number => (on === 'floor' ? way * (toe - at[axis]) : at[2] - foot.z);
  const levers = anchors.map(lever);
  const square = levers.reduce((sum, own) => sum + own ** 2, 0);
  const floor = anchors.flatMap(({ on }, i) => (on === 'floor' ? [i] : []));
  if (square <= NO_ARM_MM2 || floor.length === 0) return null;
  // Elastic about the toe line: each takes in proportion to its own lever.
  const tip = Math.abs(push) * Math.max(0, centre[2] - foot.z);
  const pull = levers.map((own) => (tip * own) / square);
  const along = (value: number): Vec3 => (axis === 0 ? [value, 0, 0] : [0, value, 0]);
  let sum: Sum = anchors.map(({ on }, i) => (on === 'floor' ? [0, 0, -(pull[i] ?? 0)] : along(-way * (pull[i] ?? 0))));
  const taken = sum.reduce((total, force) => total + force[axis], 0);
  const share = -(push + taken) / floor.length;
  sum = plus(sum, (i) => (anchors[i]?.on === 'floor' ? along(share) : NONE));
  const turned = heldAgainstTurning(anchors, floor, sum, { at: centre, force: along(push) });
  if (!turned) return null;
  const up = floor.reduce((total, i) => total + (pull[i] ?? 0), 0);
  const other = axis === 0 ? 1 : 0;
  const middle = floor.reduce((total, i) => total + (pull[i] ?? 0) * (anchors[i]?.at[other] ?? 0), 0) / (up || 1);
  const point: Vec3 = axis === 0 ? [toe, middle, foot.z] : [middle, toe, foot.z];
  return { anchors: turned, bearing: up === 0 ? [] : [{ at: point, force: [0, 0, up] }] };
};

/** Adds the shear that keeps the group from turning about an upright line: M r / Σ r² at each anchor of the floor. */
const heldAgainstTurning = (
  anchors: readonly GroupAnchor[],
  floor: readonly number[],
  sum: Sum,
  push: PointForce,
): Sum | null => {
  const ats = floor.map((i) => anchors[i]?.at ?? NONE);
  const middle: Vec3 = [mean(ats.map(([x]) => x)), mean(ats.map(([, y]) => y)), 0];
  const turnOf = (at: Vec3, force: Vec3): number => cross(subtract(at, middle), force)[2];
  const turn = anchors.reduce((total, { at }, i) => total + turnOf(at, sum[i] ?? NONE), turnOf(push.at, push.force));
  const polar = ats.reduce((total, [x, y]) => total + (x - middle[0]) ** 2 + (y - middle[1]) ** 2, 0);
  if (polar <= NO_ARM_MM2) return Math.abs(turn) <= NO_ARM_MM2 ? sum : null;
  return sum.map((own, i) => {
    const at = anchors[i]?.at;
    if (!at || !floor.includes(i)) return own;
    const [dx, dy] = [at[0] - middle[0], at[1] - middle[1]];
    return add(own, scale([-dy, dx, 0], -turn / polar));
  });
};

/** A pull upward: spread over all anchors like stress over a section, so that force and both moments are met. */
const underPull = (anchors: readonly GroupAnchor[], pull: number, centre: Vec3): GroupForces | null => {
  const [mx, my] = [mean(anchors.map(({ at }) => at[0])), mean(anchors.map(({ at }) => at[1]))];
  const [ex, ey] = [centre[0] - mx, centre[1] - my];
  const offs = anchors.map(({ at }) => [at[0] - mx, at[1] - my] as const);
  const [xx, yy, xy] = [
    offs.reduce((sum, [x]) => sum + x * x, 0),
    offs.reduce((sum, [, y]) => sum + y * y, 0),
    offs.reduce((sum, [x, y]) => sum + x * y, 0),
  ];
  const det = xx * yy - xy ** 2;
  const straight = Math.hypot(ex, ey) <= ROUNDING_MM;
  if (det <= NO_ARM_MM2 && !straight) return null;
  const [b, c] = straight ? [0, 0] : [(ex * yy - ey * xy) / det, (ey * xx - ex * xy) / det];
  return { anchors: offs.map(([x, y]): Vec3 => [0, 0, -pull * (1 / anchors.length + b * x + c * y)]), bearing: [] };
};

/**
 * What each anchor of a carcass takes when a force acts at its centre of mass, elastic and with gravity left out. The
 * level part is taken apart into x and y, each tipping about the edge of the footprint that it pushes towards: anchors
 * of the floor pull down, each in proportion to its distance d from that edge, T = M d / Σ d², those in a wall pull back in
 * proportion to their height. What is left of the push is shared by the anchors of the floor, and turning about an
 * upright line adds M r / Σ r². An upward force is spread like stress over a section; a downward one bears on the
 * floor. Forces and moments balance exactly. Null where the anchors cannot hold: none in the floor, or all on one spot
 * or line while something turns about it. Newtons and millimetres.
 */
export const groupForces = (anchors: readonly GroupAnchor[], foot: Footprint, load: PointForce): GroupForces | null => {
  const [fx, fy, fz] = load.force;
  const parts: (GroupForces | null)[] = [];
  if (anchors.length === 0) return null;
  if (fx !== 0) parts.push(underPush(anchors, foot, fx, 0, load.at));
  if (fy !== 0) parts.push(underPush(anchors, foot, fy, 1, load.at));
  if (fz > 0) parts.push(underPull(anchors, fz, load.at));
  const bears: readonly PointForce[] = fz < 0 ? [{ at: [load.at[0], load.at[1], foot.z], force: [0, 0, -fz] }] : [];
  let all: GroupForces = { anchors: anchors.map(() => NONE), bearing: bears };
  for (const part of parts) {
    if (!part) return null;
    all = {
      anchors: plus(all.anchors, (i) => part.anchors[i] ?? NONE),
      bearing: [...all.bearing, ...part.bearing],
    };
  }
  return all;
};
