import { bad, boxAround, good, type Problem, type Result, ROUNDING_MM3 } from '../base/index.ts';
import { loftShell, type Shell, type Solids, shellPoint, shellVolume } from '../bodies/index.ts';
import type { HouseRules } from '../catalog/index.ts';
import type { Survey } from '../design/index.ts';
import { bodySigmas } from './body-sigma.ts';
import { faceSigmas } from './face-sigma.ts';
import { readClosures } from './read-closures.ts';
import { readObstacles, readZones } from './read-obstacles.ts';
import { readSections } from './read-sections.ts';
import { readSurvey, type SurveyRead } from './read-survey.ts';
import type { CargoSpace, VehicleBody } from './space.ts';

/** The problems of several readings together, in order. */
const problemsOf = (readings: readonly Result<unknown>[]): readonly Problem[] =>
  readings.flatMap((reading) => (reading.ok ? [] : reading.error));

const pointsOf = (shell: Shell) => Array.from({ length: shell.positions.length / 3 }, (_, i) => shellPoint(shell, i));

interface Free {
  readonly free: Shell;
  readonly freeVolumeMm3: number;
}

/** The skin without the obstacles that stay with the vehicle. Without any, the skin itself. */
const takeAway = (skin: Shell, fixed: readonly VehicleBody[], solids: Solids): Free => {
  if (fixed.length === 0) return { free: skin, freeVolumeMm3: shellVolume(skin) };
  return solids.scope(() => {
    const left = solids.difference(
      solids.fromShell(skin),
      fixed.map((body) => solids.fromConvex(body.shape)),
    );
    return { free: solids.toShell(left), freeVolumeMm3: solids.volume(left) };
  });
};

/** The skin as a whole is known as its worst face; without adjusted marks or start values, as any taped point. */
const skinSigma = ({ survey, stations }: SurveyRead, faces: readonly number[], vehicleSigma: number): number =>
  stations.every(({ left, right }) => [...left, ...right].every((point) => point.standing === 'typed'))
    ? Math.hypot(survey.sigmaMm, vehicleSigma)
    : faces.reduce((worst, sigma) => Math.max(worst, sigma), 0);

/**
 * The free room of the vehicle from its survey: readings adjusted, sections joined to a closed skin, fixed obstacles
 * taken away, closures placed as movers, zones placed, and how well each face is known. Gives every fault of the survey
 * with its place instead when it does not make one; faults of readings are no hindrance (`networkProblems` lists them).
 * Round obstacles are taken away as facets that hold the true round, so the free volume errs small. The survey is all
 * that it depends on beside the house rules, so a caller may remember it by the identity of both.
 */
export const createCargoSpace = (given: Survey, rules: HouseRules, solids: Solids): Result<CargoSpace> => {
  const read = readSurvey(given, rules);
  const { survey } = read;
  const [sections, obstacles, closures, zones] = [
    readSections(survey),
    readObstacles(survey),
    readClosures(survey.closures),
    readZones(survey.zones),
  ];
  if (!sections.ok || !obstacles.ok || !closures.ok || !zones.ok)
    return bad(problemsOf([sections, obstacles, closures, zones]));
  const skin = loftShell(sections.value);
  const fixed = obstacles.value.filter((body) => body.closure === null);
  const { free, freeVolumeMm3 } = takeAway(skin, fixed, solids);
  if (freeVolumeMm3 <= ROUNDING_MM3)
    return bad([{ at: 'survey.obstacles', code: 'nothing-free', expected: 'room left beside the obstacles' }]);
  const bodies = [...obstacles.value, ...closures.value.bodies];
  const vehicleSigma = rules.value('vehicle-allowance-sigma');
  const faceSigmaMm = faceSigmas(skin, read.stations, vehicleSigma);
  return good({
    sections: sections.value,
    skin,
    free,
    skinVolumeMm3: shellVolume(skin),
    freeVolumeMm3,
    bounds: boxAround(pointsOf(skin)),
    bodies,
    closures: closures.value.closures,
    zones: zones.value,
    sigmaMm: skinSigma(read, faceSigmaMm, vehicleSigma),
    faceSigmaMm,
    bodySigmaMm: bodySigmas(read, bodies, rules),
  });
};
