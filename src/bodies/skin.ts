import { type Box, boxAround, distance, ROUNDING_MM, type Vec3 } from '../base/index.ts';
import { nearestFeatures } from './features.ts';
import { findNearest, nearestDistance, nearestPair } from './nearest.ts';
import type { PreparedShell } from './prepared.ts';
import type { ConvexShape } from './shapes.ts';
import type { Triangle } from './shell.ts';
import { nearestOnTriangle, newBlend, newCorner, setCorner } from './simplex.ts';
import { walkNear } from './tree.ts';

/** A triangle as a flat body. */
export const asShape = (triangle: Triangle): ConvexShape => ({ vertices: triangle, faces: [], radius: 0 });

/** The skin nearest to the core of a body. */
export interface SkinNear {
  /** Distance of the core; Infinity where the skin is further than asked. 0 where it meets the skin. */
  readonly core: number;
  readonly from: Vec3;
  readonly to: Vec3;
  /** Triangles the core touches or crosses. */
  readonly met: readonly Triangle[];
}

/** Distance along the axis where the boxes of the triangle and of the body stand furthest apart: a lower bound. */
const aside = ([a, b, c]: Triangle, low: Vec3, high: Vec3): number => {
  let most = 0;
  for (const axis of [0, 1, 2] as const) {
    const under = low[axis] - Math.max(a[axis], b[axis], c[axis]);
    const over = Math.min(a[axis], b[axis], c[axis]) - high[axis];
    most = Math.max(most, under, over);
  }
  return most;
};

/** Finds the skin within `reach` of the core of the shape (its radius left out), with nearest points. */
export const nearSkin = (shape: ConvexShape, prepared: PreparedShell, reach: number): SkinNear => {
  const [start] = shape.vertices;
  if (!start) throw new RangeError('nearSkin: a shape without vertices');
  const { min, max } = boxAround(shape.vertices);
  const met: Triangle[] = [];
  let core = Infinity;
  let from = start;
  let to = start;
  const asked = (): number => Math.min(core, reach);
  const take = (found: number, p: Vec3, q: Vec3): void => {
    if (found < core) [core, from, to] = [found, p, q];
  };
  const look = (index: number): void => {
    const triangle = prepared.triangles[index];
    if (!triangle || aside(triangle, min, max) > asked()) return;
    const ending = findNearest(shape.vertices, triangle, asked());
    if (ending === 'apart') take(nearestDistance(), ...nearestPair());
    if (ending === 'apart' || ending === 'far') return;
    if (ending === 'unsure' || core > 0) {
      const plain = nearestFeatures(shape, asShape(triangle));
      const apart = ending === 'unsure' && plain.square > ROUNDING_MM ** 2;
      take(apart ? Math.sqrt(plain.square) : 0, plain.from, plain.to);
      if (apart) return;
    }
    met.push(triangle);
  };
  walkNear(prepared.root, min, max, asked, look);
  return { core, from, to, met };
};

const corners = [newCorner(), newCorner(), newCorner()] as const;
const blend = newBlend();

/**
 * The point of the skin nearest to `point` and its distance, or null as soon as it is known to be no further than
 * `enough`: a search for the deepest point need not finish with the shallow ones.
 */
export const nearestSkinPoint = (
  point: Vec3,
  prepared: PreparedShell,
  enough = -1,
): { readonly distance: number; readonly to: Vec3 } | null => {
  let best = Infinity;
  let to = point;
  const [p, q, r] = corners;
  const look = (index: number): void => {
    const triangle = prepared.triangles[index];
    if (!triangle || best <= enough) return;
    const [a, b, c] = triangle;
    setCorner(p, a, point);
    setCorner(q, b, point);
    setCorner(r, c, point);
    nearestOnTriangle(p, q, r, blend);
    const spot: Vec3 = [
      a[0] * blend.p + b[0] * blend.q + c[0] * blend.r,
      a[1] * blend.p + b[1] * blend.q + c[1] * blend.r,
      a[2] * blend.p + b[2] * blend.q + c[2] * blend.r,
    ];
    const found = distance(point, spot);
    if (found < best) [best, to] = [found, spot];
  };
  const reach = (): number => (best <= enough ? -1 : best);
  walkNear(prepared.root, point, point, reach, look);
  return best <= enough ? null : { distance: best, to };
};

/**
 * The triangles of the skin near a box, as flat bodies: the obstacles for something that turns inside the skin. They
 * tell a body on its way through the skin from one clear of it; how deep it stands outside, clearanceInside tells.
 */
export const skinShapes = (prepared: PreparedShell, { min, max }: Box): readonly ConvexShape[] => {
  const found: number[] = [];
  const look = (index: number): void => {
    const triangle = prepared.triangles[index];
    if (triangle && aside(triangle, min, max) === 0) found.push(index);
  };
  walkNear(prepared.root, min, max, () => 0, look);
  found.sort((p, q) => p - q);
  return found.flatMap((index) => {
    const triangle = prepared.triangles[index];
    return triangle ? [asShape(triangle)] : [];
  });
};
