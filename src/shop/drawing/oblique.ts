import { add, cross, scale, unit, type Vec3 } from '../../base/index.ts';
import type { SolvedCarcass } from '../../fitout/index.ts';
import type { Sight } from './projection.ts';

/** How far a picture in space is turned to the side and looked down upon: the usual view of three faces. */
const TO_SIDE = 0.62;
const DOWN = 0.5;

/**
 * Standing before the open face of a carcass, a step to its left and above it: the face, the left side and the top are
 * seen, in parallel projection.
 */
export const obliqueSight = ({ pose }: Pick<SolvedCarcass, 'pose'>): Sight => {
  const [across, deep, up] = pose.turn;
  const away: Vec3 = unit(add(add(deep, scale(across, TO_SIDE)), scale(up, -DOWN)));
  const right = unit(cross(away, up));
  return { origin: pose.at, right, up: cross(right, away), away };
};
