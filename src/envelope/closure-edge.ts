import { after, HOME, type Pose, placed, turnAbout, type Vec3 } from '../base/index.ts';
import type { HouseRules } from '../catalog/index.ts';
import type { Survey } from '../design/index.ts';
import type { CargoSpace, PlacedClosure } from './space.ts';

const byId = (space: CargoSpace, id: string): PlacedClosure => {
  const found = space.closures.find((closure) => closure.id === id);
  if (!found) throw new RangeError(`no closure has the id ${id}`);
  return found;
};

/**
 * The pose of everything that hangs on a closure when it, and what carries it, stand open by the given turns (rad); a
 * closure that is not named stays closed, so that a glass may open by itself in a closed hatch.
 */
export const closurePose = (space: CargoSpace, id: string, opened: Readonly<Record<string, number>>): Pose => {
  const chain: PlacedClosure[] = [];
  for (let at: string | null = id; at !== null; at = chain.at(-1)?.carriedBy ?? null) chain.push(byId(space, at));
  return chain.reduceRight<Pose>(
    (pose, closure) => after(pose, turnAbout(closure.point, closure.axis, opened[closure.id] ?? 0)),
    HOME,
  );
};

export interface OpenEdge {
  /** The lowest point of the open closure, in vehicle axes. */
  readonly at: Vec3;
  /** Its height above ground, or null while the floor's height is unknown. */
  readonly aboveGroundMm: number | null;
}

/** The lowest edge of a closure that stands fully open (carried by what carries it, open too): where a head meets it. */
export const lowestOpenEdge = (space: CargoSpace, id: string, floorAboveGroundMm: number | null): OpenEdge | null => {
  const opened = Object.fromEntries(space.closures.map((closure) => [closure.id, closure.opensRad]));
  const pose = closurePose(space, id, opened);
  let lowest: Vec3 | null = null;
  for (const body of space.bodies) {
    if (body.kind !== 'closure' || body.closure !== id) continue;
    for (const vertex of body.shape.vertices) {
      const at = placed(pose, vertex);
      if (!lowest || at[2] < lowest[2]) lowest = at;
    }
  }
  if (!lowest) return null;
  return { at: lowest, aboveGroundMm: floorAboveGroundMm === null ? null : lowest[2] + floorAboveGroundMm };
};

/** The lowest edge of an open closure: as taped, and as hinge, profile and angle make it. */
export interface ClosureEdge {
  readonly closure: string;
  readonly tapedMm: number | null;
  readonly madeMm: number;
  readonly limitMm: number;
  /** True where both are known and do not fit. */
  readonly off: boolean;
}

/**
 * The lowest edge of one closure above ground, held against what was taped. The car stands lower or higher by its load
 * and its tyres, so the limit is a house rule of its own (`lowest-edge-agree`). Null while the floor's height is unknown.
 */
export const closureEdge = (
  space: CargoSpace,
  survey: Survey,
  id: string,
  floorAboveGroundMm: number | null,
  rules: HouseRules,
): ClosureEdge | null => {
  const madeMm = lowestOpenEdge(space, id, floorAboveGroundMm)?.aboveGroundMm ?? null;
  if (madeMm === null) return null;
  const limitMm = rules.value('lowest-edge-agree');
  const tapedMm = survey.closures.find((closure) => closure.id === id)?.lowestEdgeAboveGroundMm ?? null;
  return { closure: id, tapedMm, madeMm, limitMm, off: tapedMm !== null && Math.abs(tapedMm - madeMm) > limitMm };
};
