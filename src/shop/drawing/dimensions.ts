import type { Vec2 } from '../../base/index.ts';
import type { Dimension, Drawing, Running, Shape, Stroke } from './drawing.ts';
import { circle, line, text } from './shapes.ts';
import { textWidth } from './text-width.ts';

/** Habits of a drawing board, in mm on paper. */
const GAP_TO_PART = 1;
const BEYOND_LINE = 1.2;
const TICK = 1;
const TEXT_OFF_LINE = 0.8;
const ORIGIN_RADIUS = 0.8;
const UPRIGHT = Math.PI / 2;

type Axis = Dimension['axis'];

/** A point from its coordinate along the measured axis and its coordinate across it. */
const point = (axis: Axis, along: number, across: number): Vec2 =>
  axis === 'across' ? [along, across] : [across, along];
const alongOf = (axis: Axis, at: Vec2): number => (axis === 'across' ? at[0] : at[1]);
const acrossOf = (axis: Axis, at: Vec2): number => (axis === 'across' ? at[1] : at[0]);

/** A short slanting stroke where a dimension ends: readable in any print, and it needs no fill. */
const tick = (at: Vec2): Stroke => line('tick', [at[0] - TICK, at[1] - TICK], [at[0] + TICK, at[1] + TICK]);

/** From just off the part to just beyond the dimension line; nothing where the line runs through the part's point. */
const extension = (axis: Axis, at: Vec2, lineAt: number, beyond: number): readonly Stroke[] => {
  const from = acrossOf(axis, at);
  const side = Math.sign(lineAt - from);
  if (side === 0) return [];
  const along = alongOf(axis, at);
  return [line('dimension', point(axis, along, from + side * GAP_TO_PART), point(axis, along, lineAt + side * beyond))];
};

const resolveDimension = (dimension: Dimension): readonly Stroke[] => {
  const { axis, lineAt, label, textHeight } = dimension;
  const [low, high] = [alongOf(axis, dimension.from), alongOf(axis, dimension.to)].sort((a, b) => a - b) as [
    number,
    number,
  ];
  const width = textWidth(label, textHeight);
  const roomy = width + 3 * TICK <= high - low;
  const middle = roomy ? (low + high) / 2 : high + BEYOND_LINE + width / 2;
  const reach = roomy ? high : middle + width / 2;
  const turnRad = axis === 'across' ? 0 : UPRIGHT;
  const base = axis === 'across' ? lineAt + TEXT_OFF_LINE : lineAt - TEXT_OFF_LINE;
  return [
    ...extension(axis, dimension.from, lineAt, BEYOND_LINE),
    ...extension(axis, dimension.to, lineAt, BEYOND_LINE),
    line('dimension', point(axis, low, lineAt), point(axis, reach, lineAt)),
    tick(point(axis, low, lineAt)),
    tick(point(axis, high, lineAt)),
    text(point(axis, middle, base), label, { height: textHeight, align: 'middle', turnRad }),
  ];
};

/** Places in ascending order pushed apart until each has `room`, staying as near to where they belong as they can. */
export const spreadApart = (places: readonly number[], room: number): readonly number[] => {
  const groups: { sum: number; count: number }[] = [];
  const start = (group: { sum: number; count: number }): number =>
    group.sum / group.count - ((group.count - 1) * room) / 2;
  for (const place of places) {
    let group = { sum: place, count: 1 };
    for (
      let before = groups.at(-1);
      before && start(before) + before.count * room > start(group);
      before = groups.at(-1)
    ) {
      group = { sum: before.sum + group.sum, count: before.count + group.count };
      groups.pop();
    }
    groups.push(group);
  }
  return groups.flatMap((group) => Array.from({ length: group.count }, (_, i) => start(group) + i * room));
};

/** Length of the slanting piece that leads to a figure that had to move aside. */
const JOG = 2;

const resolveRunning = (running: Running): readonly Stroke[] => {
  const { axis, lineAt, side, textHeight } = running;
  const stops = [...running.stops].sort((a, b) => alongOf(axis, a.at) - alongOf(axis, b.at));
  const places = stops.map(({ at }) => alongOf(axis, at));
  const spread = spreadApart(places, textHeight * 1.25);
  const start = alongOf(axis, running.origin);
  const end = places.at(-1);
  if (end === undefined) return [];
  const originAt = point(axis, start, lineAt);
  return [
    circle('dimension', originAt, ORIGIN_RADIUS),
    ...extension(axis, running.origin, lineAt, 0),
    line('dimension', originAt, point(axis, end, lineAt)),
    ...stops.flatMap(({ at, label }, i): readonly Stroke[] => {
      const place = alongOf(axis, at);
      const moved = spread[i] ?? place;
      const foot = lineAt + side * (BEYOND_LINE + JOG);
      const figure = point(
        axis,
        moved + (axis === 'across' ? textHeight / 2 : -textHeight / 2),
        foot + side * TEXT_OFF_LINE,
      );
      return [
        ...extension(axis, at, lineAt, BEYOND_LINE),
        line('dimension', point(axis, place, lineAt + side * BEYOND_LINE), point(axis, moved, foot)),
        tick(point(axis, place, lineAt)),
        text(figure, label, {
          height: textHeight,
          align: side < 0 ? 'right' : 'left',
          turnRad: axis === 'across' ? UPRIGHT : 0,
        }),
      ];
    }),
  ];
};

/** Shapes with every dimension taken apart into lines and text, so that a writer needs to know neither. */
export const strokesOf = (shapes: readonly Shape[]): readonly Stroke[] =>
  shapes.flatMap((shape): readonly Stroke[] => {
    if (shape.kind === 'dimension') return resolveDimension(shape);
    if (shape.kind === 'running') return resolveRunning(shape);
    return [shape];
  });

/** The drawing as a writer takes it. */
export const resolved = (drawing: Drawing): Drawing & { readonly shapes: readonly Stroke[] } => ({
  ...drawing,
  shapes: strokesOf(drawing.shapes),
});
