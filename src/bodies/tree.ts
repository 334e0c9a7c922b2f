import type { Vec3 } from '../base/index.ts';
import type { Triangle } from './shell.ts';

/** A box around some triangles; a leaf holds them by index, an inner node holds two nodes. */
export interface TreeNode {
  readonly low: Vec3;
  readonly high: Vec3;
  readonly leaf: readonly number[] | null;
  readonly left: TreeNode | null;
  readonly right: TreeNode | null;
}

/** A triangle costs about as much to look at as two boxes, so leaves are small. */
const LEAF_SIZE = 4;

const AXES = [0, 1, 2] as const;

const boundsOf = (triangles: readonly Triangle[], members: readonly number[]): readonly [Vec3, Vec3] => {
  const low: [number, number, number] = [Infinity, Infinity, Infinity];
  const high: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  for (const index of members)
    for (const corner of triangles[index] ?? [])
      for (const axis of AXES) {
        low[axis] = Math.min(low[axis], corner[axis]);
        high[axis] = Math.max(high[axis], corner[axis]);
      }
  return [low, high];
};

const middleOn = (triangles: readonly Triangle[], index: number, axis: 0 | 1 | 2): number =>
  (triangles[index] ?? []).reduce((sum, corner) => sum + corner[axis], 0);

const grow = (triangles: readonly Triangle[], members: readonly number[]): TreeNode => {
  const [low, high] = boundsOf(triangles, members);
  if (members.length <= LEAF_SIZE) return { low, high, leaf: members, left: null, right: null };
  const size = AXES.map((axis) => high[axis] - low[axis]);
  const axis = AXES.reduce((widest, k) => ((size[k] ?? 0) > (size[widest] ?? 0) ? k : widest));
  const order = [...members].sort((p, q) => middleOn(triangles, p, axis) - middleOn(triangles, q, axis) || p - q);
  const half = order.length >> 1;
  return {
    low,
    high,
    leaf: null,
    left: grow(triangles, order.slice(0, half)),
    right: grow(triangles, order.slice(half)),
  };
};

/** A tree of boxes over the triangles, halved along the longest side at each step. Null for no triangles. */
export const growTree = (triangles: readonly Triangle[]): TreeNode | null =>
  triangles.length === 0
    ? null
    : grow(
        triangles,
        triangles.map((_, i) => i),
      );

/** Squared gap between a node's box and the box low–high. */
export const nodeGapSquare = (node: TreeNode, low: Vec3, high: Vec3): number => {
  const x = Math.max(node.low[0] - high[0], low[0] - node.high[0], 0);
  const y = Math.max(node.low[1] - high[1], low[1] - node.high[1], 0);
  const z = Math.max(node.low[2] - high[2], low[2] - node.high[2], 0);
  return x * x + y * y + z * z;
};

/**
 * Shows `look` the triangles whose boxes come within `reach()` of the box low–high, the nearer branch first. `reach`
 * is asked again at every node, so a search may tighten it as it finds.
 */
export const walkNear = (
  node: TreeNode,
  low: Vec3,
  high: Vec3,
  reach: () => number,
  look: (index: number) => void,
): void => {
  if (node.leaf) {
    for (const index of node.leaf) look(index);
    return;
  }
  const { left, right } = node;
  if (!left || !right) return;
  const toLeft = nodeGapSquare(left, low, high);
  const toRight = nodeGapSquare(right, low, high);
  const [first, second] = toLeft <= toRight ? [left, right] : [right, left];
  if (Math.sqrt(Math.min(toLeft, toRight)) <= reach()) walkNear(first, low, high, reach, look);
  if (Math.sqrt(Math.max(toLeft, toRight)) <= reach()) walkNear(second, low, high, reach, look);
};

/** Shows `look` the triangles whose boxes the ray from `point` along +x may meet. */
export const walkAhead = (node: TreeNode, point: Vec3, look: (index: number) => void): void => {
  if (node.high[0] < point[0] || node.low[1] > point[1] || node.high[1] < point[1]) return;
  if (node.low[2] > point[2] || node.high[2] < point[2]) return;
  if (node.leaf) for (const index of node.leaf) look(index);
  if (node.left) walkAhead(node.left, point, look);
  if (node.right) walkAhead(node.right, point, look);
};
