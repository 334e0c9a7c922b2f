import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { type Coupling, type LiftTask, liftIndex, liftLimitKg } from '../../../src/inspection/reach/index.ts';
import reference from '../../reference/lifting.json' with { type: 'json' };

/** Every case of the reference is lifted seldom: at most once in five minutes, for an hour. */
const SELDOM = 1;

describe('reference values', () => {
  it('holds to the published tolerance, all lifted seldom', () => {
    expect(reference.tolerance).toBe(0.001);
    expect(new Set(reference.cases.map(({ frequency }) => frequency))).toEqual(new Set(['<=0.2/min, <=1 h']));
  });

  test.each(reference.cases)('$loadKg kg at $horizontalCm out, $verticalCm up', (one) => {
    const limit = liftLimitKg({ ...one, coupling: one.coupling as Coupling, frequencyFactor: SELDOM });
    expect(Math.abs(limit - one.expect.limitKg)).toBeLessThanOrEqual(reference.tolerance);
    const index = liftIndex(one.loadKg, limit);
    if (one.expect.index === null) expect(index).toBeNull();
    else expect(Math.abs((index ?? 0) - one.expect.index)).toBeLessThanOrEqual(reference.tolerance);
  });
});

const task = (rest: Partial<LiftTask>): LiftTask => ({
  horizontalCm: 30,
  verticalCm: 75,
  travelCm: 25,
  asymmetryDeg: 0,
  frequencyFactor: SELDOM,
  coupling: 'good',
  ...rest,
});

describe('laws', () => {
  it('the index rises with distance, out and away from knuckle height', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 25, max: 62, noNaN: true }),
        fc.double({ min: 0.1, max: 1, noNaN: true }),
        (h, by) => {
          const [near, far] = [h, h + by].map((horizontalCm) => liftIndex(10, liftLimitKg(task({ horizontalCm }))));
          expect(far ?? 0).toBeGreaterThan(near ?? 0);
        },
      ),
      { seed: 5, numRuns: 200 },
    );
    fc.assert(
      fc.property(
        fc.double({ min: 75, max: 170, noNaN: true }),
        fc.double({ min: 0.1, max: 5, noNaN: true }),
        (v, by) => {
          const [low, high] = [v, v + by].map((verticalCm) => liftIndex(10, liftLimitKg(task({ verticalCm }))));
          expect(high ?? 0).toBeGreaterThan(low ?? 0);
        },
      ),
      { seed: 6, numRuns: 200 },
    );
  });
});
