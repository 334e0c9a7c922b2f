import { bad, good, type Problem, type Result } from '../base/index.ts';
import type { Survey } from '../design/index.ts';
import { readSolid } from './read-solid.ts';
import type { PlacedZone, VehicleBody } from './space.ts';

/** The obstacles of the survey as bodies: fixed ones, and those that a closure carries. */
export const readObstacles = (survey: Survey): Result<readonly VehicleBody[]> => {
  const closures = new Set<string>(survey.closures.map((closure) => closure.id));
  const problems: Problem[] = [];
  const bodies: VehicleBody[] = [];
  survey.obstacles.forEach((obstacle, i) => {
    const at = `survey.obstacles[${i}]`;
    const { id, name, movesWith } = obstacle;
    if (movesWith !== null && !closures.has(movesWith)) {
      const got = movesWith;
      problems.push({ at: `${at}.movesWith`, code: 'no-such-closure', expected: 'a closure of the survey', got });
    }
    const read = readSolid(obstacle.solid, `${at}.solid`);
    if (read.ok) bodies.push({ id, origin: id, name, kind: 'obstacle', shape: read.value, closure: movesWith });
    else problems.push(...read.error);
  });
  return problems.length > 0 ? bad(problems) : good(bodies);
};

/** The zones of the survey as convex shapes with their rule. */
export const readZones = (zones: Survey['zones']): Result<readonly PlacedZone[]> => {
  const problems: Problem[] = [];
  const placed: PlacedZone[] = [];
  zones.forEach((zone, i) => {
    const read = readSolid(zone.solid, `survey.zones[${i}].solid`);
    if (read.ok) placed.push({ id: zone.id, name: zone.name, rule: zone.rule, shape: read.value });
    else problems.push(...read.error);
  });
  return problems.length > 0 ? bad(problems) : good(placed);
};
