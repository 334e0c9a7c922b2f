import { type Polygon, ROUNDING_MM, sameLength, type Vec2 } from '../../base/index.ts';
import type { Silhouette } from './projection.ts';

export type Segment = readonly [Vec2, Vec2];

const along = ([from, to]: Segment, t: number): Vec2 => [
  from[0] + (to[0] - from[0]) * t,
  from[1] + (to[1] - from[1]) * t,
];

/**
 * The part of a segment strictly inside a convex ring, as parameters, or null. A segment that only touches the ring
 * or runs along an edge of it is outside (Cyrus–Beck clipping).
 */
const inside = (segment: Segment, ring: Polygon): readonly [number, number] | null => {
  let [enter, leave] = [0, 1];
  for (const [i, a] of ring.entries()) {
    const b = ring[(i + 1) % ring.length] ?? a;
    const edge: Vec2 = [b[0] - a[0], b[1] - a[1]];
    const size = Math.hypot(edge[0], edge[1]);
    // Distance to the left of the edge, which is inwards on an anticlockwise ring.
    const off = (p: Vec2): number => (edge[0] * (p[1] - a[1]) - edge[1] * (p[0] - a[0])) / size;
    const [start, end] = [off(segment[0]), off(segment[1])];
    if (start <= ROUNDING_MM && end <= ROUNDING_MM) return null;
    if (start < 0) enter = Math.max(enter, start / (start - end));
    if (end < 0) leave = Math.min(leave, start / (start - end));
  }
  return leave > enter ? [enter, leave] : null;
};

/** How much of the segments runs strictly inside a convex ring. */
export const lengthInside = (segments: readonly Segment[], ring: Polygon): number =>
  segments.reduce((sum, segment) => {
    const within = inside(segment, ring);
    const [a, b] = segment;
    return within === null ? sum : sum + (within[1] - within[0]) * Math.hypot(b[0] - a[0], b[1] - a[1]);
  }, 0);

/** Pieces of the segment that the ring leaves in sight. */
const uncovered = (segment: Segment, ring: Polygon): readonly Segment[] => {
  const hidden = inside(segment, ring);
  if (hidden === null) return [segment];
  const [enter, leave] = hidden;
  const before: Segment = [segment[0], along(segment, enter)];
  const after: Segment = [along(segment, leave), segment[1]];
  return [before, after].filter(([a, b]) => Math.hypot(b[0] - a[0], b[1] - a[1]) > ROUNDING_MM);
};

/** Whether `front` stands before `back`: nearer at its nearest, or as near and less deep. Equals hide nothing of each other. */
export const standsBefore = (front: Silhouette<unknown>, back: Silhouette<unknown>): boolean =>
  sameLength(front.near, back.near) ? front.far < back.far - ROUNDING_MM : front.near < back.near;

/** Outlines with what nearer outlines cover taken away: what a person would draw, in lines alone and no fills. */
export const visibleEdges = <Item>(
  silhouettes: readonly Silhouette<Item>[],
): readonly { readonly item: Item; readonly from: Vec2; readonly to: Vec2 }[] =>
  silhouettes.flatMap((body) => {
    const nearer = silhouettes.filter((other) => other !== body && standsBefore(other, body));
    return body.ring.flatMap((from, i) => {
      const to = body.ring[(i + 1) % body.ring.length] ?? from;
      const seen = nearer.reduce<readonly Segment[]>(
        (pieces, { ring }) => pieces.flatMap((piece) => uncovered(piece, ring)),
        [[from, to]],
      );
      return seen.map((piece) => ({ item: body.item, from: piece[0], to: piece[1] }));
    });
  });
