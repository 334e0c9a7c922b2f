import fc from 'fast-check';
import { describe, test } from 'vitest';
import {
  anyLoad,
  anyScene,
  cabinetFindingsMoveWithTheCabinet,
  feelersMeasureTheirGap,
  findingsAreWhole,
  loadsFollowTheirMoments,
  mirrorChangesNothing,
  orderOfBodiesDoesNotMatter,
  type RandomScene,
} from './inspection.ts';

const onEveryScene = (law: (scene: RandomScene) => void): void => {
  fc.assert(fc.property(anyScene, law), { seed: 4_711, numRuns: 40 });
};

describe('every inspection, seed 4711', () => {
  test('treats left and right alike', () => onEveryScene(mirrorChangesNothing));
  test('orders its findings and names their sources', () => onEveryScene(findingsAreWhole));
  test('shows feelers as long as the gap', () => onEveryScene(feelersMeasureTheirGap));
  test('does not depend on the order of bodies', () => onEveryScene(orderOfBodiesDoesNotMatter));
  test('moves with the cabinet', () => {
    const by = fc.tuple(
      fc.integer({ min: -64, max: 64 }),
      fc.integer({ min: -64, max: 64 }),
      fc.integer({ min: 0, max: 64 }),
    );
    fc.assert(fc.property(anyScene, by, cabinetFindingsMoveWithTheCabinet), { seed: 4_711, numRuns: 40 });
  });
});

describe('every load, seed 4711', () => {
  test('keeps weight and moments', () => {
    fc.assert(fc.property(anyLoad, loadsFollowTheirMoments), { seed: 4_711, numRuns: 100 });
  });
});
