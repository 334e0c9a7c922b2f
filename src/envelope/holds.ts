import type { Box, Vec3 } from '../base/index.ts';
import { boxShape, type ConvexShape, clearanceInside, type PreparedShell, prepareShell } from '../bodies/index.ts';
import type { CargoSpace } from './space.ts';

/** Search trees by cargo space: they hold nothing that the space does not say, so they may be kept as long as it is. */
const prepared = new WeakMap<CargoSpace, PreparedShell>();

const freeOf = (space: CargoSpace): PreparedShell => {
  const known = prepared.get(space) ?? prepareShell(space.free);
  prepared.set(space, known);
  return known;
};

const holds = (space: CargoSpace, shape: ConvexShape): boolean => {
  const gap = clearanceInside(shape, freeOf(space), 0);
  return gap === null || gap.distance >= 0;
};

/** True when the point lies in the free room, clear of obstacles; touching counts. */
export const holdsPoint = (space: CargoSpace, point: Vec3): boolean =>
  holds(space, { vertices: [point], faces: [], radius: 0 });

/** True when the whole box lies in the free room, clear of obstacles; touching counts. */
export const holdsBox = (space: CargoSpace, box: Box): boolean => holds(space, boxShape(box));
