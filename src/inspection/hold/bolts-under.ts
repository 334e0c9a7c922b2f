import { add, cross, dot, ROUNDING_MM, scale, subtract, unit, type Vec3 } from '../../base/index.ts';

/** A force with its moment about the origin of the vehicle. */
export interface Wrench {
  readonly force: Vec3;
  readonly moment: Vec3;
}

export const NO_WRENCH: Wrench = { force: [0, 0, 0], moment: [0, 0, 0] };
export const plusWrench = (a: Wrench, b: Wrench): Wrench => ({
  force: add(a.force, b.force),
  moment: add(a.moment, b.moment),
});
export const minusWrench = ({ force, moment }: Wrench): Wrench => ({
  force: scale(force, -1),
  moment: scale(moment, -1),
});
export const wrenchAt = (at: Vec3, force: Vec3): Wrench => ({ force, moment: cross(at, force) });

/** Bolts whose squared distances (mm²) from a line add up to no more than this stand on it. */
const ONE_LINE_MM2 = ROUNDING_MM;
/** Moment (N mm) about the line of bolts that is rounding. */
const NO_TURN_NMM = 1;

type Rows = readonly [Vec3, Vec3, Vec3];

const solve3 = ([a, b, c]: Rows, right: Vec3): Vec3 => {
  const det = dot(a, cross(b, c));
  // Cramer's rule on a symmetric matrix: its rows are its columns.
  return [dot(right, cross(b, c)) / det, dot(a, cross(right, c)) / det, dot(a, cross(b, right)) / det];
};

/**
 * The force at each bolt of a group under a force and a moment: F / n + ω × r about their middle, with Σ r × (ω × r) = M,
 * each bolt as stiff along as across. Null where all stand on one line and the moment turns about it, or on one spot.
 */
export const boltsUnder = (points: readonly Vec3[], { force, moment }: Wrench): readonly Vec3[] | null => {
  if (points.length === 0) return null;
  const middle = scale(
    points.reduce((sum, point) => add(sum, point)),
    1 / points.length,
  );
  const turn = subtract(moment, cross(middle, force));
  const offs = points.map((point) => subtract(point, middle));
  const even = scale(force, 1 / points.length);
  const polar = offs.reduce((sum, off) => sum + dot(off, off), 0);
  if (polar === 0) return Math.hypot(...turn) <= NO_TURN_NMM ? points.map(() => even) : null;
  const row = (i: 0 | 1 | 2): Vec3 => {
    const entry = (j: 0 | 1 | 2): number => (i === j ? polar : 0) - offs.reduce((sum, off) => sum + off[i] * off[j], 0);
    return [entry(0), entry(1), entry(2)];
  };
  const rows: Rows = [row(0), row(1), row(2)];
  const onLine = dot(rows[0], cross(rows[1], rows[2])) <= ONE_LINE_MM2 * polar ** 2;
  if (onLine) {
    const line = unit(offs.reduce((far, off) => (dot(off, off) > dot(far, far) ? off : far)));
    const about = dot(turn, line);
    if (Math.abs(about) > NO_TURN_NMM) return null;
    const spin = scale(subtract(turn, scale(line, about)), 1 / polar);
    return offs.map((off) => add(even, cross(spin, off)));
  }
  const spin = solve3(rows, turn);
  return offs.map((off) => add(even, cross(spin, off)));
};
