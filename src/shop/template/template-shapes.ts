import type { Vec2 } from '../../base/index.ts';
import type { Stroke } from '../drawing/drawing.ts';
import { hatching } from '../drawing/hatch.ts';
import { offWords } from '../drawing/place-tags.ts';
import { circle, line, type OnSheet, rectangle, ring, text } from '../drawing/shapes.ts';
import type { Area } from '../drawing/sheet.ts';
import { writtenAreas } from '../drawing/written-areas.ts';
import type { TemplateFigure } from './template-figure.ts';

const HATCH_MM = 6;
const CROSS_MM = 6;
const TAG_MM = 5;
const DATUM_BEYOND = 20;
const WORDS_MM = 3;

/** Extent of what is drawn: the foot, the holes with their plates; zones are drawn as far as they come near. */
export const templateExtent = ({ foot, holes }: TemplateFigure): Area => {
  const points: readonly Vec2[] = [
    ...foot,
    ...holes.flatMap(({ at: [x, y], plateMm, diameter }): readonly Vec2[] => {
      const half = (plateMm ?? diameter) / 2;
      return [
        [x - half, y - half],
        [x + half, y + half],
      ];
    }),
  ];
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return { from: [Math.min(...xs), Math.min(...ys)], to: [Math.max(...xs), Math.max(...ys)] };
};

/** The template as strokes, moved and reduced; letters and crosses keep their size on paper. */
export const templateStrokes = (figure: TemplateFigure, move: OnSheet, small: boolean): readonly Stroke[] => {
  const scale = move([1, 0])[0] - move([0, 0])[0];
  const { foot, holes, zones } = figure;
  const { from, to } = templateExtent(figure);
  const cross = small ? 1.5 : CROSS_MM;
  const tag = small ? 2 : TAG_MM;
  const words = small ? 1.6 : WORDS_MM;
  const beyond = DATUM_BEYOND / (small ? 1 : scale);
  const at = (x: number, y: number): Vec2 => move([x, y]);
  const datum = (a: Vec2, b: Vec2): Stroke => line('centre', move(a), move(b));
  const tagOf = ({ tag: name, at: [x, y], diameter }: TemplateFigure['holes'][number]) => {
    const [[px, py], radius] = [at(x, y), (diameter / 2) * scale];
    return text([px + radius + 1, py + radius + 1], name, { height: tag, strong: true });
  };
  const tagged = writtenAreas(holes.map(tagOf));
  return [
    ...zones.flatMap(({ name, ring: corners }): readonly Stroke[] => {
      const placed = corners.map(move);
      const middle: Vec2 = [
        placed.reduce((sum, [x]) => sum + x, 0) / Math.max(1, placed.length),
        placed.reduce((sum, [, y]) => sum + y, 0) / Math.max(1, placed.length),
      ];
      const said = (lines: number) =>
        text([middle[0], middle[1] + lines * words], `NO HOLE: ${name}`, {
          height: words,
          align: 'middle',
          strong: true,
        });
      return [
        ...hatching(placed, small ? 1.5 : HATCH_MM),
        ring('outline', placed),
        offWords([said(0), said(2), said(-2), said(4), said(-4)], tagged),
      ];
    }),
    ring('outline', foot.map(move)),
    // The middle of the vehicle and the sill, where they pass the foot.
    datum([0, Math.min(0, from[1] - beyond)], [0, to[1] + beyond]),
    datum([Math.min(0, from[0]) - beyond, 0], [Math.max(0, to[0]) + beyond, 0]),
    text(at(from[0], 0), 'hatch sill', { height: words, align: 'left' }),
    text(at(0, to[1]), 'middle of the vehicle', { height: words, align: 'left' }),
    ...holes.flatMap((hole): readonly Stroke[] => {
      const {
        at: [x, y],
        diameter,
        plateMm,
      } = hole;
      const [px, py] = at(x, y);
      const radius = (diameter / 2) * scale;
      const half = plateMm === null ? 0 : plateMm / 2;
      return [
        circle('drill', [px, py], radius),
        line('centre', [px - radius - cross, py], [px + radius + cross, py]),
        line('centre', [px, py - radius - cross], [px, py + radius + cross]),
        ...(plateMm === null ? [] : [rectangle('pocket-b', at(x - half, y - half), at(x + half, y + half))]),
        tagOf(hole),
      ];
    }),
  ];
};
