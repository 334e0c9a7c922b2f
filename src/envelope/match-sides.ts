import { ROUNDING_MM, type Vec2 } from '../base/index.ts';
import type { SideChain, StationSides } from './station-ring.ts';

const chainLength = (chain: SideChain): number =>
  chain.reduce((sum, point, i) => {
    const before = chain[i - 1];
    return before ? sum + Math.hypot(point[0] - before[0], point[1] - before[1]) : 0;
  }, 0);

/** Share of the side's length at which each of its points lies: 0 at the floor, 1 at the roof. */
export const sharesAlong = (chain: SideChain): readonly number[] => {
  const at = [0];
  let run = 0;
  for (let i = 1; i < chain.length; i++) {
    const [a, b] = [chain[i - 1], chain[i]];
    if (a && b) run += Math.hypot(b[0] - a[0], b[1] - a[1]);
    at.push(run);
  }
  return at.map((length, i) => (i === chain.length - 1 ? 1 : length / run));
};

/** All shares, ascending, those that differ by rounding only (over the longest side) counted once. */
const sharedBy = (chains: readonly SideChain[]): readonly number[] => {
  const longest = Math.max(...chains.map((chain) => chainLength(chain)));
  const all = chains.flatMap(sharesAlong).toSorted((a, b) => a - b);
  const kept: number[] = [];
  for (const share of all) {
    const last = kept.at(-1);
    if (last === undefined || (share - last) * longest > ROUNDING_MM) kept.push(share);
  }
  return kept;
};

/** The chain with a point at every share; its own points stay exactly where they are, the new ones lie on its lines. */
const withPointsAt = (chain: SideChain, shares: readonly number[]): SideChain => {
  const own = sharesAlong(chain);
  const size = chainLength(chain);
  let segment = 0;
  return shares.map((share): Vec2 => {
    while (segment + 2 < own.length && (own[segment + 1] ?? 1) * size < share * size - ROUNDING_MM) segment++;
    const [from, to] = [own[segment] ?? 0, own[segment + 1] ?? 1];
    const [a, b]: [Vec2, Vec2] = [chain[segment] ?? [0, 0], chain[segment + 1] ?? [0, 0]];
    if (Math.abs(share - from) * size <= ROUNDING_MM) return a;
    if (Math.abs(to - share) * size <= ROUNDING_MM) return b;
    const t = (share - from) / (to - from);
    return [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
  });
};

const matchChains = (chains: readonly SideChain[]): readonly SideChain[] => {
  const counts = new Set(chains.map((chain) => chain.length));
  if (counts.size === 1) return chains;
  const shares = sharedBy(chains);
  return chains.map((chain) => withPointsAt(chain, shares));
};

const meetsAt = (sides: StationSides, end: 0 | -1): boolean => {
  const [a, b] = [sides.right.at(end), sides.left.at(end)];
  return a !== undefined && b !== undefined && Math.hypot(a[0] - b[0], a[1] - b[1]) <= ROUNDING_MM;
};

const middleOf = (sides: StationSides, end: 0 | -1): Vec2 => {
  const [a, b]: [Vec2, Vec2] = [sides.right.at(end) ?? [0, 0], sides.left.at(end) ?? [0, 0]];
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
};

/**
 * Where the sides of some stations meet in the middle of the floor or the roof and those of others do not, the others
 * get a point in the middle of their straight floor or roof, so that all are closed alike.
 */
const closedAlike = (stations: readonly StationSides[], end: 0 | -1): readonly StationSides[] => {
  const meeting = stations.map((sides) => meetsAt(sides, end));
  if (!meeting.includes(true) || !meeting.includes(false)) return stations;
  return stations.map((sides, i) => {
    if (meeting[i]) return sides;
    const middle = middleOf(sides, end);
    const grown = (chain: SideChain): SideChain => (end === 0 ? [middle, ...chain] : [...chain, middle]);
    return { right: grown(sides.right), left: grown(sides.left) };
  });
};

/**
 * Gives every station the same number of points on each side without changing any section: where the counts differ,
 * points are added on the section's own lines at the shares of its length at which other stations have theirs. Left
 * and right are matched apart; floor and roof stay the ends of a side. Equal counts are joined as they were measured.
 */
export const matchSides = (stations: readonly StationSides[]): readonly StationSides[] => {
  const alike = closedAlike(closedAlike(stations, 0), -1);
  const right = matchChains(alike.map((sides) => sides.right));
  const left = matchChains(alike.map((sides) => sides.left));
  return alike.map((sides, i) => ({ right: right[i] ?? sides.right, left: left[i] ?? sides.left }));
};
