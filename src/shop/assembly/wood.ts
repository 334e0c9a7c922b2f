import { type Box, type Polygon, ROUNDING_MM, type Vec2 } from '../../base/index.ts';
import { boxShape, type ConvexShape, clippedShape, type HalfSpace, shapeAt } from '../../bodies/index.ts';
import { type FitOut, foldedPanels } from '../../fitout/index.ts';
import { convexPieces } from './convex-pieces.ts';

export type Panel = FitOut['panels'][number];

/** The plane of a bevelled edge, in panel coordinates: through the end of the long face's edge and the set of the other. */
const bevelPlane = (panel: Panel, bevel: NonNullable<Panel['bevels']>[number]): HalfSpace => {
  const { edge, longFace, setMm, landMm = 0 } = bevel;
  const t = panel.thickness - landMm;
  const slope = Math.hypot(t, setMm);
  const out = edge === 'l2' || edge === 'w2' ? 1 : -1;
  const reach = edge === 'w2' ? panel.length : edge === 'l2' ? panel.width : 0;
  const across = (out * t) / slope;
  const rise = ((longFace === 'a' ? -1 : 1) * setMm) / slope;
  const z = longFace === 'a' ? t : landMm;
  const along = edge === 'l1' || edge === 'l2';
  return { normal: along ? [0, across, rise] : [across, 0, rise], offset: across * reach + rise * z };
};

/** The planes of the edges of a convex ring, in panel coordinates. */
const ringPlanes = (outline: Polygon): readonly HalfSpace[] => {
  const middle: Vec2 = [
    outline.reduce((sum, [x]) => sum + x, 0) / outline.length,
    outline.reduce((sum, [, y]) => sum + y, 0) / outline.length,
  ];
  return outline.flatMap((from, i): readonly HalfSpace[] => {
    const to = outline[(i + 1) % outline.length] ?? from;
    const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
    if (long <= ROUNDING_MM) return [];
    const square: Vec2 = [(to[1] - from[1]) / long, (from[0] - to[0]) / long];
    const outward = square[0] * (middle[0] - from[0]) + square[1] * (middle[1] - from[1]) > 0 ? -1 : 1;
    const [nx, ny] = [square[0] * outward, square[1] * outward];
    return [{ normal: [nx, ny, 0], offset: nx * from[0] + ny * from[1] }];
  });
};

/** The planes of each convex piece of a panel's outline, its bevels with them. */
const piecesOf = (panel: Panel): readonly (readonly HalfSpace[])[] => {
  const bevels = (panel.bevels ?? []).map((bevel) => bevelPlane(panel, bevel));
  const rings = panel.outline === null ? [] : convexPieces(panel.outline);
  return panel.outline === null ? [bevels] : rings.map((ring) => [...ringPlanes(ring), ...bevels]);
};

/** The panel as it is drawn from outside: its outline with its bevels, without its cuts; its pieces where it is bent. */
export const prismsOf = (panel: Panel): readonly ConvexShape[] =>
  foldedPanels(panel).flatMap((piece) => {
    const whole = boxShape({ min: [0, 0, 0], max: [piece.length, piece.width, piece.thickness] });
    return piecesOf(piece).flatMap((planes) => {
      const shape = clippedShape(whole, planes);
      return shape === null ? [] : [shapeAt(shape, piece.pose)];
    });
  });

const sorted = (values: readonly number[]): readonly number[] => [...new Set(values)].sort((a, b) => a - b);

interface Rect {
  readonly from: Vec2;
  readonly to: Vec2;
}

/** The rectangle that a cut-out touches on all sides. */
const touched = ({ outline }: Extract<Panel['cuts'][number], { kind: 'cutout' }>): Rect => {
  if (outline.shape === 'rectangle') return outline;
  if (outline.shape === 'circle') {
    const r = outline.diameter / 2;
    return { from: [outline.at[0] - r, outline.at[1] - r], to: [outline.at[0] + r, outline.at[1] + r] };
  }
  const [xs, ys] = [outline.corners.map(([x]) => x), outline.corners.map(([, y]) => y)];
  return { from: [Math.min(...xs), Math.min(...ys)], to: [Math.max(...xs), Math.max(...ys)] };
};

const holds = ({ from, to }: Rect, [x, y]: Vec2): boolean => from[0] < x && x < to[0] && from[1] < y && y < to[1];

/** What is left of a flat panel between its recesses, as boxes in panel coordinates; screw holes are not taken off. */
const cellsOf = (panel: Panel): readonly Box[] => {
  const within = (value: number, most: number): number => Math.min(most, Math.max(0, value));
  const through = panel.cuts.flatMap((cut) => (cut.kind === 'cutout' ? [touched(cut)] : []));
  const recesses = panel.cuts.flatMap((cut) => (cut.kind === 'hole' || cut.kind === 'cutout' ? [] : [cut]));
  const all = [...recesses, ...through];
  const xs = sorted(
    [0, panel.length, ...all.flatMap(({ from, to }) => [from[0], to[0]])].map((x) => within(x, panel.length)),
  );
  const ys = sorted(
    [0, panel.width, ...all.flatMap(({ from, to }) => [from[1], to[1]])].map((y) => within(y, panel.width)),
  );
  return xs.slice(1).flatMap((x1, i) =>
    ys.slice(1).flatMap((y1, j): readonly Box[] => {
      const [x0, y0] = [xs[i] ?? x1, ys[j] ?? y1];
      const middle: Vec2 = [(x0 + x1) / 2, (y0 + y1) / 2];
      if (through.some((rect) => holds(rect, middle))) return [];
      const over = recesses.filter((cut) => holds(cut, middle));
      const deep = (face: 'a' | 'b'): number =>
        Math.max(0, ...over.filter((cut) => cut.face === face).map(({ depth }) => depth));
      const [low, high] = [deep('b'), panel.thickness - deep('a')];
      const thick = high - low > ROUNDING_MM && x1 - x0 > ROUNDING_MM && y1 - y0 > ROUNDING_MM;
      return thick ? [{ min: [x0, y0, low], max: [x1, y1, high] }] : [];
    }),
  );
};

/** The wood of a panel with its recesses and cut-outs taken out, as convex pieces in place that do not overlap. */
export const woodOf = (panel: Panel): readonly ConvexShape[] =>
  foldedPanels(panel).flatMap((piece) => {
    const cells = cellsOf(piece).map(boxShape);
    return piecesOf(piece).flatMap((planes) =>
      cells.flatMap((cell) => {
        const shape = clippedShape(cell, planes);
        return shape === null ? [] : [shapeAt(shape, piece.pose)];
      }),
    );
  });
