import { boxGap } from '../base/index.ts';
import { distanceWithin } from './gap.ts';
import {
  carriedPose,
  checkedMotion,
  greatestSpeed,
  type Held,
  type Motion,
  motionAt,
  motionPose,
  motionSpan,
  travelBox,
} from './motion.ts';
import { type ConvexShape, shapeAt } from './shapes.ts';
import { certifiedTravel, TRAVEL_TOLERANCE_MM, type TravelResult } from './travel.ts';

/** One of two movers: what moves, how, and what carries it, held still (outermost first). */
export interface Mover {
  readonly motion: Motion;
  readonly shapes: readonly ConvexShape[];
  readonly carriers?: readonly Held[];
}

/**
 * A rectangle of the two travels as shares 0–1 of each: `free` throughout, `blocked` throughout, or `mixed` where the
 * two cannot be told apart at the resolution asked for. Mixed is never to be taken for free.
 */
export interface JointCell {
  readonly first: readonly [number, number];
  readonly second: readonly [number, number];
  readonly state: 'free' | 'blocked' | 'mixed';
}

/**
 * `always-free`: any way they move. `either-first`: one may travel wholly and then the other, in either order, but
 * somewhere in between they meet. `first-leads` / `second-leads`: that mover must travel wholly before the other.
 * `in-step`: neither may go wholly first, yet a way through the free cells leads to both being out.
 * `never-together`: with both at the end of their travel they meet, or no way leads there. `at-odds`: they meet
 * already where both begin.
 */
export type JointVerdict =
  | 'always-free'
  | 'either-first'
  | 'first-leads'
  | 'second-leads'
  | 'in-step'
  | 'never-together'
  | 'at-odds';

export interface JointResult {
  readonly verdict: JointVerdict;
  readonly cells: readonly JointCell[];
  /** Each mover travelling with the other at its start (0) or at its end (1). */
  readonly firstTravels: readonly [TravelResult, TravelResult];
  readonly secondTravels: readonly [TravelResult, TravelResult];
}

/** The square is halved at most this often each way: cells of 1/64 of a travel, some 12 mm of a long drawer. */
const DEFAULT_HALVINGS = 6;

interface Ready {
  readonly motion: Motion;
  readonly shapes: readonly ConvexShape[];
  readonly length: number;
}

const ready = ({ motion, shapes, carriers = [] }: Mover): Ready => {
  const pose = carriedPose(carriers.map(({ motion: outer, at }) => ({ motion: checkedMotion(outer), at })));
  const carried = motionAt(checkedMotion(motion), pose);
  const [from, to] = motionSpan(carried);
  return { motion: carried, shapes: shapes.map((shape) => shapeAt(shape, pose)), length: Math.abs(to - from) };
};

const placedAt = ({ motion, shapes }: Ready, share: number): readonly ConvexShape[] => {
  const [from, to] = motionSpan(motion);
  const pose = motionPose(motion, from + (to - from) * share);
  return shapes.map((shape) => shapeAt(shape, pose));
};

interface JointPair {
  readonly p: number;
  readonly q: number;
  /** The most the gap can change over the whole of both travels. */
  readonly change: number;
}

const pairsOf = (first: Ready, second: Ready, required: number): readonly JointPair[] => {
  const boxes = second.shapes.map((shape) => travelBox(second.motion, shape));
  return first.shapes.flatMap((a, p) => {
    const way = travelBox(first.motion, a);
    return second.shapes.flatMap((b, q): readonly JointPair[] => {
      const apart = boxGap(way, boxes[q] ?? way);
      if (apart > 0 && apart >= required) return [];
      const change = greatestSpeed(first.motion, a) * first.length + greatestSpeed(second.motion, b) * second.length;
      return [{ p, q, change }];
    });
  });
};

type Span = readonly [number, number];

/**
 * Over a cell the gap of a pair differs from that at its middle by no more than half the cell's width times what the
 * whole travel can change it, for both travels together: so one gap decides a cell, or it is cut in four.
 */
const judge = (
  places: readonly [readonly ConvexShape[], readonly ConvexShape[]],
  pairs: readonly JointPair[],
  half: number,
  required: number,
): JointCell['state'] => {
  let free = true;
  for (const { p, q, change } of pairs) {
    const [a, b] = [places[0][p], places[1][q]];
    if (!a || !b) continue;
    const slack = half * change;
    const gap = distanceWithin(a, b, required + slack);
    if (gap + slack < required) return 'blocked';
    if (gap - slack < required) free = false;
  }
  return free ? 'free' : 'mixed';
};

