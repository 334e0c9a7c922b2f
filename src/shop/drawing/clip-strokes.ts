import type { Vec2 } from '../../base/index.ts';
import type { Shape, Stroke } from './drawing.ts';
import { line } from './shapes.ts';
import type { Area } from './sheet.ts';
import { writtenAreas } from './written-areas.ts';

/** The part of a straight line inside an area, or null (Liang and Barsky 1984). */
const within = (from: Vec2, to: Vec2, { from: low, to: high }: Area): readonly [Vec2, Vec2] | null => {
  let [enter, leave] = [0, 1];
  for (const axis of [0, 1] as const) {
    const run = to[axis] - from[axis];
    for (const [way, room] of [
      [-run, from[axis] - low[axis]],
      [run, high[axis] - from[axis]],
    ] as const) {
      if (way === 0 && room < 0) return null;
      if (way < 0) enter = Math.max(enter, room / way);
      if (way > 0) leave = Math.min(leave, room / way);
    }
  }
  if (enter >= leave) return null;
  const at = (share: number): Vec2 => [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
  return [at(enter), at(leave)];
};

const holds = ({ from, to }: Area, [x, y]: Vec2): boolean => x >= from[0] && x <= to[0] && y >= from[1] && y <= to[1];

/** Text that would run over the edge of the area, moved so far that all of it can be read. */
export const movedIn = (words: Shape, area: Area): Shape => {
  const [box] = writtenAreas([words]);
  if (!box || words.kind !== 'text') return words;
  const by = (axis: 0 | 1): number =>
    Math.max(area.from[axis] - box.from[axis], Math.min(0, area.to[axis] - box.to[axis]));
  return { ...words, at: [words.at[0] + by(0), words.at[1] + by(1)] };
};

/** Sides of a circle that an edge of the area cuts. */
const ROUND_SIDES = 96;

/** What an area shows of straight lines, closed rings without arcs, circles and text; text shows where it begins inside. */
export const clipped = (shapes: readonly Stroke[], area: Area): readonly Shape[] =>
  shapes.flatMap((shape): readonly Shape[] => {
    const cut = (from: Vec2, to: Vec2): readonly Shape[] => {
      const kept = within(from, to, area);
      return kept === null ? [] : [line(shape.layer, ...kept)];
    };
    switch (shape.kind) {
      case 'line':
        return cut(shape.from, shape.to);
      case 'text':
        return holds(area, shape.at) ? [shape] : [];
      case 'circle': {
        const { at, radius } = shape;
        const corners: readonly Vec2[] = [
          [at[0] - radius, at[1] - radius],
          [at[0] + radius, at[1] + radius],
        ];
        if (corners.every((corner) => holds(area, corner))) return [shape];
        const point = (i: number): Vec2 => {
          const angle = (2 * Math.PI * i) / ROUND_SIDES;
          return [at[0] + radius * Math.cos(angle), at[1] + radius * Math.sin(angle)];
        };
        return Array.from({ length: ROUND_SIDES }, (_, i) => cut(point(i), point(i + 1))).flat();
      }
      case 'polyline': {
        const corners = shape.corners.map(({ at }) => at);
        const ends = shape.closed ? [...corners, ...corners.slice(0, 1)] : corners;
        return ends.slice(1).flatMap((to, i) => cut(ends[i] ?? to, to));
      }
      case 'arc':
      case 'patch':
        break;
    }
    throw new Error(`a ${shape.kind} is not cut at the edge of a tile`);
  });
