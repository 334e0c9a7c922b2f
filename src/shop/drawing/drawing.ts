import type { Polygon, Vec2 } from '../../base/index.ts';

/** Pen of one layer: width in mm on paper, and dashes in mm where the line is broken. */
interface Pen {
  readonly penMm: number;
  readonly dashMm: readonly number[] | null;
}

const solid = (penMm: number): Pen => ({ penMm, dashMm: null });
const dashed = (penMm: number): Pen => ({ penMm, dashMm: [2, 1] });

/**
 * Every layer there is, in the order of drawing. What is cut is told apart by layer: a router or a laser reads these.
 * A name that ends in `-b` is work on the face that lies down. Pens after the usual 0.5 / 0.35 / 0.25 / 0.13 series.
 */
export const LAYERS = {
  hatch: solid(0.09),
  behind: { penMm: 0.13, dashMm: [3, 1.2] },
  seen: solid(0.3),
  outline: solid(0.5),
  'inner-cut': solid(0.35),
  dado: solid(0.25),
  'dado-b': dashed(0.25),
  groove: solid(0.25),
  'groove-b': dashed(0.25),
  rabbet: solid(0.25),
  'rabbet-b': dashed(0.25),
  pocket: solid(0.25),
  'pocket-b': dashed(0.25),
  drill: solid(0.25),
  'drill-b': dashed(0.25),
  centre: solid(0.09),
  engrave: solid(0.25),
  bevel: solid(0.25),
  'bevel-b': dashed(0.25),
  bend: { penMm: 0.25, dashMm: [6, 1, 1, 1] },
  band: solid(0.7),
  dimension: solid(0.13),
  tick: solid(0.35),
  text: solid(0),
  rule: solid(0.13),
  frame: solid(0.5),
} as const satisfies Readonly<Record<string, Pen>>;

export type LayerName = keyof typeof LAYERS;
export const LAYER_NAMES = Object.keys(LAYERS) as readonly LayerName[];

/** A corner of a polyline; the edge after it is straight (bulge 0) or an arc of bulge = tan(angle / 4), positive to the left. */
export interface Corner {
  readonly at: Vec2;
  readonly bulge: number;
}

export interface Line {
  readonly kind: 'line';
  readonly layer: LayerName;
  readonly from: Vec2;
  readonly to: Vec2;
}
export interface Polyline {
  readonly kind: 'polyline';
  readonly layer: LayerName;
  readonly corners: readonly Corner[];
  readonly closed: boolean;
}
export interface Circle {
  readonly kind: 'circle';
  readonly layer: LayerName;
  readonly at: Vec2;
  readonly radius: number;
}
/** Anticlockwise from one angle to the other. */
export interface Arc {
  readonly kind: 'arc';
  readonly layer: LayerName;
  readonly at: Vec2;
  readonly radius: number;
  readonly fromRad: number;
  readonly toRad: number;
}
export interface Text {
  readonly kind: 'text';
  readonly layer: LayerName;
  /** On the base line, at the left end, the middle or the right end. */
  readonly at: Vec2;
  readonly text: string;
  /** Height of a capital letter. */
  readonly height: number;
  readonly align: 'left' | 'middle' | 'right';
  readonly turnRad: number;
  readonly strong: boolean;
  /** Wider text is squeezed to this; null where nothing stands in its way. */
  readonly within: number | null;
}

/** A filled area, holes by the even-odd rule: squares of a code, the half of a check mark. Paper only. */
export interface Patch {
  readonly kind: 'patch';
  readonly layer: LayerName;
  readonly rings: readonly Polygon[];
}

/** What a writer must be able to draw. */
export type Stroke = Line | Polyline | Circle | Arc | Text | Patch;

/** One distance with its own line. `across` is measured along x on a line at y = lineAt, `up` along y at x = lineAt. */
export interface Dimension {
  readonly kind: 'dimension';
  readonly layer: 'dimension';
  readonly axis: 'across' | 'up';
  readonly from: Vec2;
  readonly to: Vec2;
  readonly lineAt: number;
  readonly label: string;
  readonly textHeight: number;
}

/** Distances of several points from one origin, all on one line; figures stand beyond the line. */
export interface Running {
  readonly kind: 'running';
  readonly layer: 'dimension';
  readonly axis: 'across' | 'up';
  readonly origin: Vec2;
  readonly stops: readonly { readonly at: Vec2; readonly label: string }[];
  readonly lineAt: number;
  /** Which side of the line is away from the part: −1 below or left, 1 above or right. */
  readonly side: -1 | 1;
  readonly textHeight: number;
}

export type Shape = Stroke | Dimension | Running;

/**
 * A drawing before it is written in any format: shapes in mm, x to the right and y up from the low left corner.
 * A figure of a part alone has scale 1; on a sheet of paper a part is drawn `scale` times its size.
 */
export interface Drawing {
  readonly title: string;
  readonly size: Vec2;
  readonly scale: number;
  readonly shapes: readonly Shape[];
}
