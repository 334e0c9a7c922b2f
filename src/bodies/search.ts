import { ROUNDING_MM } from '../base/index.ts';
import type { Seen, Track } from './track.ts';

/** The least gap along a track: a gap seen, and a bound that is proven for every place of the way. */
export interface Least {
  readonly seen: Seen | null;
  /** No gap anywhere on the way is less than this, nor less than the lowest one seen by more than the tolerance. */
  readonly proven: number;
  readonly steps: number;
}

/** A way is looked at in this many pieces at first: the closed form of a turn's reach holds for half a circle only. */
const LEAST_PIECES = 2;

const piecesOf = (end: number): readonly number[] =>
  Array.from({ length: LEAST_PIECES + 1 }, (_, i) => (end * i) / LEAST_PIECES);

const floorBetween = (track: Track, a: Seen, b: Seen, middle: number): number =>
  Math.min(track.floorOver(a.gap.direction, a.s, middle), track.floorOver(b.gap.direction, middle, b.s));

/**
 * Finds the least gap on the track below `bar`, to `tolerance`, by halving the way wherever the proven floor of a
 * piece lies more than the tolerance under the least gap seen. A floor falls short of the gaps at the ends of its
 * piece by at most speed × half its length, so no piece shorter than tolerance / speed is ever cut: at most
 * 3 + 2 · length · speed / tolerance gaps are computed, and the few dozen of a usual turn because the floor closes in
 * with the square of the piece.
 */
export const leastOnTrack = (track: Track, bar: number, tolerance: number): Least => {
  let seen: Seen | null = null;
  let best = bar;
  let proven = bar;
  let steps = 0;
  const look = (s: number): Seen => {
    steps += 1;
    const found = { s, gap: track.gapAt(s) };
    if (found.gap.distance < best) [best, seen] = [found.gap.distance, found];
    return found;
  };
  const visit = (a: Seen, b: Seen): void => {
    const middle = track.between(a, b);
    const floor = floorBetween(track, a, b, middle);
    if (floor >= best - tolerance || !(middle > a.s && middle < b.s)) {
      proven = Math.min(proven, floor);
      return;
    }
    const found = look(middle);
    visit(a, found);
    visit(found, b);
  };
  const stops = piecesOf(track.length).map(look);
  stops.slice(1).forEach((stop, i) => {
    const before = stops[i];
    if (before) visit(before, stop);
  });
  return { seen, proven: Math.min(best, proven), steps };
};

/**
 * Where between `clear` and `blocked` the gap falls through `level`: at least that at the one, less at the other.
 * Looks where the straight line between the two would have it, and halfway every other time.
 */
const crossing = (track: Track, level: number, clear: Seen, blocked: Seen): number => {
  // Aiming at the middle of the rounding above the level, so that a straight fall is hit at the first look.
  const aim = level + ROUNDING_MM / 2;
  let [low, high] = [clear, blocked];
  for (let turn = 0; (high.s - low.s) * track.speed > ROUNDING_MM; turn++) {
    const [above, below] = [low.gap.distance - aim, aim - high.gap.distance];
    const share = turn % 2 === 0 && above > 0 && below > 0 ? above / (above + below) : 1 / 2;
    const s = low.s + (high.s - low.s) * share;
    const found = { s, gap: track.gapAt(s) };
    if (found.gap.distance < level) high = found;
    else low = found;
    if (low.gap.distance <= level + ROUNDING_MM) break;
  }
  return low.s;
};

/** What is known when the first blocked place is found. */
interface Block {
  /** The last place seen with the whole required gap, if any, and the last one seen with at least the bar. */
  readonly free: Seen | null;
  readonly passed: Seen;
  readonly blocked: Seen;
}

const searchBlock = (
  track: Track,
  stops: readonly Seen[],
  bar: number,
  level: number,
  finest: number,
): Block | null => {
  let free: Seen | null = null;
  let passed = stops[0] ?? null;
  const visit = (a: Seen, b: Seen): Seen | null => {
    if (a.gap.distance >= level) free = a;
    if (a.gap.distance >= bar) passed = a;
    const middle = (a.s + b.s) / 2;
    if (floorBetween(track, a, b, middle) >= bar) return null;
    if (b.s - a.s <= finest || !(middle > a.s && middle < b.s)) return b.gap.distance < bar ? b : null;
    const found = { s: middle, gap: track.gapAt(middle) };
    return visit(a, found) ?? visit(found, b);
  };
  for (const [i, stop] of stops.slice(1).entries()) {
    const before = stops[i];
    const blocked = before ? visit(before, stop) : null;
    if (blocked && passed) return { free, passed, blocked };
  }
  return null;
};

/**
 * The first place before `end` at which the gap falls below `required`, or null where it is proven not to fall below
 * required − tolerance. A gap that has fallen less than half the tolerance short is let pass, so that bodies meant to
 * touch do; past that, the place given is where the gap passed `required` itself, to rounding. The way is halved, left
 * piece first, down to pieces in which no point moves more than the tolerance: at most 3 + 2 · end · speed / tolerance
 * gaps.
 */
export const firstBlock = (track: Track, end: number, required: number, tolerance: number): number | null => {
  const bar = required - tolerance / 2;
  const level = required - ROUNDING_MM;
  const stops = piecesOf(end).map((s): Seen => ({ s, gap: track.gapAt(s) }));
  const [start] = stops;
  if (start && start.gap.distance < bar) return 0;
  const block = searchBlock(track, stops, bar, level, tolerance / track.speed);
  if (!block) return null;
  return block.free === null
    ? crossing(track, bar, block.passed, block.blocked)
    : crossing(track, level, block.free, block.blocked);
};
