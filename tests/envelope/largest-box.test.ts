import { describe, expect, it } from 'vitest';
import { loadSolids } from '../../src/bodies/index.ts';
import { houseRules, standardCatalog } from '../../src/catalog/index.ts';
import type { Survey } from '../../src/design/index.ts';
import { createCargoSpace, largestBox } from '../../src/envelope/index.ts';
import { boxSurvey, HATCH, surveyOf } from './surveys.ts';

const rules = houseRules(standardCatalog(), []);
const solids = await loadSolids();

const largest = (survey: Survey, at: readonly [number, number], withUncertainty = false) => {
  const space = createCargoSpace(survey, rules, solids);
  if (!space.ok) throw new Error(JSON.stringify(space.error));
  const found = largestBox(space.value, survey, rules, { at, withUncertainty });
  if (!found.ok) throw new Error('nothing stands there');
  return found.value;
};

/** The search stops when half a millimetre more on a side does not help. */
const FINEST = 1;

describe('largestBox', () => {
  it('in a room of boards is the room less the gaps', () => {
    const found = largest(boxSurvey(), [700, 0]);
    // 1500 × 1200 × 900 less 6 at both ends, both sides and the roof; it stands on the floor.
    [1500 - 12, 1200 - 12, 900 - 6].forEach((size, axis) => {
      expect(Math.abs((found.sizeMm[axis] ?? 0) - size)).toBeLessThan(FINEST);
      expect(found.sizeMm[axis]).toBeLessThanOrEqual(size);
    });
    expect(found.volumeMm3).toBeLessThanOrEqual(found.boundMm3);
    expect(found.limits).toMatchObject({
      rear: { kind: 'skin' },
      front: { kind: 'skin' },
      left: { kind: 'skin' },
      right: { kind: 'skin' },
      top: { kind: 'skin' },
      bottom: null,
    });
  });

  it('counts the uncertainty of the survey in', () => {
    // 2 · √(1.5² + 2² + 1²) = 5.385 more than the 6 mm on each side.
    expect(Math.abs(largest(boxSurvey(), [700, 0], true).sizeMm[1] - (1200 - 2 * (6 + 5.385)))).toBeLessThan(FINEST);
  });

  it('keeps off an obstacle by its own gap, and names it', () => {
    const survey = boxSurvey({
      obstacles: [
        {
          id: 'obstacle-1',
          name: 'seat back',
          kind: 'seat-back',
          solid: { shape: 'box', min: [1200, -600, 0], max: [1500, 600, 900] },
        },
      ],
    });
    const found = largest(survey, [700, 0]);
    // 20 mm to a seat-back: its front at 1200 leaves 1180, less 6 behind.
    expect(Math.abs(found.box.max[0] - 1180)).toBeLessThan(FINEST);
    expect(found.limits.front).toMatchObject({ kind: 'obstacle', id: 'obstacle-1', rule: 'gap-seat' });
  });

  it('keeps off the whole swing of a hatch, not only its closed place', () => {
    const inward = {
      ...HATCH,
      innerProfile: [
        [0, 0],
        [450, 60],
        [900, 0],
      ],
    };
    const found = largest(boxSurvey({ closures: [inward] }), [700, 0]);
    // Closed, the trim reaches 60 into the room from the plane at −20, at 450 below the hinge: x = 40, and 15 of gap.
    // Opening, that point, 454 from the hinge and 7.6° inside, swings outward only: closed is the tightest place.
    expect(found.limits.rear).toMatchObject({ kind: 'closure', id: 'hatch', rule: 'gap-hatch-trim' });
    expect(found.box.min[0]).toBeGreaterThanOrEqual(55);
    expect(found.box.min[0]).toBeLessThan(57);
  });

  it('under a roof that slopes to the sides trades width for height as a plain search does', () => {
    // Half width 600 up to 400, then in to 200 at 900: y = 600 − 0.8 (z − 400).
    const slope = [
      [600, 0],
      [600, 400],
      [200, 900],
    ] as const;
    const found = largest(
      surveyOf([
        { xMm: 0, left: slope },
        { xMm: 1500, left: slope },
      ]),
      [700, 0],
    );
    // Half width w: height = 400 + (600 − 6·√(1 + 0.8²) − w) / 0.8 below the slope kept 6 off, at most 894.
    const edge = 600 - 6 * Math.sqrt(1 + 0.8 ** 2);
    let best = 0;
    for (let w = 200; w <= 594; w += 0.25) best = Math.max(best, 2 * w * Math.min(894, 400 + (edge - w) / 0.8));
    const area = found.sizeMm[1] * found.sizeMm[2];
    expect(area / best).toBeGreaterThan(0.998);
    expect(area / best).toBeLessThan(1.0005);
  });

  it('finds nothing where no carcass stands', () => {
    const space = createCargoSpace(boxSurvey(), rules, solids);
    if (!space.ok) throw new Error('no space');
    expect(largestBox(space.value, boxSurvey(), rules, { at: [5000, 0] })).toEqual({ ok: false, error: null });
  });

  it('keeps the gap between carcasses to those that stand there, and names the one on the spot', () => {
    const survey = boxSurvey();
    const space = createCargoSpace(survey, rules, solids);
    if (!space.ok) throw new Error('no space');
    const carcasses = [{ id: 'carcass-1', box: { min: [20, 100, 0], max: [1480, 590, 880] } as const }];
    const options = { carcasses, withUncertainty: false } as const;
    const beside = largestBox(space.value, survey, rules, { ...options, at: [700, -200] });
    if (!beside.ok) throw new Error('nothing stands there');
    // 3 mm between carcasses: from the right wall at -600 + 6 to 100 - 3.
    expect(Math.abs(beside.value.box.max[1] - 97)).toBeLessThan(FINEST);
    expect(beside.value.limits.left).toMatchObject({ kind: 'carcass', id: 'carcass-1', rule: 'gap-between-carcasses' });
    expect(largestBox(space.value, survey, rules, { ...options, at: [700, 300] })).toMatchObject({
      ok: false,
      error: { kind: 'carcass', id: 'carcass-1' },
    });
  });
});
