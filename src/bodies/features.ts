import type { Vec3 } from '../base/index.ts';
import type { ConvexShape } from './shapes.ts';
import { type Corner, nearestOnTriangle, newBlend, newCorner, setCorner } from './simplex.ts';
import { topologyOf, vertexOf } from './topology.ts';

/** Two nearest points and the square of their distance. */
export interface FeaturePair {
  readonly square: number;
  readonly from: Vec3;
  readonly to: Vec3;
}

const blendOf = (p: Vec3, q: Vec3, r: Vec3, shares: readonly [number, number, number]): Vec3 => [
  p[0] * shares[0] + q[0] * shares[1] + r[0] * shares[2],
  p[1] * shares[0] + q[1] * shares[1] + r[1] * shares[2],
  p[2] * shares[0] + q[2] * shares[1] + r[2] * shares[2],
];

/**
 * Nearest points of two convex shapes that do not overlap, cores only (radii left out), by looking at every vertex
 * against every triangle and every edge against every edge. Slow and plain: the last resort where rounding defeats
 * the quick walk, and the twin it is tested against.
 */
export const nearestFeatures = (a: ConvexShape, b: ConvexShape): FeaturePair => {
  let best: FeaturePair = { square: Infinity, from: vertexOf(a, 0), to: vertexOf(b, 0) };
  const corners: readonly [Corner, Corner, Corner] = [newCorner(), newCorner(), newCorner()];
  const out = newBlend();
  const look = (a1: Vec3, b1: Vec3, a2: Vec3, b2: Vec3, a3: Vec3, b3: Vec3): void => {
    const [p, q, r] = corners;
    setCorner(p, a1, b1);
    setCorner(q, a2, b2);
    setCorner(r, a3, b3);
    nearestOnTriangle(p, q, r, out);
    if (!(out.square < best.square)) return;
    const shares = [out.p, out.q, out.r] as const;
    best = { square: out.square, from: blendOf(a1, a2, a3, shares), to: blendOf(b1, b2, b3, shares) };
  };
  for (const p of a.vertices) for (const q of b.vertices) look(p, q, p, q, p, q);
  for (const [i, j] of topologyOf(a).edges) {
    const [p, q] = [vertexOf(a, i), vertexOf(a, j)];
    for (const r of b.vertices) look(p, r, q, r, q, r);
    for (const [k, l] of topologyOf(b).edges) {
      const [r, s] = [vertexOf(b, k), vertexOf(b, l)];
      look(p, r, q, r, q, s);
      look(p, r, p, s, q, s);
    }
  }
  for (const [i, j] of topologyOf(b).edges)
    for (const p of a.vertices) look(p, vertexOf(b, i), p, vertexOf(b, j), p, vertexOf(b, j));
  for (const [i, j, k] of topologyOf(a).triangles)
    for (const p of b.vertices) look(vertexOf(a, i), p, vertexOf(a, j), p, vertexOf(a, k), p);
  for (const [i, j, k] of topologyOf(b).triangles)
    for (const p of a.vertices) look(p, vertexOf(b, i), p, vertexOf(b, j), p, vertexOf(b, k));
  return best;
};
