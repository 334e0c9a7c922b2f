import type { Vec2 } from '../base/index.ts';

/** A rectangle of a panel's face, low corner to high corner. */
export interface FaceRect {
  readonly from: Vec2;
  readonly to: Vec2;
}

type Span = readonly [number, number];

/** What is left of a span after the spans that are taken out of it. */
const leftOf = (whole: Span, taken: readonly Span[]): readonly Span[] => {
  const left: Span[] = [];
  let from = whole[0];
  for (const [low, high] of taken.toSorted((a, b) => a[0] - b[0])) {
    if (low > from) left.push([from, low]);
    from = Math.max(from, high);
  }
  if (whole[1] > from) left.push([from, whole[1]]);
  return left;
};

const sameSpans = (a: readonly Span[], b: readonly Span[]): boolean =>
  a.length === b.length && a.every(([low, high], i) => low === b[i]?.[0] && high === b[i]?.[1]);

/**
 * A rectangle of length × width less the holes in it, as rectangles that do not overlap: upright strips between the
 * ends of the holes, neighbours of the same height joined. Holes reach no further than the rectangle.
 */
export const piecesAround = (length: number, width: number, holes: readonly FaceRect[]): readonly FaceRect[] => {
  const xs = [...new Set([0, length, ...holes.flatMap(({ from, to }) => [from[0], to[0]])])].sort((a, b) => a - b);
  const strips: { readonly from: number; to: number; readonly spans: readonly Span[] }[] = [];
  xs.slice(1).forEach((right, i) => {
    const left = xs[i] ?? right;
    const here = holes.filter(({ from, to }) => from[0] <= left && to[0] >= right);
    const spans = leftOf(
      [0, width],
      here.map(({ from, to }): Span => [from[1], to[1]]),
    );
    const before = strips.at(-1);
    if (before && sameSpans(before.spans, spans)) before.to = right;
    else strips.push({ from: left, to: right, spans });
  });
  return strips.flatMap(({ from, to, spans }) =>
    spans.map(([low, high]): FaceRect => ({ from: [from, low], to: [to, high] })),
  );
};
