import type { Box } from '../base/index.ts';

const gapsWithin = (a: Box, b: Box, reach: number): boolean =>
  a.min[1] - b.max[1] <= reach &&
  b.min[1] - a.max[1] <= reach &&
  a.min[2] - b.max[2] <= reach &&
  b.min[2] - a.max[2] <= reach;

/**
 * Shows every pair of boxes that come within `reach` of each other on all three axes, as indices with the lower first,
 * in a stable order. Sorts by the near end along x and sweeps: about n log n for boxes that are short against the
 * whole. Touching counts.
 */
export const nearPairs = (boxes: readonly Box[], reach: number, look: (a: number, b: number) => void): void => {
  const order = boxes.map((_, i) => i).toSorted((p, q) => (boxes[p]?.min[0] ?? 0) - (boxes[q]?.min[0] ?? 0) || p - q);
  let open: number[] = [];
  for (const next of order) {
    const box = boxes[next];
    if (!box) continue;
    open = open.filter((index) => (boxes[index]?.max[0] ?? -Infinity) + reach >= box.min[0]);
    for (const index of open) {
      const other = boxes[index];
      if (other && gapsWithin(box, other, reach)) look(Math.min(index, next), Math.max(index, next));
    }
    open.push(next);
  }
};

/** Shows every pair of a box of `some` and a box of `others` within `reach`, by plain comparison of one list with the other. */
export const nearBetween = (
  some: readonly Box[],
  others: readonly Box[],
  reach: number,
  look: (a: number, b: number) => void,
): void => {
  some.forEach((box, a) => {
    others.forEach((other, b) => {
      const alongX = box.min[0] - other.max[0] <= reach && other.min[0] - box.max[0] <= reach;
      if (alongX && gapsWithin(box, other, reach)) look(a, b);
    });
  });
};
