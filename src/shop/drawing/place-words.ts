import type { Vec2 } from '../../base/index.ts';
import type { Shape, Stroke } from './drawing.ts';
import { line, text } from './shapes.ts';
import type { Area } from './sheet.ts';
import { textWidth } from './text-width.ts';

/** Words that want to stand near a point of a picture. */
export interface Wanted {
  readonly words: string;
  readonly at: Vec2;
  readonly strong?: boolean;
}

type Block = Area;

const meet = (a: Block, b: Block): boolean =>
  a.from[0] < b.to[0] && b.from[0] < a.to[0] && a.from[1] < b.to[1] && b.from[1] < a.to[1];

/** Whether a straight line runs through a block (Liang and Barsky 1984, yes or no). */
const crosses = (from: Vec2, to: Vec2, block: Block): boolean => {
  let [enter, leave] = [0, 1];
  for (const axis of [0, 1] as const) {
    const run = to[axis] - from[axis];
    for (const [way, room] of [
      [-run, from[axis] - block.from[axis]],
      [run, block.to[axis] - from[axis]],
    ] as const) {
      if (way === 0 && room < 0) return false;
      if (way < 0) enter = Math.max(enter, room / way);
      if (way > 0) leave = Math.min(leave, room / way);
    }
  }
  return enter < leave;
};

const linesOf = (stroke: Stroke): readonly (readonly [Vec2, Vec2])[] => {
  if (stroke.kind === 'line') return [[stroke.from, stroke.to]];
  if (stroke.kind !== 'polyline') return [];
  const corners = stroke.corners.map(({ at }) => at);
  const ends = stroke.closed ? [...corners, ...corners.slice(0, 1)] : corners;
  return ends.slice(1).map((to, i) => [ends[i] ?? to, to] as const);
};

/** How far off its point a word may stand, in heights, nearest first. */
const STEPS = [0.7, 1.8, 3.2, 5, 7, 9] as const;
/** What one line under the words costs, in such steps. */
const CROSSING_COSTS = 3;
/** Words further off than this, in heights, are led to their point. */
const LED_FROM = 2.5;

/** The point of a block that is nearest to another point. */
const nearestOf = ({ from, to }: Block, [x, y]: Vec2): Vec2 => [
  Math.min(to[0], Math.max(from[0], x)),
  Math.min(to[1], Math.max(from[1], y)),
];

/**
 * Words in the order given, each near its point, inside the area and upon no earlier words, where it lies on the fewest
 * lines, led to it by a thin line where they stand far off. Words that find no room are left out. `kept` is room that other words have taken already.
 */
export const placeWords = (
  wanted: readonly Wanted[],
  strokes: readonly Stroke[],
  area: Area,
  height: number,
  kept: readonly Area[] = [],
): readonly Shape[] => {
  const lines = strokes.flatMap(linesOf);
  const taken: Block[] = [...kept];
  return wanted.flatMap(({ words, at: [x, y], strong = false }): readonly Shape[] => {
    const wide = textWidth(words, height);
    const candidates = STEPS.flatMap((step, rank) => {
      const off = step * height;
      const low = y - height / 2;
      const corners: readonly Vec2[] = [
        [x - wide / 2, y + off],
        [x - wide / 2, y - off - height],
        [x + off, low],
        [x - off - wide, low],
        [x + off, y + off],
        [x - off - wide, y + off],
        [x + off, y - off - height],
        [x - off - wide, y - off - height],
      ];
      return corners.map((from) => ({ rank, block: { from, to: [from[0] + wide, from[1] + height] } satisfies Block }));
    });
    const free = candidates
      .filter(
        ({ block }) =>
          block.from[0] >= area.from[0] &&
          block.to[0] <= area.to[0] &&
          block.from[1] >= area.from[1] &&
          block.to[1] <= area.to[1] &&
          !taken.some((other) => meet(block, other)),
      )
      .map(({ rank, block }) => ({
        block,
        cost: rank + CROSSING_COSTS * lines.filter(([from, to]) => crosses(from, to, block)).length,
      }));
    const best = free.reduce<(typeof free)[number] | null>(
      (found, each) => (found === null || each.cost < found.cost ? each : found),
      null,
    );
    if (!best) return [];
    taken.push({
      from: [best.block.from[0] - height / 3, best.block.from[1] - height / 3],
      to: [best.block.to[0] + height / 3, best.block.to[1] + height / 3],
    });
    const end = nearestOf(best.block, [x, y]);
    const far = Math.hypot(end[0] - x, end[1] - y) > LED_FROM * height;
    return [...(far ? [line('dimension', [x, y], end)] : []), text(best.block.from, words, { height, strong })];
  });
};
