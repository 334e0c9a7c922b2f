import type { Rectangle } from '../layout.ts';
import { NEAR, rightOf, topOf } from './fault.ts';

type Direction = 'rip' | 'crosscut';

const lowOf = (part: Rectangle, by: Direction): number => (by === 'rip' ? part.y : part.x);
const highOf = (part: Rectangle, by: Direction): number => (by === 'rip' ? topOf(part) : rightOf(part));

/**
 * Splits parts by every full cut of one direction: two groups part company where a blade of width `kerf` passes between
 * them. Looks at the rectangles only, not at any cut tree.
 */
const separate = (parts: readonly Rectangle[], by: Direction, kerf: number): readonly (readonly Rectangle[])[] => {
  const sorted = [...parts].sort((a, b) => lowOf(a, by) - lowOf(b, by));
  const groups: Rectangle[][] = [];
  let reach = Number.NEGATIVE_INFINITY;
  for (const part of sorted) {
    const group = groups.at(-1);
    if (group === undefined || lowOf(part, by) >= reach + kerf - NEAR) groups.push([part]);
    else group.push(part);
    reach = Math.max(reach, highOf(part, by));
  }
  return groups;
};

/**
 * Fewest rounds of parallel full cuts that take these parts apart, the first round in the given direction; a round that
 * only trims a part alone in its piece is not counted. Infinity where no sequence of full cuts does it. Cutting along
 * every line that is free never makes a later round longer, so the greedy count is the least.
 */
const roundsFrom = (parts: readonly Rectangle[], by: Direction, kerf: number, stuck: boolean): number => {
  if (parts.length <= 1) return 0;
  const groups = separate(parts, by, kerf);
  if (groups.length === 1 && stuck) return Number.POSITIVE_INFINITY;
  const other: Direction = by === 'rip' ? 'crosscut' : 'rip';
  return 1 + Math.max(...groups.map((group) => roundsFrom(group, other, kerf, groups.length === 1)));
};

/** Fewest rounds over both directions of the first cut. One part alone needs none. */
export const roundsNeeded = (parts: readonly Rectangle[], kerf: number): number =>
  Math.min(roundsFrom(parts, 'rip', kerf, false), roundsFrom(parts, 'crosscut', kerf, false));
