import { describe, expect, it } from 'vitest';
import type { NodeId, Station } from '../../../../../src/design/index.ts';
import {
  stationAfter,
  withCoordinate,
  withPointInserted,
} from '../../../../../src/views/editor/sheets/survey/section-points.ts';

const station = (xMm: number, left: Station['left']): Station => ({
  id: `station-${xMm}` as NodeId,
  xMm,
  left,
  right: left,
});
const low = station(0, [
  [600, 0],
  [660, 300],
]);

describe('points of a section', () => {
  it('adds a point halfway to the next, and as far on behind the last', () => {
    expect(withPointInserted(low.left, 0)).toEqual([
      [600, 0],
      [630, 150],
      [660, 300],
    ]);
    // 2 × 660 − 600 = 720 and 2 × 300 − 0 = 600.
    expect(withPointInserted(low.left, 1).at(-1)).toEqual([720, 600]);
  });

  it('changes one coordinate of one point', () => {
    expect(withCoordinate(low.left, 1, 0, 655)).toEqual([
      [600, 0],
      [655, 300],
    ]);
    expect(withCoordinate(low.left, 1, 1, 310)[1]).toEqual([660, 310]);
  });
});

describe('a station more', () => {
  const high = station(400, [
    [620, 0],
    [680, 320],
  ]);

  it('stands halfway to the next, with points halfway', () => {
    expect(stationAfter([low, high], 0)).toEqual({
      xMm: 200,
      left: [
        [610, 0],
        [670, 310],
      ],
      right: [
        [610, 0],
        [670, 310],
      ],
    });
  });

  it('stands as far again behind the last', () => {
    expect(stationAfter([low, high], 1)).toMatchObject({ xMm: 800, left: high.left });
  });

  it('begins at the sill when there is none', () => {
    expect(stationAfter([], 0).xMm).toBe(0);
  });
});
