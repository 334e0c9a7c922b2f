import {
  after,
  type Box,
  cross,
  dot,
  HOME,
  type Pose,
  placed,
  scale,
  shift,
  subtract,
  turnAbout,
  turned,
  unit,
  type Vec3,
} from '../base/index.ts';
import type { ConvexShape } from './shapes.ts';

/** A straight travel: at amount t (mm) the body stands t along the unit vector `along` from where it is drawn. */
export interface Slide {
  readonly kind: 'slide';
  readonly along: Vec3;
  readonly fromMm: number;
  readonly toMm: number;
}

/** A turn about a fixed line: at amount t the body is turned by t, right-handed about `axis`, from where it is drawn. */
export interface Turn {
  readonly kind: 'turn';
  readonly point: Vec3;
  /** Unit vector. */
  readonly axis: Vec3;
  readonly fromRad: number;
  readonly toRad: number;
}

/** One travel of one mover. Amounts are millimetres for a slide and radians for a turn; `to` may be below `from`. */
export type Motion = Slide | Turn;

/** A motion held still at one amount: the rest of an outer mover while an inner one travels. */
export interface Held {
  readonly motion: Motion;
  readonly at: number;
}

/** First and last amount of the travel. */
export const motionSpan = (motion: Motion): readonly [number, number] =>
  motion.kind === 'slide' ? [motion.fromMm, motion.toMm] : [motion.fromRad, motion.toRad];

/** The motion with its direction made a unit vector. Throws RangeError on a zero direction, a bound that is no number, a turn over 2π. */
export const checkedMotion = (motion: Motion): Motion => {
  const [from, to] = motionSpan(motion);
  if (!Number.isFinite(from) || !Number.isFinite(to))
    throw new RangeError(`travel from ${from} to ${to} is not finite`);
  if (motion.kind === 'slide') return { ...motion, along: unit(motion.along) };
  if (Math.abs(to - from) > 2 * Math.PI)
    throw new RangeError(`turn from ${from} to ${to} rad goes round more than once`);
  return { ...motion, axis: unit(motion.axis) };
};

/** Where the motion has carried its body at that amount. */
export const motionPose = (motion: Motion, at: number): Pose =>
  motion.kind === 'slide' ? shift(scale(motion.along, at)) : turnAbout(motion.point, motion.axis, at);

/** Where held outer movers carry what rides on them, the outermost first. */
export const carriedPose = (carriers: readonly Held[]): Pose =>
  carriers.reduce((pose, { motion, at }) => after(pose, motionPose(motion, at)), HOME);

/** The motion as it runs when what carries it stands at `pose`. */
export const motionAt = (motion: Motion, pose: Pose): Motion =>
  motion.kind === 'slide'
    ? { ...motion, along: turned(pose, motion.along) }
    : { ...motion, point: placed(pose, motion.point), axis: turned(pose, motion.axis) };

/** The greatest speed of any point of the shape, mm of path for one unit of amount: 1 for a slide, the reach for a turn. */
export const greatestSpeed = (motion: Motion, shape: ConvexShape): number => {
  if (motion.kind === 'slide') return 1;
  const reaches = shape.vertices.map((vertex) => {
    const arm = cross(motion.axis, subtract(vertex, motion.point));
    return Math.sqrt(dot(arm, arm));
  });
  return Math.max(...reaches) + shape.radius;
};

/**
 * How far the moving shape reaches along `direction` at most while its amount runs over [low, high] (radius included):
 * exact for the vertices, in closed form. A turn's interval must not exceed π, so that each a cos t + b sin t has at
 * most one top in it: where it rises at the start and falls at the end.
 */
export const greatestReach = (
  motion: Motion,
  shape: ConvexShape,
  direction: Vec3,
  low: number,
  high: number,
): number => {
  let most = -Infinity;
  if (motion.kind === 'slide') {
    const speed = dot(motion.along, direction);
    for (const vertex of shape.vertices) most = Math.max(most, dot(vertex, direction));
    return most + Math.max(speed * low, speed * high) + shape.radius;
  }
  const { point, axis } = motion;
  const along = dot(axis, direction);
  const side = cross(direction, axis);
  const [cl, sl, ch, sh] = [Math.cos(low), Math.sin(low), Math.cos(high), Math.sin(high)];
  for (const vertex of shape.vertices) {
    const arm = subtract(vertex, point);
    const still = dot(axis, arm) * along;
    const a = dot(arm, direction) - still;
    const b = dot(arm, side);
    const topped = b * cl - a * sl > 0 && b * ch - a * sh < 0;
    const swing = topped ? Math.sqrt(a * a + b * b) : Math.max(a * cl + b * sl, a * ch + b * sh);
    most = Math.max(most, still + swing);
  }
  return dot(point, direction) + most + shape.radius;
};

const reachAlong = (motion: Motion, shape: ConvexShape, direction: Vec3): number => {
  const [from, to] = motionSpan(motion);
  const [low, high] = [Math.min(from, to), Math.max(from, to)];
  const middle = (low + high) / 2;
  return Math.max(
    greatestReach(motion, shape, direction, low, middle),
    greatestReach(motion, shape, direction, middle, high),
  );
};

const boxOfTravel = (motion: Motion, shape: ConvexShape): Box => {
  const reach = (direction: Vec3): number => reachAlong(motion, shape, direction);
  return {
    min: [0 - reach([-1, 0, 0]), 0 - reach([0, -1, 0]), 0 - reach([0, 0, -1])],
    max: [reach([1, 0, 0]), reach([0, 1, 0]), reach([0, 0, 1])],
  };
};

const sameVector = (a: Vec3, b: Vec3): boolean => a[0] === b[0] && a[1] === b[1] && a[2] === b[2];

const sameMotion = (a: Motion, b: Motion): boolean => {
  if (a.kind === 'slide')
    return b.kind === 'slide' && a.fromMm === b.fromMm && a.toMm === b.toMm && sameVector(a.along, b.along);
  if (b.kind === 'slide' || a.fromRad !== b.fromRad || a.toRad !== b.toRad) return false;
  return sameVector(a.point, b.point) && sameVector(a.axis, b.axis);
};

/** The last box of each shape: a hatch is asked for it against every part of the cabinet, edit after edit. */
const knownBoxes = new WeakMap<ConvexShape, { readonly motion: Motion; readonly box: Box }>();

/** The axis-aligned box around everything the shape passes through: exact for the arcs of its vertices. */
export const travelBox = (motion: Motion, shape: ConvexShape): Box => {
  const known = knownBoxes.get(shape);
  if (known && sameMotion(known.motion, motion)) return known.box;
  const box = boxOfTravel(motion, shape);
  knownBoxes.set(shape, { motion, box });
  return box;
};

/** The travel run backwards. */
export const reversed = (motion: Motion): Motion =>
  motion.kind === 'slide'
    ? { ...motion, fromMm: motion.toMm, toMm: motion.fromMm }
    : { ...motion, fromRad: motion.toRad, toRad: motion.fromRad };
