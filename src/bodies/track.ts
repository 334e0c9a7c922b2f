import { dot, type Vec3 } from '../base/index.ts';
import { type Gap, gapBetween, type Separation, separationOf } from './gap.ts';
import { greatestReach, greatestSpeed, type Motion, motionPose, motionSpan } from './motion.ts';
import { type ConvexShape, shapeAt } from './shapes.ts';

/** A moving shape and one obstacle, along the way s from 0 to `length` (mm or rad) whichever way the motion runs. */
export interface Track {
  readonly length: number;
  /** No point of the shape moves more than this for one unit of s. */
  readonly speed: number;
  readonly amountAt: (s: number) => number;
  readonly gapAt: (s: number) => Separation;
  /** The same with its points, for what is reported. */
  readonly fullGapAt: (s: number) => Gap;
  /**
   * A gap proven for all of [low, high] by one separating direction. The gap is the best of all directions, so any
   * one direction gives a lower bound; how far the shape reaches along it while it moves is known in closed form.
   */
  readonly floorOver: (direction: Vec3, low: number, high: number) => number;
  /** Where best to look next between two gaps known: halfway, or for a slide where their tangents meet. */
  readonly between: (a: Seen, b: Seen) => number;
}

/** The gap at one place of the way. */
export interface Seen {
  readonly s: number;
  readonly gap: Separation;
}

const nearestAlong = (obstacle: ConvexShape, direction: Vec3): number => {
  let least = Infinity;
  for (const vertex of obstacle.vertices) least = Math.min(least, dot(vertex, direction));
  return least - obstacle.radius;
};

/** A cut this close to the end of a piece hardly shortens it: halve instead. */
const LEAST_SHARE = 1 / 64;

/**
 * The gap of a slide is a convex function of the way, and the direction of the gap gives its tangent: the lowest point
 * under two tangents is the best place to look.
 */
const tangentsMeet = (motion: Motion, sign: number, a: Seen, b: Seen): number => {
  const half = (a.s + b.s) / 2;
  if (motion.kind !== 'slide') return half;
  const slopeA = -sign * dot(motion.along, a.gap.direction);
  const slopeB = -sign * dot(motion.along, b.gap.direction);
  if (!(slopeA < slopeB)) return half;
  const s = (b.gap.distance - a.gap.distance + slopeA * a.s - slopeB * b.s) / (slopeA - slopeB);
  const edge = LEAST_SHARE * (b.s - a.s);
  return s > a.s + edge && s < b.s - edge ? s : half;
};

/** The track of a checked motion. */
export const trackOf = (motion: Motion, shape: ConvexShape, obstacle: ConvexShape): Track => {
  const [from, to] = motionSpan(motion);
  const sign = to < from ? -1 : 1;
  const amountAt = (s: number): number => from + sign * s;
  const placed = (s: number): ConvexShape => shapeAt(shape, motionPose(motion, amountAt(s)));
  return {
    length: Math.abs(to - from),
    speed: greatestSpeed(motion, shape),
    amountAt,
    gapAt: (s) => separationOf(placed(s), obstacle),
    fullGapAt: (s) => gapBetween(placed(s), obstacle),
    floorOver: (direction, low, high) => {
      const [p, q] = [amountAt(low), amountAt(high)];
      const reach = greatestReach(motion, shape, direction, Math.min(p, q), Math.max(p, q));
      return nearestAlong(obstacle, direction) - reach;
    },
    between: (a, b) => tangentsMeet(motion, sign, a, b),
  };
};
