import { ROUNDING_MM } from '../base/index.ts';

/** One thing to be stood in a line: how far its middle must stay from either end, and how long its face is. */
export interface LineItem {
  readonly fromStart: number;
  readonly fromEnd: number;
  readonly face: number;
}

export interface Line {
  readonly items: readonly LineItem[];
  /** Least distance between the middles of neighbours: `apart[i]` between items i and i + 1. */
  readonly apart: readonly number[];
}

/** Middles packed as near to the start as the distances allow. */
const packed = ({ items, apart }: Line): readonly number[] => {
  const middles: number[] = [];
  items.forEach((item, i) => {
    const before = middles[i - 1];
    middles.push(before === undefined ? item.fromStart : Math.max(item.fromStart, before + (apart[i - 1] ?? 0)));
  });
  return middles;
};

/** The shortest line in which everything keeps its distances. */
export const leastLine = (line: Line): number =>
  packed(line).reduce((need, middle, i) => Math.max(need, middle + (line.items[i]?.fromEnd ?? 0)), 0);

/** Middles with the same gap between all faces and to both ends. */
const evenFaces = ({ items }: Line, length: number): readonly number[] => {
  const gap = (length - items.reduce((sum, { face }) => sum + face, 0)) / (items.length + 1);
  let at = 0;
  return items.map(({ face }) => {
    const middle = at + gap + face / 2;
    at += gap + face;
    return middle;
  });
};

const keeps = ({ items, apart }: Line, middles: readonly number[], length: number): boolean =>
  items.every((item, i) => {
    const middle = middles[i] ?? 0;
    const next = middles[i + 1];
    const clear = next === undefined || next - middle >= (apart[i] ?? 0) - ROUNDING_MM;
    return clear && middle >= item.fromStart - ROUNDING_MM && middle <= length - item.fromEnd + ROUNDING_MM;
  });

/**
 * Middles of everything along a line of the length: with equal gaps between the faces where all distances allow it,
 * else half way between packed to the start and packed to the end, which keeps every distance. A line that is too
 * short is packed to the start.
 */
export const lineUp = (line: Line, length: number): readonly number[] => {
  const even = evenFaces(line, length);
  if (keeps(line, even, length)) return even;
  const low = packed(line);
  if (leastLine(line) > length + ROUNDING_MM) return low;
  const mirrored: Line = {
    items: line.items
      .toReversed()
      .map(({ fromStart, fromEnd, face }) => ({ fromStart: fromEnd, fromEnd: fromStart, face })),
    apart: line.apart.toReversed(),
  };
  const high = packed(mirrored)
    .toReversed()
    .map((fromEnd) => length - fromEnd);
  return low.map((middle, i) => (middle + (high[i] ?? middle)) / 2);
};