const cellsOf = (first: Ready, second: Ready, required: number, halvings: number): readonly JointCell[] => {
  const pairs = pairsOf(first, second, required);
  const cells: JointCell[] = [];
  const visit = (u: Span, v: Span, left: number): void => {
    const middle = [(u[0] + u[1]) / 2, (v[0] + v[1]) / 2] as const;
    const places = [placedAt(first, middle[0]), placedAt(second, middle[1])] as const;
    const state = judge(places, pairs, (u[1] - u[0]) / 2, required);
    if (state !== 'mixed' || left === 0) {
      cells.push({ first: u, second: v, state });
      return;
    }
    for (const p of [
      [u[0], middle[0]],
      [middle[0], u[1]],
    ] as const)
      for (const q of [
        [v[0], middle[1]],
        [middle[1], v[1]],
      ] as const)
        visit(p, q, left - 1);
  };
  visit([0, 1], [0, 1], halvings);
  return cells;
};

const overlap = (a: Span, b: Span): number => Math.min(a[1], b[1]) - Math.max(a[0], b[0]);

const neighbours = (a: JointCell, b: JointCell): boolean => {
  const [u, v] = [overlap(a.first, b.first), overlap(a.second, b.second)];
  return (u > 0 && v === 0) || (v > 0 && u === 0);
};

/** True when free cells lead from both at the start to both at the end. */
const leadsThrough = (cells: readonly JointCell[]): boolean => {
  const open = cells.filter((cell) => cell.state === 'free');
  const reached = new Set(open.filter((cell) => cell.first[0] === 0 && cell.second[0] === 0));
  for (const cell of reached) {
    if (cell.first[1] === 1 && cell.second[1] === 1) return true;
    for (const other of open) if (!reached.has(other) && neighbours(cell, other)) reached.add(other);
  }
  return false;
};

const verdictOf = (
  cells: readonly JointCell[],
  [firstNow, firstLater]: JointResult['firstTravels'],
  [secondNow, secondLater]: JointResult['secondTravels'],
  meet: { readonly atStart: boolean; readonly atEnd: boolean },
): JointVerdict => {
  if (cells.every((cell) => cell.state === 'free')) return 'always-free';
  if (meet.atStart) return 'at-odds';
  if (meet.atEnd) return 'never-together';
  const firstLeads = firstNow.clear && secondLater.clear;
  const secondLeads = secondNow.clear && firstLater.clear;
  if (firstLeads && secondLeads) return 'either-first';
  if (firstLeads) return 'first-leads';
  if (secondLeads) return 'second-leads';
  return leadsThrough(cells) ? 'in-step' : 'never-together';
};

/** Standing still they meet where a gap falls short by more than a certified travel lets pass. */
const meeting = (as: readonly ConvexShape[], bs: readonly ConvexShape[], required: number): boolean =>
  as.some((a) => bs.some((b) => distanceWithin(a, b, required) < required - TRAVEL_TOLERANCE_MM / 2));

/**
 * How two movers get on: the square of their two travels cut into cells that are proven free or proven blocked, down
 * to 2^−halvings of a travel, and what follows for the order in which they may move. The four sides of the square
 * (one travels, the other stands at its start or end) are certified travels, right to TRAVEL_TOLERANCE_MM whatever
 * the resolution of the cells. Throws as certifiedTravel does.
 */
export const jointTravel = (a: Mover, b: Mover, required: number, halvings = DEFAULT_HALVINGS): JointResult => {
  const [first, second] = [ready(a), ready(b)];
  const cells = cellsOf(first, second, required, halvings);
  const along = (mover: Ready, other: Ready, share: number): TravelResult =>
    certifiedTravel(mover.motion, mover.shapes, placedAt(other, share), required, { limit: Math.max(required, 0) });
  const firstTravels = [along(first, second, 0), along(first, second, 1)] as const;
  const secondTravels = [along(second, first, 0), along(second, first, 1)] as const;
  const meet = {
    atStart: meeting(placedAt(first, 0), placedAt(second, 0), required),
    atEnd: meeting(placedAt(first, 1), placedAt(second, 1), required),
  };
  return { verdict: verdictOf(cells, firstTravels, secondTravels, meet), cells, firstTravels, secondTravels };
};
