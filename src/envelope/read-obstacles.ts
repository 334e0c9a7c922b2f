import {
  bad,
  good,
  type Polygon,
  type Problem,
  type Result,
  ROUNDING_MM,
  ROUNDING_MM2,
  selfCrossing,
  signedArea,
} from '../base/index.ts';
import { type ConvexShape, shapeBox } from '../bodies/index.ts';
import type { Survey } from '../design/index.ts';
import { convexSlabs } from './convex-slabs.ts';
import { extruded } from './extruded.ts';
import { readSolid } from './read-solid.ts';
import type { PlacedZone, VehicleBody } from './space.ts';

/** The obstacles of the survey as bodies: fixed ones, and those that a closure carries. */
export const readObstacles = (survey: Survey): Result<readonly VehicleBody[]> => {
  const closures = new Set<string>(survey.closures.map((closure) => closure.id));
  const problems: Problem[] = [];
  const bodies: VehicleBody[] = [];
  survey.obstacles.forEach((obstacle, i) => {
    const at = `survey.obstacles[${i}]`;
    const { id, name, movesWith, kind, solid } = obstacle;
    if (movesWith !== null && !closures.has(movesWith)) {
      const got = movesWith;
      problems.push({ at: `${at}.movesWith`, code: 'no-such-closure', expected: 'a closure of the survey', got });
    }
    const read = readSolid(solid, `${at}.solid`);
    // A strut is a round bar from its ball point on the body to the one on the closure.
    const stays = kind === 'strut' && movesWith !== null && solid.shape === 'capsule' ? { stays: solid.from } : {};
    if (read.ok)
      bodies.push({ id, origin: id, name, kind: 'obstacle', shape: read.value, closure: movesWith, ...stays });
    else problems.push(...read.error);
  });
  return problems.length > 0 ? bad(problems) : good(bodies);
};

/** An outline from above between two heights, as convex pieces; or what is wrong with the outline. */
const readOutline = (outline: Polygon, between: ConvexShape, at: string): Result<readonly ConvexShape[]> => {
  if (Math.abs(signedArea(outline)) <= ROUNDING_MM2)
    return bad([{ at, code: 'no-area', expected: 'an outline with an area', got: '0 mm²' }]);
  if (selfCrossing(outline) !== null)
    return bad([{ at, code: 'self-crossing', expected: 'an outline that does not cross itself' }]);
  const { min, max } = shapeBox(between);
  if (max[2] - min[2] <= ROUNDING_MM)
    return bad([{ at, code: 'no-size', expected: 'a solid with a height', got: '0 mm' }]);
  // x × y points up, so that the near end is the lower one.
  return good(
    convexSlabs(outline).map((piece) =>
      extruded(
        piece,
        ([x, y]) => [x, y, min[2]],
        ([x, y]) => [x, y, max[2]],
      ),
    ),
  );
};

/** The zones of the survey as convex shapes with their rule; one with an outline comes in pieces that share its id. */
export const readZones = (zones: Survey['zones']): Result<readonly PlacedZone[]> => {
  const problems: Problem[] = [];
  const placed: PlacedZone[] = [];
  zones.forEach((zone, i) => {
    const at = `survey.zones[${i}]`;
    const solid = readSolid(zone.solid, `${at}.solid`);
    const read =
      solid.ok && zone.outlineFromAbove
        ? readOutline(zone.outlineFromAbove, solid.value, `${at}.outlineFromAbove`)
        : solid.ok
          ? good([solid.value])
          : solid;
    if (!read.ok) {
      problems.push(...read.error);
      return;
    }
    for (const shape of read.value) placed.push({ id: zone.id, name: zone.name, rule: zone.rule, shape });
  });
  return problems.length > 0 ? bad(problems) : good(placed);
};
