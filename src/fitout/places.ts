import type { Vec3 } from '../base/index.ts';
import type { AxisPlace, Carcass, NodeId } from '../design/index.ts';
import { vehicleSize } from './frames.ts';
import type { FitProblem } from './parts.ts';

const VEHICLE_AXES = ['x', 'y', 'z'] as const;

interface Placing {
  readonly byId: ReadonlyMap<NodeId, Carcass>;
  readonly problems: FitProblem[];
}

const problem = (code: 'no-such-carcass' | 'circle-of-places', at: NodeId, because: readonly string[]): FitProblem => ({
  code,
  at,
  axis: null,
  needMm: null,
  haveMm: null,
  because,
});

/**
 * Low coordinate of a carcass on one vehicle axis. A chain that comes back to a carcass already in `trail` is a
 * circle and stands at zero there, so that everything still has a place.
 */
const lowOn = (carcass: Carcass, axis: 0 | 1 | 2, placing: Placing, trail: readonly NodeId[]): number => {
  const place: AxisPlace = carcass.place[VEHICLE_AXES[axis]];
  if (place.rule === 'at') return place.mm;
  const neighbour = placing.byId.get(place.carcass);
  if (!neighbour) {
    if (trail.length === 0) placing.problems.push(problem('no-such-carcass', carcass.id, [place.carcass]));
    return 0;
  }
  const chain = [...trail, carcass.id];
  if (chain.includes(neighbour.id)) {
    if (neighbour.id === chain[0]) placing.problems.push(problem('circle-of-places', neighbour.id, chain));
    return 0;
  }
  const low = lowOn(neighbour, axis, placing, chain);
  return place.side === 'plus'
    ? low + vehicleSize(neighbour)[axis] + place.gapMm
    : low - vehicleSize(carcass)[axis] - place.gapMm;
};

export interface Places {
  /** Low corner of each carcass on the vehicle's axes. */
  readonly lows: ReadonlyMap<NodeId, Vec3>;
  readonly problems: readonly FitProblem[];
}

/**
 * Where every carcass stands. Each axis is resolved on its own, so A may stand beside B on x while B stands beside A
 * on z. An unknown neighbour or a circle gives a problem at each carcass concerned and the coordinate 0.
 */
export const placesOf = (carcasses: readonly Carcass[]): Places => {
  const placing: Placing = { byId: new Map(carcasses.map((carcass) => [carcass.id, carcass])), problems: [] };
  const lows = new Map<NodeId, Vec3>();
  for (const carcass of carcasses)
    lows.set(carcass.id, [
      lowOn(carcass, 0, placing, []),
      lowOn(carcass, 1, placing, []),
      lowOn(carcass, 2, placing, []),
    ]);
  return { lows, problems: placing.problems };
};
