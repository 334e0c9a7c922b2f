import { type Polygon, ROUNDING_MM, type Vec2 } from '../base/index.ts';

interface Edge {
  readonly low: number;
  readonly high: number;
}

/** Height of the line through two corners over u. */
const heightAt = ([u0, v0]: Vec2, [u1, v1]: Vec2, u: number): number => v0 + ((u - u0) / (u1 - u0)) * (v1 - v0);

/**
 * An outline that does not cross itself as convex pieces that fill it and touch along upright lines: it is cut at the u
 * of every corner, and between two cuts its edges, in order of height, pair up as floor and roof.
 */
export const convexSlabs = (outline: Polygon): readonly Polygon[] => {
  const cuts = outline.map(([u]) => u).toSorted((a, b) => a - b);
  const pieces: Polygon[] = [];
  cuts.forEach((from, i) => {
    const to = cuts[i + 1];
    if (to === undefined || to - from <= ROUNDING_MM) return;
    const edges: Edge[] = outline.flatMap((a, k) => {
      const b = outline[(k + 1) % outline.length] ?? a;
      const spans = Math.min(a[0], b[0]) <= from + ROUNDING_MM && Math.max(a[0], b[0]) >= to - ROUNDING_MM;
      return spans && a[0] !== b[0] ? [{ low: heightAt(a, b, from), high: heightAt(a, b, to) }] : [];
    });
    edges.sort((p, q) => p.low + p.high - (q.low + q.high));
    for (let k = 0; k + 1 < edges.length; k += 2) {
      const [floor, roof] = [edges[k], edges[k + 1]];
      if (!floor || !roof) continue;
      const piece: readonly Vec2[] = [
        [from, floor.low],
        [to, floor.high],
        [to, roof.high],
        [from, roof.low],
      ];
      const kept = piece.filter((corner, c) => {
        const before = piece.at(c - 1) ?? corner;
        return Math.hypot(corner[0] - before[0], corner[1] - before[1]) > ROUNDING_MM;
      });
      if (kept.length > 2) pieces.push(kept);
    }
  });
  return pieces;
};
