import type { Vec2 } from '../../base/index.ts';
import type { FigureLine, PlanFigure } from '../../envelope/index.ts';
import type { LayerName, Shape } from './drawing.ts';
import { circle, line, onSheet, text } from './shapes.ts';

const LAYERS_OF: Readonly<Record<FigureLine['role'], LayerName>> = {
  outline: 'outline',
  centre: 'centre',
  extension: 'centre',
  reading: 'dimension',
};

const MARK_MM = 0.7;
const TITLE_MM = 2;
/** From the foot of the drawing to the base line of its title. */
const TITLE_BELOW = 5;

/** The height that a plan's drawing takes in a width, its title with it, mm. */
export const planFigureHeight = ({ from, to }: PlanFigure, width: number, tallest: number): number =>
  Math.min(tallest, ((to[1] - from[1]) * width) / (to[0] - from[0])) + TITLE_BELOW + TITLE_MM;

/** A small drawing of the survey plan in a room below and to the right of a corner, its title under it. */
export const planFigureShapes = (
  figure: PlanFigure,
  [left, top]: Vec2,
  width: number,
  tallest: number,
): readonly Shape[] => {
  const [wide, high] = [figure.to[0] - figure.from[0], figure.to[1] - figure.from[1]];
  const scale = Math.min(width / wide, tallest / high);
  const corner: Vec2 = [left + (width - wide * scale) / 2, top - high * scale];
  const place = onSheet(scale, [corner[0] - figure.from[0] * scale, corner[1] - figure.from[1] * scale]);
  const height = figure.letter * scale;
  return [
    ...figure.lines.map(({ from, to, role }) => line(LAYERS_OF[role], place(from), place(to))),
    ...figure.marks.map((at) => circle('seen', place(at), MARK_MM)),
    ...figure.labels.map(({ at, text: words, step }) => {
      const [x, y] = place(at);
      return text([x, y - height / 2], words, { height, align: 'middle', strong: step !== null });
    }),
    text([left + width / 2, corner[1] - TITLE_BELOW], figure.title, {
      height: TITLE_MM,
      align: 'middle',
      within: width,
    }),
  ];
};
