import type { Polygon, Vec2 } from '../base/index.ts';
import type { FaceRect } from './pieces-around.ts';

const ends = (values: readonly number[]): readonly number[] => [...new Set(values)].sort((a, b) => a - b);

const isStraight = ([ax, ay]: Vec2, [bx, by]: Vec2, [cx, cy]: Vec2): boolean =>
  (ax === bx && bx === cx) || (ay === by && by === cy);

/**
 * The outline of a rectangle of length × width less rectangles cut into it from its edges, anticlockwise. Null where
 * nothing is left, or where what is left is not one piece without a hole.
 */
export const ringAround = (length: number, width: number, cuts: readonly FaceRect[]): Polygon | null => {
  const xs = ends([0, length, ...cuts.flatMap(({ from, to }) => [from[0], to[0]])]);
  const ys = ends([0, width, ...cuts.flatMap(({ from, to }) => [from[1], to[1]])]);
  const isWood = (i: number, j: number): boolean => {
    const [x0, x1, y0, y1] = [xs[i], xs[i + 1], ys[j], ys[j + 1]];
    if (x0 === undefined || x1 === undefined || y0 === undefined || y1 === undefined) return false;
    return !cuts.some(({ from, to }) => from[0] <= x0 && to[0] >= x1 && from[1] <= y0 && to[1] >= y1);
  };
  const at = (i: number, j: number): Vec2 => [xs[i] ?? 0, ys[j] ?? 0];
  // Every edge between wood and none, with the wood at its left; from each point one goes on.
  const onward = new Map<string, Vec2>();
  let edges = 0;
  const edge = (from: Vec2, to: Vec2): void => {
    edges += 1;
    onward.set(from.join(' '), to);
  };
  for (let i = 0; i < xs.length - 1; i++)
    for (let j = 0; j < ys.length - 1; j++) {
      if (!isWood(i, j)) continue;
      if (!isWood(i, j - 1)) edge(at(i, j), at(i + 1, j));
      if (!isWood(i + 1, j)) edge(at(i + 1, j), at(i + 1, j + 1));
      if (!isWood(i, j + 1)) edge(at(i + 1, j + 1), at(i, j + 1));
      if (!isWood(i - 1, j)) edge(at(i, j + 1), at(i, j));
    }
  const [first] = onward.values();
  if (!first) return null;
  const ring: Vec2[] = [first];
  for (let next = onward.get(first.join(' ')); next && next.join(' ') !== first.join(' '); ) {
    ring.push(next);
    next = onward.get(next.join(' '));
  }
  if (ring.length !== edges) return null;
  return ring.filter((point, k) => {
    const [before, after] = [ring.at(k - 1), ring[(k + 1) % ring.length]];
    return !(before && after && isStraight(before, point, after));
  });
};
