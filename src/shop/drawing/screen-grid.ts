import type { Vec2 } from '../../base/index.ts';
import type { Segment } from './visible-edges.ts';

/** What stands on the screen, as the rectangle that holds it. */
export interface OnScreen {
  readonly low: Vec2;
  readonly high: Vec2;
}

/** Cells a side for so many things: about as many cells as things. */
const sideFor = (count: number): number => Math.max(1, Math.min(128, Math.ceil(Math.sqrt(count))));

/**
 * Which things may stand before or behind a segment on the screen: those whose rectangles reach a cell that it passes,
 * each once, in the order given. A uniform grid: one look through all of them for each line takes minutes of a thousand.
 */
export const screenGrid = (things: readonly OnScreen[]): ((segment: Segment) => readonly number[]) => {
  const side = sideFor(things.length);
  const low: [number, number] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  const high: [number, number] = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const thing of things)
    for (const axis of [0, 1] as const) {
      low[axis] = Math.min(low[axis], thing.low[axis]);
      high[axis] = Math.max(high[axis], thing.high[axis]);
    }
  const cellOf = (value: number, axis: 0 | 1): number => {
    const size = (high[axis] - low[axis]) / side;
    return size > 0 ? Math.max(0, Math.min(side - 1, Math.floor((value - low[axis]) / size))) : 0;
  };
  const cells: number[][] = Array.from({ length: side * side }, () => []);
  things.forEach((thing, i) => {
    const last = [cellOf(thing.high[0], 0), cellOf(thing.high[1], 1)] as const;
    for (let y = cellOf(thing.low[1], 1); y <= last[1]; y++)
      for (let x = cellOf(thing.low[0], 0); x <= last[0]; x++) cells[y * side + x]?.push(i);
  });
  const seenIn = new Int32Array(things.length).fill(-1);
  let asked = 0;
  return ([a, b]) => {
    const found: number[] = [];
    asked++;
    const collect = (x: number, y: number): void => {
      for (const i of cells[y * side + x] ?? []) {
        if (seenIn[i] === asked) continue;
        seenIn[i] = asked;
        found.push(i);
      }
    };
    // Row by row, the columns that the segment passes within the row, and one more on each side for rounding.
    const [from, to] = a[1] <= b[1] ? [a, b] : [b, a];
    const [first, last] = [cellOf(from[1], 1), cellOf(to[1], 1)];
    const rise = to[1] - from[1];
    const high1 = (high[1] - low[1]) / side;
    for (let y = first; y <= last; y++) {
      const share = (value: number): number => (rise > 0 ? Math.max(0, Math.min(1, (value - from[1]) / rise)) : 0);
      const [s0, s1] =
        y === first && y === last ? [0, 1] : [share(low[1] + y * high1), share(low[1] + (y + 1) * high1)];
      const [x0, x1] = [y === first ? 0 : s0, y === last ? 1 : s1].map((s) => from[0] + (to[0] - from[0]) * s) as [
        number,
        number,
      ];
      const [start, end] = [cellOf(Math.min(x0, x1), 0) - 1, cellOf(Math.max(x0, x1), 0) + 1];
      for (let x = Math.max(0, start); x <= Math.min(side - 1, end); x++) collect(x, y);
    }
    return found.sort((p, q) => p - q);
  };
};
