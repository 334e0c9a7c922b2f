import type { Polygon, Vec2 } from '../../base/index.ts';
import type { Circle, Corner, LayerName, Line, Patch, Polyline, Stroke, Text } from './drawing.ts';

export const line = (layer: LayerName, from: Vec2, to: Vec2): Line => ({ kind: 'line', layer, from, to });

export const ring = (layer: LayerName, corners: Polygon): Polyline => ({
  kind: 'polyline',
  layer,
  corners: corners.map((at) => ({ at, bulge: 0 })),
  closed: true,
});

export const circle = (layer: LayerName, at: Vec2, radius: number): Circle => ({ kind: 'circle', layer, at, radius });

export const rectangle = (layer: LayerName, from: Vec2, to: Vec2): Polyline =>
  ring(layer, [from, [to[0], from[1]], to, [from[0], to[1]]]);

/** Bulge of a quarter circle: tan(90° / 4). */
const QUARTER = Math.tan(Math.PI / 8);

/** A rectangle with rounded corners, anticlockwise; the radius is held to half of the shorter side. */
export const roundedRectangle = (layer: LayerName, from: Vec2, to: Vec2, radius: number): Polyline => {
  const r = Math.min(radius, (to[0] - from[0]) / 2, (to[1] - from[1]) / 2);
  if (!(r > 0)) return rectangle(layer, from, to);
  const corner = (x: number, y: number, bulge: number): Corner => ({ at: [x, y], bulge });
  const corners = [
    corner(from[0] + r, from[1], 0),
    corner(to[0] - r, from[1], QUARTER),
    corner(to[0], from[1] + r, 0),
    corner(to[0], to[1] - r, QUARTER),
    corner(to[0] - r, to[1], 0),
    corner(from[0] + r, to[1], QUARTER),
    corner(from[0], to[1] - r, 0),
    corner(from[0], from[1] + r, QUARTER),
  ];
  return { kind: 'polyline', layer, corners, closed: true };
};

interface TextStyle {
  readonly height?: number;
  readonly align?: Text['align'];
  readonly turnRad?: number;
  readonly strong?: boolean;
  readonly within?: number | null;
  readonly layer?: LayerName;
}

/** Heights of capital letters on paper, mm: figures and values, small notes, captions of cells. */
export const TEXT_MM = { value: 2.5, note: 2, caption: 1.6 } as const;

export const text = (at: Vec2, words: string, style: TextStyle = {}): Text => ({
  kind: 'text',
  layer: style.layer ?? 'text',
  at,
  text: words,
  height: style.height ?? TEXT_MM.value,
  align: style.align ?? 'left',
  turnRad: style.turnRad ?? 0,
  strong: style.strong ?? false,
  within: style.within ?? null,
});

export const patch = (layer: LayerName, rings: readonly Polygon[]): Patch => ({ kind: 'patch', layer, rings });

/** Where a point of a figure lies on the sheet. */
export type OnSheet = (point: Vec2) => Vec2;

export const onSheet =
  (scale: number, at: Vec2): OnSheet =>
  ([x, y]) => [at[0] + x * scale, at[1] + y * scale];

/** A figure drawn smaller or larger with its origin at a place of the sheet. */
export const placedStroke = (stroke: Stroke, scale: number, at: Vec2): Stroke => {
  const move = onSheet(scale, at);
  switch (stroke.kind) {
    case 'line':
      return { ...stroke, from: move(stroke.from), to: move(stroke.to) };
    case 'polyline':
      return { ...stroke, corners: stroke.corners.map((corner) => ({ ...corner, at: move(corner.at) })) };
    case 'circle':
    case 'arc':
      return { ...stroke, at: move(stroke.at), radius: stroke.radius * scale };
    case 'patch':
      return { ...stroke, rings: stroke.rings.map((points) => points.map(move)) };
    case 'text':
      return { ...stroke, at: move(stroke.at), height: stroke.height * scale };
  }
};
