import { boxesMeet, boxGrown, negate, ORIGIN, type Vec3 } from '../../base/index.ts';
import { type Lump, lumpsShare, spanAlong, sweptLump } from './sweep.ts';

/** A thing to be put together: a panel, or several that were put together before. */
export interface Loose {
  readonly id: string;
  readonly lump: Lump;
  /** The lower, the earlier a person would begin with it. */
  readonly rank: number;
}

/** What goes in at once, and how. */
export interface Move {
  /** Ids of what goes in: one thing, or several that must be put together first. */
  readonly ids: readonly string[];
  /** Which way it travels into its place; null for the first one and for what no straight move brings in. */
  readonly into: Vec3 | null;
  /** What would be in its way had it gone in before: the move must come before these. */
  readonly before: readonly string[];
}

export interface TakeApartRules {
  readonly ways: readonly Vec3[];
  readonly reach: number;
  /** Whether all screws between these and those can be driven while those are there; true where there are none. */
  readonly reachable: (moving: readonly string[], rest: readonly string[]) => boolean;
}

/** Two things touch when their pieces come this near (mm). */
const TOUCH_MM = 0.1;

const touch = (a: Lump, b: Lump): boolean =>
  boxesMeet(boxGrown(a.box, TOUCH_MM), b.box) &&
  a.blocks.some(({ box }) => b.blocks.some((other) => boxesMeet(boxGrown(box, TOUCH_MM), other.box)));

type Pairwise = (a: number, b: number) => boolean;
const NOTHING: Pairwise = () => false;

/** Whether all things are joined by touching one another. */
const isOnePiece = (things: readonly number[], touches: Pairwise): boolean => {
  const [first] = things;
  if (first === undefined) return true;
  const met = new Set([first]);
  for (const thing of met) for (const other of things) if (!met.has(other) && touches(thing, other)) met.add(other);
  return met.size === things.length;
};

/** The thing with everything that must come off with it: what it would meet, what that would meet, and so on. */
const together = (thing: number, left: readonly number[], blocks: Pairwise): readonly number[] => {
  const group = new Set([thing]);
  for (const each of group) for (const other of left) if (!group.has(other) && blocks(each, other)) group.add(other);
  return [...group];
};

/** A yes or no for each pair of things, worked out when it is first asked for. */
const pairs = (count: number, ask: Pairwise): Pairwise => {
  const known = new Int8Array(count * count);
  return (a, b) => {
    const at = a * count + b;
    if (known[at] === 0) known[at] = ask(a, b) ? 1 : -1;
    return known[at] === 1;
  };
};

interface Candidate {
  readonly moving: readonly number[];
  readonly way: number;
  readonly cost: readonly number[];
}

const lessCost = (a: readonly number[], b: readonly number[]): boolean => {
  const at = a.findIndex((value, i) => value !== b[i]);
  return at >= 0 && (a[at] ?? 0) < (b[at] ?? 0);
};

/**
 * The order in which things go together, found by taking them apart: what can be drawn off straight without meeting
 * what is left comes off, the last thing of the order first. A thing that something else holds on its way comes off
 * together with that (the closure of the directional blocking graph, Wilson and Latombe 1994), so that several which
 * only go in together are found. Of all that can come off, what leaves its screws in reach goes first, then what
 * leaves the rest in one piece, then what a person would have put on last, by the way that is soonest clear.
 */
export const orderOfMoves = (things: readonly Loose[], rules: TakeApartRules): readonly Move[] => {
  const count = things.length;
  const lumps = things.map(({ lump }) => lump);
  const idOf = (i: number): string => things[i]?.id ?? '';
  const rankOf = (i: number): number => things[i]?.rank ?? 0;
  const asked = (ask: (a: Lump, b: Lump) => boolean, from = lumps): Pairwise =>
    pairs(count, (a, b) => {
      const [one, other] = [from[a], lumps[b]];
      return one !== undefined && other !== undefined && ask(one, other);
    });
  const touches = asked(touch);
  const overlaps = asked(lumpsShare);
  // What is drawn in one place with another is a fault of its own and told elsewhere: it blocks nothing.
  const blocks = rules.ways.map((way) => {
    const swept = asked(
      lumpsShare,
      lumps.map((lump) => sweptLump(lump, way, rules.reach)),
    );
    return (a: number, b: number): boolean => swept(a, b) && !overlaps(a, b);
  });
  // What can be screwed on among more things can be among fewer.
  const inReach = new Set<string>();
  const reachable = (moving: readonly number[], rest: readonly number[]): boolean => {
    const key = moving.join(' ');
    const found = inReach.has(key) || rules.reachable(moving.map(idOf), rest.map(idOf));
    if (found) inReach.add(key);
    return found;
  };
  // How far two things lie beside each other along each way: what is pressed into a joint is clear after its depth.
  const spans = rules.ways.map((way) => lumps.map((lump) => spanAlong(lump, way)));
  const beside = (moving: readonly number[], rest: readonly number[], way: number): number =>
    Math.max(
      0,
      ...moving.flatMap((a) =>
        rest.flatMap((b) => {
          const [one, other] = [spans[way]?.[a], spans[way]?.[b]];
          return one && other && touches(a, b) ? [Math.min(one[1], other[1]) - Math.max(one[0], other[0])] : [];
        }),
      ),
    );
  const moves: Move[] = [];
  const gone: number[] = [];
  let left: readonly number[] = things.map((_, i) => i).sort((a, b) => rankOf(a) - rankOf(b));
  const candidate = (first: number, way: number, best: Candidate | null): Candidate | null => {
    const moving = together(first, left, blocks[way] ?? NOTHING);
    if (moving.length === left.length || (best !== null && moving.length > best.moving.length)) return null;
    const rest = left.filter((each) => !moving.includes(each));
    const cost = [
      moving.length,
      reachable(moving, rest) ? 0 : 1,
      isOnePiece(rest, touches) ? 0 : 1,
      moving.some((each) => rest.some((other) => touches(each, other))) ? 0 : 1,
      -Math.max(...moving.map(rankOf)),
      Math.round(beside(moving, rest, way)),
      way,
    ];
    return best === null || lessCost(cost, best.cost) ? { moving, way, cost } : null;
  };
  while (left.length > 1) {
    let best: Candidate | null = null;
    for (const thing of left)
      for (let way = 0; way < rules.ways.length; way++) best = candidate(thing, way, best) ?? best;
    if (best === null) break;
    const { moving, way } = best;
    const held = blocks[way] ?? NOTHING;
    moves.push({
      ids: moving.map(idOf),
      into: negate(rules.ways[way] ?? ORIGIN),
      before: gone.filter((later) => moving.some((each) => held(each, later))).map(idOf),
    });
    gone.push(...moving);
    left = left.filter((each) => !moving.includes(each));
  }
  // What is left at the end is the first; several that nothing parts are named in the order a person would take.
  const first = left.map((i): Move => ({ ids: [idOf(i)], into: null, before: [] }));
  return [...first, ...moves.toReversed()];
};
