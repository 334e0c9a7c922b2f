import { sameLength } from '../base/index.ts';
import type { EdgeBands, PanelCut } from './parts.ts';

type Span = readonly [number, number];

/** A cut or a band seen as numbers, so that it can be turned over and compared. */
interface Mark {
  readonly what: string;
  /** The face that it starts from, or null when it is the same from both. */
  readonly face: 'a' | 'b' | null;
  readonly x: Span;
  readonly y: Span;
  readonly depth: number;
}

const around = (middle: number, diameter: number): Span => [middle - diameter / 2, middle + diameter / 2];

const markOf = (cut: PanelCut): Mark => {
  if (cut.kind === 'cutout') return { what: 'cutout', face: null, x: [0, 0], y: [0, 0], depth: 0 };
  if (cut.kind !== 'hole')
    return {
      what: 'recess',
      face: cut.face,
      x: [cut.from[0], cut.to[0]],
      y: [cut.from[1], cut.to[1]],
      depth: cut.depth,
    };
  const [x, y] = [around(cut.at[0], cut.diameter), around(cut.at[1], cut.diameter)];
  return { what: 'hole', face: cut.depth === null ? null : cut.face, x, y, depth: cut.depth ?? 0 };
};

const bandMarks = (bands: EdgeBands, length: number, width: number): readonly Mark[] => {
  const places: readonly (readonly [string | null, Span, Span])[] = [
    [bands.l1, [0, length], [0, 0]],
    [bands.l2, [0, length], [width, width]],
    [bands.w1, [0, 0], [0, width]],
    [bands.w2, [length, length], [0, width]],
  ];
  return places.flatMap(([band, x, y]) => (band === null ? [] : [{ what: band, face: null, x, y, depth: 0 }]));
};

const sameSpan = (a: Span, b: Span): boolean => sameLength(a[0], b[0]) && sameLength(a[1], b[1]);

const sameMark = (a: Mark, b: Mark): boolean =>
  a.what === b.what && a.face === b.face && sameLength(a.depth, b.depth) && sameSpan(a.x, b.x) && sameSpan(a.y, b.y);

const sameMarks = (a: readonly Mark[], b: readonly Mark[]): boolean =>
  a.every((mark) => b.some((other) => sameMark(mark, other)));

/**
 * True when the mirrored part is the same part turned in space, so that left and right need no telling apart: cuts
 * and bands look alike after mirroring end for end, edge for edge or face for face, or after a mirrored half turn.
 * For full rectangles; a panel with cut-outs counts as handed, since the side that is seen matters there.
 */
export const servesBothHands = (
  cuts: readonly PanelCut[],
  bands: EdgeBands,
  length: number,
  width: number,
): boolean => {
  if (cuts.some((cut) => cut.kind === 'cutout')) return false;
  const marks = [...cuts.map(markOf), ...bandMarks(bands, length, width)];
  const endForEnd = (mark: Mark): Mark => ({ ...mark, x: [length - mark.x[1], length - mark.x[0]] });
  const edgeForEdge = (mark: Mark): Mark => ({ ...mark, y: [width - mark.y[1], width - mark.y[0]] });
  const faceForFace = (mark: Mark): Mark =>
    mark.face === null ? mark : { ...mark, face: mark.face === 'a' ? 'b' : 'a' };
  const halfTurn = (mark: Mark): Mark => faceForFace(endForEnd(edgeForEdge(mark)));
  return [endForEnd, edgeForEdge, faceForFace, halfTurn].some((mirror) => sameMarks(marks, marks.map(mirror)));
};
