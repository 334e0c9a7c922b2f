import type { Vec2 } from '../../../../../base/index.ts';

export interface Footprint {
  readonly across: number;
  readonly deep: number;
  readonly width: number;
  readonly depth: number;
}

export interface SlideGearInput {
  /** Where the near left corner is asked to be, in the room. */
  readonly wanted: Vec2;
  readonly size: Vec2;
  readonly room: Vec2;
  readonly others: readonly Footprint[];
  /** Kept from walls and from other gear when it comes to rest against them. */
  readonly gap: number;
  readonly reach: number;
  readonly grid: number;
}

const nearest = (wanted: number, places: readonly number[], reach: number): number | null => {
  let best: number | null = null;
  for (const place of places)
    if (Math.abs(place - wanted) <= reach && (best === null || Math.abs(place - wanted) < Math.abs(best - wanted)))
      best = place;
  return best;
};

const rest = (
  wanted: number,
  size: number,
  room: number,
  edges: readonly (readonly [number, number])[],
  input: SlideGearInput,
) => {
  const { gap, reach, grid } = input;
  const places = [
    gap,
    room - size - gap,
    (room - size) / 2,
    ...edges.flatMap(([low, high]) => [low - size - gap, high + gap, low]),
  ];
  const at = nearest(wanted, places, reach) ?? Math.round(wanted / grid) * grid;
  return Math.min(Math.max(0, room - size), Math.max(0, at));
};

/**
 * Where gear that is slid over the floor of its room comes to rest: against a wall, against or in line with what
 * stands there, in the middle, or on the grid; always inside the room as far as it fits.
 */
export const slideGear = (input: SlideGearInput): Vec2 => {
  const { wanted, size, room, others } = input;
  const acrossEdges = others.map(({ across, width }) => [across, across + width] as const);
  const deepEdges = others.map(({ deep, depth }) => [deep, deep + depth] as const);
  return [rest(wanted[0], size[0], room[0], acrossEdges, input), rest(wanted[1], size[1], room[1], deepEdges, input)];
};
