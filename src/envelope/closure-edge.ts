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

/** A lowest edge as taped, against what hinge, profile and angle make it. */
export interface EdgeContradiction {
  readonly closure: string;
  readonly tapedMm: number;
  readonly madeMm: number;
  readonly limitMm: number;
}

/**
 * Closures whose taped lowest edge above ground does not fit their hinge, profile and angle within what the shop allows
 * between readings (`closure-error-stop`). Empty while the floor's height above ground is unknown.
 */
export const edgeContradictions = (
  space: CargoSpace,
  survey: Survey,
  floorAboveGroundMm: number | null,
  rules: HouseRules,
): readonly EdgeContradiction[] =>
  survey.closures.flatMap((closure) => {
    const tapedMm = closure.lowestEdgeAboveGroundMm;
    const madeMm = lowestOpenEdge(space, closure.id, floorAboveGroundMm)?.aboveGroundMm ?? null;
    const limitMm = rules.value('closure-error-stop');
    if (tapedMm === undefined || madeMm === null || Math.abs(tapedMm - madeMm) <= limitMm) return [];
    return [{ closure: closure.id, tapedMm, madeMm, limitMm }];
  });
