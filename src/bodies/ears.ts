import { orient2d } from 'robust-predicates';
import { type Polygon, signedArea, type Vec2 } from '../base/index.ts';

/** Positive for a left turn; the predicate itself counts the other way. */
const turn = (a: Vec2, b: Vec2, c: Vec2): number => -orient2d(a[0], a[1], b[0], b[1], c[0], c[1]);

const sameSpot = (a: Vec2, b: Vec2): boolean => a[0] === b[0] && a[1] === b[1];

/** True when p lies in the anticlockwise triangle or on its rim, but not on one of its corners. */
const covers = (a: Vec2, b: Vec2, c: Vec2, p: Vec2): boolean =>
  !sameSpot(p, a) &&
  !sameSpot(p, b) &&
  !sameSpot(p, c) &&
  turn(a, b, p) >= 0 &&
  turn(b, c, p) >= 0 &&
  turn(c, a, p) >= 0;

interface Around {
  readonly before: Vec2;
  readonly tip: Vec2;
  readonly after: Vec2;
}

const around = (ring: readonly number[], corners: Polygon, i: number): Around => {
  const pick = (step: number): Vec2 => {
    const corner = corners[ring[(i + step + ring.length) % ring.length] ?? -1];
    if (!corner) throw new RangeError(`earTriangles: no corner at ${i + step}`);
    return corner;
  };
  return { before: pick(-1), tip: pick(0), after: pick(1) };
};

const isEar = (ring: readonly number[], corners: Polygon, i: number): boolean => {
  const { before, tip, after } = around(ring, corners, i);
  if (!(turn(before, tip, after) > 0)) return false;
  return ring.every((index) => {
    const corner = corners[index];
    return corner === undefined || !covers(before, tip, after, corner);
  });
};

/** A corner without area can go at any time: it takes nothing away. */
const isStraight = (ring: readonly number[], corners: Polygon, i: number): boolean => {
  const { before, tip, after } = around(ring, corners, i);
  return turn(before, tip, after) === 0;
};

/**
 * A ring cut into triangles of its own corners, all turning as the ring turns, by clipping ears with exact predicates.
 * Repeated and straight corners are allowed (their triangles have no area). Throws RangeError on a ring that crosses
 * itself so that no ear is left.
 */
export const earTriangles = (polygon: Polygon): readonly (readonly [number, number, number])[] => {
  const flip = signedArea(polygon) < 0;
  const ring = polygon.map((_, i) => i);
  if (flip) ring.reverse();
  const triangles: [number, number, number][] = [];
  while (ring.length > 2) {
    let i = ring.findIndex((_, k) => isEar(ring, polygon, k));
    if (i < 0) i = ring.findIndex((_, k) => isStraight(ring, polygon, k));
    if (i < 0) throw new RangeError(`earTriangles: ring of ${polygon.length} corners crosses itself`);
    const [p, q, r] = [-1, 0, 1].map((step) => ring[(i + step + ring.length) % ring.length] ?? 0);
    if (p === undefined || q === undefined || r === undefined) break;
    triangles.push(flip ? [r, q, p] : [p, q, r]);
    ring.splice(i, 1);
  }
  return triangles;
};
