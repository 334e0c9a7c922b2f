import { dot, ROUNDING_MM, subtract, type Vec2, type Vec3 } from '../../base/index.ts';
import { type ConvexShape, type HalfSpace, halfSpacesOf } from '../../bodies/index.ts';
import { type Sight, seenAt } from './projection.ts';
import { screenGrid } from './screen-grid.ts';
import type { Segment } from './visible-edges.ts';

/** A convex solid with plane faces in a line drawing, with lines on its faces: each with the way its face looks. */
export interface DrawnSolid<Item> {
  readonly item: Item;
  readonly shape: ConvexShape;
  readonly lines?: readonly { readonly from: Vec3; readonly to: Vec3; readonly normal: Vec3 }[];
}

interface Screen {
  readonly planes: readonly HalfSpace[];
  readonly low: Vec2;
  readonly high: Vec2;
  readonly near: number;
}

/** Less than any board is thick, more than rounding: an edge that lies in a face of another solid is seen (mm). */
const SKIN_MM = 1e3 * ROUNDING_MM;

const screenOf = (shape: ConvexShape, sight: Sight): Screen => {
  const points = shape.vertices.map((vertex) => seenAt(sight, vertex));
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return {
    planes: halfSpacesOf(shape),
    low: [Math.min(...xs), Math.min(...ys)],
    high: [Math.max(...xs), Math.max(...ys)],
    near: Math.min(...shape.vertices.map((vertex) => dot(subtract(vertex, sight.origin), sight.away))),
  };
};

/** What a plane leaves of a ring in the plane of (along the edge, towards the eye). */
const kept = (ring: readonly Vec2[], a: number, b: number, most: number): readonly Vec2[] => {
  const left: Vec2[] = [];
  let before = ring.at(-1);
  let there = before === undefined ? 0 : a * before[0] + b * before[1] - most;
  for (const point of ring) {
    const here = a * point[0] + b * point[1] - most;
    if (before !== undefined && here <= 0 !== there <= 0) {
      const t = there / (there - here);
      left.push([before[0] + (point[0] - before[0]) * t, before[1] + (point[1] - before[1]) * t]);
    }
    if (here <= 0) left.push(point);
    [before, there] = [point, here];
  }
  return left;
};

/**
 * Whether the whole strip from an edge to the eye lies outside one plane of a solid: most solids are told apart so,
 * without cutting anything.
 */
const isBefore = ({ normal, offset }: HalfSpace, from: Vec3, along: Vec3, away: Vec3, reach: number): boolean => {
  const own = dot(normal, from) - offset + SKIN_MM;
  const run = dot(normal, along);
  const rise = -dot(normal, away) * reach;
  return own + Math.min(0, run) + Math.min(0, rise) > 0;
};

/**
 * The part of an edge that a solid hides, as shares of its length, or null. A point is hidden where the line from it to
 * the eye passes through the solid: all such pairs of (share, way to the eye) make one convex region, cut out of a strip
 * by the planes of the solid, whose extent along the edge is the answer: exact for any direction of sight.
 */
const hiddenBy = ({ planes }: Screen, from: Vec3, to: Vec3, sight: Sight, reach: number): Vec2 | null => {
  const along = subtract(to, from);
  let ring: readonly Vec2[] = [
    [0, 0],
    [1, 0],
    [1, reach],
    [0, reach],
  ];
  if (planes.some((plane) => isBefore(plane, from, along, sight.away, reach))) return null;
  for (const { normal, offset } of planes) {
    ring = kept(ring, dot(normal, along), -dot(normal, sight.away), offset - SKIN_MM - dot(normal, from));
    if (ring.length < 3) return null;
  }
  const shares = ring.map(([share]) => share);
  const [low, high] = [Math.min(...shares), Math.max(...shares)];
  return high > low ? [low, high] : null;
};

type Span = readonly [number, number];

/** The spans of [0, 1] that no hidden span covers. */
const openSpans = (hidden: readonly Span[]): readonly Span[] => {
  const open: Span[] = [];
  let at = 0;
  for (const [from, to] of hidden.toSorted((a, b) => a[0] - b[0])) {
    if (from > at) open.push([at, from]);
    at = Math.max(at, to);
  }
  return at < 1 ? [...open, [at, 1]] : open;
};

