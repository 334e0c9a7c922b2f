import { type Box, boxGap } from '../base/index.ts';
import type { Gap } from './gap.ts';
import { carriedPose, checkedMotion, type Held, type Motion, motionAt, motionSpan, travelBox } from './motion.ts';
import { firstBlock, leastOnTrack } from './search.ts';
import { type ConvexShape, shapeAt, shapeBox } from './shapes.ts';
import { type Track, trackOf } from './track.ts';

/** Certified travel is right to this: nothing deeper is missed, nothing shallower is called a block. */
export const TRAVEL_TOLERANCE_MM = 0.05;

/** The least gap is proven closer than that, since the floors close in fast and a report should not print the slack. */
const LEAST_TOLERANCE_MM = TRAVEL_TOLERANCE_MM / 50;

/** A place on the way, with the gap there: `from` lies on the moving shape, `to` on the obstacle. */
export interface TravelPlace extends Gap {
  /** The amount of the motion: mm or rad. */
  readonly at: number;
  /** Which moving shape and which obstacle, as indices into the lists given. */
  readonly shape: number;
  readonly obstacle: number;
}

export interface TravelResult {
  /** True when the required gap is kept all the way, to TRAVEL_TOLERANCE_MM. */
  readonly clear: boolean;
  /** The amount up to which the way is free: the end of the travel when clear. */
  readonly reaches: number;
  /**
   * A gap that no place of the whole travel falls below (depth when negative), proven, and at most
   * TRAVEL_TOLERANCE_MM less than that of `nearest`. Infinity where no obstacle comes within the limit.
   */
  readonly leastGap: number;
  /** The place of the least gap seen. */
  readonly nearest: TravelPlace | null;
  /** The first contact, where the way ends, unless clear. */
  readonly contact: TravelPlace | null;
  /** How many gaps were computed for the least gap. */
  readonly steps: number;
}

export interface TravelOptions {
  /** What carries the mover, held still, outermost first: motion and shapes are drawn with these at amount 0. */
  readonly carriers?: readonly Held[];
  /** Gaps beyond this are of no interest (mm); must not be below the required gap. */
  readonly limit?: number;
}

interface Pair {
  readonly shape: number;
  readonly obstacle: number;
  readonly boxes: number;
  readonly track: Track;
}

const pairsOf = (
  motion: Motion,
  shapes: readonly ConvexShape[],
  obstacles: readonly ConvexShape[],
  limit: number,
): readonly Pair[] => {
  const boxes: readonly Box[] = obstacles.map(shapeBox);
  const pairs = shapes.flatMap((moving, shape) => {
    const way = travelBox(motion, moving);
    return obstacles.flatMap((standing, obstacle): readonly Pair[] => {
      const apart = boxGap(way, boxes[obstacle] ?? way);
      return apart > limit ? [] : [{ shape, obstacle, boxes: apart, track: trackOf(motion, moving, standing) }];
    });
  });
  return pairs.sort((p, q) => p.boxes - q.boxes || p.shape - q.shape || p.obstacle - q.obstacle);
};

const placeOf = ({ shape, obstacle, track }: Pair, s: number): TravelPlace => ({
  ...track.fullGapAt(s),
  at: track.amountAt(s),
  shape,
  obstacle,
});

interface LeastOfAll {
  readonly leastGap: number;
  readonly nearest: TravelPlace | null;
  readonly steps: number;
}

/** Every pair in the order of its boxes, each only so far as it could come below the least gap seen before. */
const leastOfAll = (pairs: readonly Pair[], limit: number): LeastOfAll => {
  let best = limit;
  let proven = limit;
  let nearest: TravelPlace | null = null;
  let steps = 0;
  for (const pair of pairs) {
    if (pair.boxes >= best && pair.boxes > 0) break; // boxes that meet tell nothing of depth
    const least = leastOnTrack(pair.track, best, LEAST_TOLERANCE_MM);
    steps += least.steps;
    proven = Math.min(proven, least.proven);
    if (!least.seen) continue;
    best = least.seen.gap.distance;
    nearest = placeOf(pair, least.seen.s);
  }
  return { leastGap: nearest ? Math.min(best, proven) + 0 : Infinity, nearest, steps };
};

const firstContact = (pairs: readonly Pair[], length: number, required: number): TravelPlace | null => {
  let end = length;
  let contact: TravelPlace | null = null;
  for (const pair of pairs) {
    if (pair.boxes >= required && pair.boxes > 0) break;
    const s = firstBlock(pair.track, end, required, TRAVEL_TOLERANCE_MM);
    if (s === null || (contact && s >= end)) continue;
    end = s;
    contact = placeOf(pair, s);
  }
  return contact;
};

/**
 * Whether shapes on one mover keep `required` mm from all obstacles while it travels, proven for the whole way and not
 * only at samples. Shapes and obstacles stand in one frame, shapes where the motion is at amount 0 (and the carriers
 * at theirs). Touching is not a block when `required` is 0. Throws RangeError on a zero direction, a turn of more than
 * 2π, a bound that is not finite, or a limit below the required gap.
 */
export const certifiedTravel = (
  motion: Motion,
  shapes: readonly ConvexShape[],
  obstacles: readonly ConvexShape[],
  required: number,
  { carriers = [], limit = Infinity }: TravelOptions = {},
): TravelResult => {
  if (!(limit >= required)) throw new RangeError(`certifiedTravel: limit ${limit} mm is below the gap ${required} mm`);
  const carried = carriedPose(carriers.map(({ motion: outer, at }) => ({ motion: checkedMotion(outer), at })));
  const travel = motionAt(checkedMotion(motion), carried);
  const moving = carriers.length === 0 ? shapes : shapes.map((shape) => shapeAt(shape, carried));
  const pairs = pairsOf(travel, moving, obstacles, limit);
  const least = leastOfAll(pairs, limit);
  const [from, to] = motionSpan(travel);
  const short = least.leastGap < required - TRAVEL_TOLERANCE_MM / 2;
  const contact = short ? firstContact(pairs, Math.abs(to - from), required) : null;
  return { clear: contact === null, reaches: contact?.at ?? to, contact, ...least };
};
