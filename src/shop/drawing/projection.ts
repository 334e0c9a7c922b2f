import { dot, type Polygon, subtract, type Vec2, type Vec3 } from '../../base/index.ts';
import type { ConvexShape } from '../../bodies/index.ts';

/** Looking straight along `away`: what is drawn to the right, up, and how far off it is. Unit vectors, right-handed. */
export interface Sight {
  readonly origin: Vec3;
  readonly right: Vec3;
  readonly up: Vec3;
  readonly away: Vec3;
}

/** What is seen of one convex body: its outline, anticlockwise, and its nearest and farthest depth. */
export interface Silhouette<Item> {
  readonly item: Item;
  readonly ring: Polygon;
  readonly near: number;
  readonly far: number;
}

export const seenAt = ({ origin, right, up }: Sight, point: Vec3): Vec2 => {
  const from = subtract(point, origin);
  return [dot(from, right), dot(from, up)];
};

const turn = (o: Vec2, a: Vec2, b: Vec2): number => (a[0] - o[0]) * (b[1] - o[1]) - (a[1] - o[1]) * (b[0] - o[0]);

/** Half of a hull: points in the given order, kept while they turn left. */
const chain = (points: readonly Vec2[]): readonly Vec2[] => {
  const kept: Vec2[] = [];
  for (const point of points) {
    for (let [o, a] = [kept.at(-2), kept.at(-1)]; o && a && turn(o, a, point) <= 0; [o, a] = [kept.at(-2), kept.at(-1)])
      kept.pop();
    kept.push(point);
  }
  return kept.slice(0, -1);
};

/** The convex outline of points, anticlockwise, without points on its edges (monotone chain, Andrew 1979). */
export const convexOutline = (points: readonly Vec2[]): Polygon => {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  return [...chain(sorted), ...chain(sorted.reverse())];
};

/** Corners of the many-sided figure that stands for a circle on paper: 5° a side. */
const ROUND_SIDES = 72;

const grown = (points: readonly Vec2[], radius: number): readonly Vec2[] =>
  radius === 0
    ? points
    : points.flatMap(([x, y]) =>
        Array.from({ length: ROUND_SIDES }, (_, i): Vec2 => {
          const angleRad = (2 * Math.PI * i) / ROUND_SIDES;
          return [x + radius * Math.cos(angleRad), y + radius * Math.sin(angleRad)];
        }),
      );

export const silhouetteOf = <Item>(item: Item, shape: ConvexShape, sight: Sight): Silhouette<Item> => {
  const depths = shape.vertices.map((vertex) => dot(subtract(vertex, sight.origin), sight.away));
  const points = shape.vertices.map((vertex) => seenAt(sight, vertex));
  return {
    item,
    ring: convexOutline(grown(points, shape.radius)),
    near: Math.min(...depths) - shape.radius,
    far: Math.max(...depths) + shape.radius,
  };
};
