import { type Polygon, ROUNDING_MM, signedArea, type Vec2 } from '../../base/index.ts';

const turn = (a: Vec2, b: Vec2, c: Vec2): number => (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

const isConvex = (ring: Polygon): boolean => {
  const sign = Math.sign(signedArea(ring));
  return ring.every((a, i) => {
    const [b = a, c = a] = [ring[(i + 1) % ring.length], ring[(i + 2) % ring.length]];
    return sign * turn(a, b, c) >= -(ROUNDING_MM ** 2);
  });
};

/** Where an edge that spans an upright strip meets its two ends, lower middle first when sorted. */
interface Span {
  readonly left: Vec2;
  readonly right: Vec2;
}

const spansOf = (ring: Polygon, from: number, to: number): readonly Span[] =>
  ring
    .flatMap((a, i): readonly Span[] => {
      const b = ring[(i + 1) % ring.length] ?? a;
      const [low, high] = a[0] < b[0] ? [a, b] : [b, a];
      if (low[0] > from || high[0] < to || low[0] === high[0]) return [];
      const at = (x: number): Vec2 => [x, low[1] + ((high[1] - low[1]) * (x - low[0])) / (high[0] - low[0])];
      return [{ left: at(from), right: at(to) }];
    })
    .sort((a, b) => a.left[1] + a.right[1] - (b.left[1] + b.right[1]));

/**
 * A ring as convex rings that do not overlap and together fill it: itself where it is convex, else upright strips
 * between its corners, each cut where the ring runs through it.
 */
export const convexPieces = (ring: Polygon): readonly Polygon[] => {
  if (isConvex(ring)) return [ring];
  const xs = [...new Set(ring.map(([x]) => x))].sort((a, b) => a - b);
  return xs
    .slice(1)
    .flatMap((to, i) => {
      const spans = spansOf(ring, xs[i] ?? to, to);
      return spans.flatMap((below, k): readonly Polygon[] => {
        const above = spans[k + 1];
        if (k % 2 === 1 || !above) return [];
        const corners = [below.left, below.right, above.right, above.left];
        return [
          corners.filter(
            (corner, j) =>
              Math.hypot(...([0, 1] as const).map((axis) => corner[axis] - (corners[(j + 1) % 4]?.[axis] ?? 0))) >
              ROUNDING_MM,
          ),
        ];
      });
    })
    .filter((piece) => piece.length > 2);
};
