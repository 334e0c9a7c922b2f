import { cross, distance, dot, placed, scale, subtract, turnAbout, unit, type Vec3 } from '../../base/index.ts';

/** A leaf on gas springs: its hinge, what it weighs, and where the springs are fixed while it is closed. */
export interface SpringLeaf {
  readonly point: Vec3;
  /** A positive turn about it opens. */
  readonly axis: Vec3;
  readonly travelRad: number;
  readonly weightN: number;
  readonly centre: Vec3;
  /** Farthest from the hinge: where a hand pushes it shut. */
  readonly handMm: number;
  readonly springs: readonly {
    readonly wall: Vec3;
    readonly leaf: Vec3;
    readonly ratedN: number;
    readonly fullMm: number;
  }[];
}

export interface SpringFigures {
  /** Force on this day over the force at 20 °C. */
  readonly day: number;
  /** Force pushed in over the force at full length, and the stroke over the full length. */
  readonly rise: number;
  readonly strokeShare: number;
}

/** Moment (N mm) about the hinge that opens the leaf at an angle: springs less weight. */
export const openingMoment = (leaf: SpringLeaf, angleRad: number, figures: SpringFigures): number => {
  const { point, axis, weightN, centre, springs } = leaf;
  const pose = turnAbout(point, axis, angleRad);
  const about = (at: Vec3, force: Vec3): number => dot(unit(axis), cross(subtract(at, point), force));
  const weight = about(placed(pose, centre), [0, 0, -weightN]);
  return springs.reduce((sum, { wall, leaf: closed, ratedN, fullMm }) => {
    const at = placed(pose, closed);
    const length = distance(wall, at);
    const pushedIn = Math.max(0, fullMm - length) / (fullMm * figures.strokeShare);
    const force = ratedN * figures.day * (1 + (figures.rise - 1) * Math.min(1, pushedIn));
    return length > 0 ? sum + about(at, scale(unit(subtract(at, wall)), force)) : sum;
  }, weight);
};

/** Steps of a swing: forces change slowly along it. */
const STEPS = 48;

export interface SpringSwing {
  /** Moment that keeps it open at its end on the coldest day (N mm); negative lets it fall. */
  readonly holdsOpen: number;
  /** Greatest hand force (N) that closes it on the hottest day, over the whole swing. */
  readonly handN: number;
}

export const springSwing = (leaf: SpringLeaf, cold: SpringFigures, hot: SpringFigures): SpringSwing => ({
  holdsOpen: openingMoment(leaf, leaf.travelRad, cold),
  handN: Math.max(
    0,
    ...Array.from(
      { length: STEPS + 1 },
      (_, i) => openingMoment(leaf, (leaf.travelRad * i) / STEPS, hot) / leaf.handMm,
    ),
  ),
});
