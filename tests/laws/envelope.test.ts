import fc from 'fast-check';
import { afterAll, describe, test } from 'vitest';
import { loadSolids } from '../../src/bodies/index.ts';
import { houseRules, standardCatalog } from '../../src/catalog/index.ts';
import type { Survey } from '../../src/design/index.ts';
import { type CargoSpace, createCargoSpace } from '../../src/envelope/index.ts';
import {
  anySurvey,
  cornersBelongToTheSkin,
  obstaclesAndFreeMakeTheSkin,
  skinsAreClosedAndOutward,
  volumeIsTheIntegralOfSections,
} from './envelope.ts';

const solids = await loadSolids();
const rules = houseRules(standardCatalog(), []);
afterAll(solids.dispose);

const spaceOf = (survey: Survey): CargoSpace | null => {
  const read = createCargoSpace(survey, rules, solids);
  if (read.ok) return read.value;
  // Obstacles may fill a small space; every other refusal of these surveys is a fault.
  if (read.error.some((problem) => problem.code !== 'nothing-free')) throw new Error(JSON.stringify(read.error));
  return null;
};

const onEverySpace = (law: (space: CargoSpace) => void): void => {
  fc.assert(
    fc.property(anySurvey, (survey) => {
      const space = spaceOf(survey);
      if (space) law(space);
    }),
    { seed: 20_260, numRuns: 60 },
  );
};

describe('every cargo space, seed 20260', () => {
  test('has closed skins that look outward', () => onEverySpace(skinsAreClosedAndOutward));
  test('is the skin less what obstacles take', () =>
    onEverySpace((space) => obstaclesAndFreeMakeTheSkin(space, solids)));
  test('has the volume of its sections', () => onEverySpace(volumeIsTheIntegralOfSections));
  test('holds the corners of its sections', () => onEverySpace(cornersBelongToTheSkin));
});