/** The edges of a solid that do not lie behind itself: those with a face beside them that looks at the eye. */
const frontEdges = ({ vertices, faces }: ConvexShape, sight: Sight): readonly (readonly [Vec3, Vec3])[] => {
  const seen = new Map<string, readonly [number, number]>();
  faces.forEach((face) => {
    const normal = halfSpacesOf({ vertices, faces: [face], radius: 0 })[0]?.normal;
    if (!normal || dot(normal, sight.away) >= -ROUNDING_MM) return;
    face.forEach((a, i) => {
      const b = face[(i + 1) % face.length] ?? a;
      seen.set(a < b ? `${a} ${b}` : `${b} ${a}`, [a, b]);
    });
  });
  return [...seen.values()].flatMap(([a, b]) => {
    const [from, to] = [vertices[a], vertices[b]];
    return from && to ? [[from, to] as const] : [];
  });
};

const extentOf = (values: readonly number[]): number => {
  let [low, high] = [0, 0];
  values.forEach((value, i) => {
    low = i === 0 ? value : Math.min(low, value);
    high = i === 0 ? value : Math.max(high, value);
  });
  return high - low;
};

const meets = (a: Segment, { low, high }: Screen): boolean =>
  Math.max(a[0][0], a[1][0]) > low[0] &&
  Math.min(a[0][0], a[1][0]) < high[0] &&
  Math.max(a[0][1], a[1][1]) > low[1] &&
  Math.min(a[0][1], a[1][1]) < high[1];

/** A look at solids from one side: what is seen of them. */
export interface Look<Item> {
  readonly edges: readonly { readonly item: Item; readonly from: Vec2; readonly to: Vec2 }[];
  /** Whether a point of one of the solids is in sight. */
  readonly sees: (point: Vec3, item: Item) => boolean;
}

/** The lines that a person would draw of solids seen from any side: edges in sight, and lines on faces in sight. */
export const lookAt = <Item>(solids: readonly DrawnSolid<Item>[], sight: Sight): Look<Item> => {
  const screens = solids.map(({ shape }) => screenOf(shape, sight));
  const near = screenGrid(screens);
  const depths = solids.flatMap(({ shape }) => shape.vertices.map((vertex) => dot(vertex, sight.away)));
  const reach = extentOf(depths) + 1;
  const covers = (own: number, from: Vec3, to: Vec3): readonly Span[] => {
    const flat: Segment = [seenAt(sight, from), seenAt(sight, to)];
    const far = Math.max(...[from, to].map((point) => dot(subtract(point, sight.origin), sight.away)));
    return near(flat).flatMap((i): readonly Span[] => {
      const screen = screens[i];
      if (!screen || i === own || screen.near >= far || !meets(flat, screen)) return [];
      const hidden = hiddenBy(screen, from, to, sight, reach);
      return hidden === null ? [] : [hidden];
    });
  };
  const edges = solids.flatMap(({ item, shape, lines = [] }, own) => {
    const facing = lines.filter(({ normal }) => dot(normal, sight.away) < -ROUNDING_MM);
    const drawn = [...frontEdges(shape, sight), ...facing.map(({ from, to }) => [from, to] as const)];
    return drawn.flatMap(([from, to]) => {
      const [a, b] = [seenAt(sight, from), seenAt(sight, to)];
      const at = (share: number): Vec2 => [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share];
      const long = Math.hypot(b[0] - a[0], b[1] - a[1]);
      return openSpans(covers(own, from, to))
        .filter(([low, high]) => (high - low) * long > SKIN_MM)
        .map(([low, high]) => ({ item, from: at(low), to: at(high) }));
    });
  });
  const placeOf = new Map(solids.map(({ item }, i) => [item, i] as const).toReversed());
  return {
    edges,
    sees: (point, item) => {
      const own = placeOf.get(item) ?? -1;
      // A point is an edge that is almost without length.
      const beside: Vec3 = [point[0] + sight.right[0], point[1] + sight.right[1], point[2] + sight.right[2]];
      return covers(own, point, beside).every(([low]) => low > SKIN_MM);
    },
  };
};
