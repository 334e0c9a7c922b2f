import {
  add,
  bad,
  cross,
  dot,
  good,
  length,
  type Polygon,
  type Problem,
  type Result,
  ROUNDING_MM,
  ROUNDING_MM2,
  ROUNDING_RAD,
  radians,
  scale,
  signedArea,
  subtract,
  unit,
  type Vec2,
  type Vec3,
} from '../base/index.ts';
import type { ConvexShape } from '../bodies/index.ts';
import type { Closure } from '../design/index.ts';
import { extruded } from './extruded.ts';
import type { PlacedClosure } from './space.ts';

/** Where a closure opens to, square out of the vehicle. */
export const OUTWARD: Readonly<Record<Closure['outward'], Vec3>> = {
  rear: [-1, 0, 0],
  left: [0, 1, 0],
  right: [0, -1, 0],
};

const HANGS: Readonly<Record<Closure['hangs'], Vec3>> = {
  down: [0, 0, -1],
  up: [0, 0, 1],
  left: [0, 1, 0],
  right: [0, -1, 0],
  forward: [1, 0, 0],
  rearward: [-1, 0, 0],
};

/** The closed closure's own axes: along the hinge, from the hinge to the free edge, and out of the vehicle. */
interface ClosureFrame {
  readonly axis: Vec3;
  readonly away: Vec3;
  readonly out: Vec3;
}

/** The part of a direction that is square to the axis, as a unit vector; null when nothing of it is left. */
const squareTo = (axis: Vec3, direction: Vec3): Vec3 | null => {
  const rest = subtract(direction, scale(axis, dot(axis, direction)));
  return length(rest) > ROUNDING_RAD ? unit(rest) : null;
};

const frameOf = (closure: Closure, at: string): Result<ClosureFrame> => {
  const { from, to } = closure.hinge;
  const along = subtract(to, from);
  if (length(along) <= ROUNDING_MM)
    return bad([{ at: `${at}.hinge.to`, code: 'no-size', expected: 'a hinge line with a length', got: '0 mm' }]);
  const line = unit(along);
  const away = squareTo(line, HANGS[closure.hangs]);
  if (!away)
    return bad([
      { at: `${at}.hangs`, code: 'along-hinge', expected: 'a direction across the hinge line', got: closure.hangs },
    ]);
  const turning = cross(line, away);
  const lead = dot(turning, OUTWARD[closure.outward]);
  if (Math.abs(lead) <= ROUNDING_RAD)
    return bad([
      {
        at: `${at}.outward`,
        code: 'cannot-open',
        expected: 'the way in which the free edge first moves',
        got: closure.outward,
      },
    ]);
  // A turn about the axis first carries the free edge along axis × away: outward for the right sign of the axis.
  const axis = lead > 0 ? line : unit(subtract(from, to));
  return good({ axis, away, out: cross(axis, away) });
};

/**
 * The side view of each straight piece of the closure, [away from the hinge, into the cargo space]: from the inner
 * trim outward by the thickness. At a step of the trim the piece on the inner level reaches out over the whole step,
 * so that the pieces leave no gap.
 */
const piecesOf = (profile: readonly Vec2[], thickness: number): readonly Polygon[] => {
  const outer = profile.map(([u, v], i) => {
    const beside = [profile[i - 1], profile[i + 1]].filter(
      (p): p is Vec2 => p !== undefined && Math.abs(p[0] - u) <= ROUNDING_MM,
    );
    return Math.min(v, ...beside.map((p) => p[1])) - thickness;
  });
  return profile.slice(1).flatMap((b, i) => {
    const a = profile[i] ?? b;
    const quad: Polygon = [a, b, [b[0], outer[i + 1] ?? b[1]], [a[0], outer[i] ?? a[1]]];
    return Math.abs(signedArea(quad)) > ROUNDING_MM2 ? [quad] : [];
  });
};

export interface ClosureRead {
  readonly placed: PlacedClosure;
  /** Its convex pieces, closed, from the hinge outward. */
  readonly pieces: readonly ConvexShape[];
}

/**
 * A closure as a mover that opens by a positive turn, with its body between the two ends of its hinge line, or what is
 * wrong with its hinge or its profile.
 */
export const placeClosure = (closure: Closure, at: string): Result<ClosureRead> => {
  const read = frameOf(closure, at);
  if (!read.ok) return read;
  const { axis, away, out } = read.value;
  const { from, to } = closure.hinge;
  const quads = piecesOf(closure.innerProfile, closure.thicknessMm);
  const problem: Problem = {
    at: `${at}.innerProfile`,
    code: 'no-area',
    expected: 'a profile that leads away from the hinge',
  };
  if (quads.length === 0) return bad([problem]);
  const pointAt =
    (end: Vec3) =>
    ([u, v]: Vec2): Vec3 =>
      add(end, add(scale(away, u), scale(out, -v)));
  // away × inward = away × (−out) = −(away × out) = −axis, so the near end is the one further along the axis.
  const [near, far] = dot(subtract(to, from), axis) > 0 ? [to, from] : [from, to];
  return good({
    placed: {
      id: closure.id,
      name: closure.name,
      kind: closure.kind,
      point: from,
      axis,
      opensRad: radians(closure.opensDeg),
      carriedBy: closure.carriedBy,
    },
    pieces: quads.map((quad) => extruded(quad, pointAt(near), pointAt(far))),
  });
};
