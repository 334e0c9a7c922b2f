import { describe, expect, it } from 'vitest';
import { findingsOf, inspectScene, mass, vehicleWith } from '../fixture.ts';

const weighed = (frontKg: number, rearKg: number, id = 'fitted') =>
  inspectScene({
    survey: null,
    design: {
      vehicle: vehicleWith({
        wheelbaseMm: 3000,
        sillBehindRearAxleMm: 900,
        slip: { frontKg: 1200, rearKg: 1000 },
        built: { case: id, frontKg, rearKg },
      }),
    },
    fitout: {
      masses: [
        mass('side', 100, [900, 0, 0]),
        mass('bag', 120, [900, 0, 0], { kind: 'gear', sigmaKg: 8 }),
        mass('kit', 65, [900, 0, 0], { kind: 'gear', sigmaKg: 6 }),
      ],
    },
  });

describe('the scale after the build', () => {
  it('is set against the prediction of the same case', () => {
    // 2,200 + 115 + 120 + 65 = 2,500 predicted, all added on the rear axle; 2,520 weighed.
    const { weighed: told } = weighed(1200, 1320);
    expect(told).toMatchObject({ case: 'fitted', addedKg: 300 });
    expect(told?.moreKg).toBeCloseTo(20, 9);
    expect(told?.predicted.rearKg).toBeCloseTo(1300, 9);
    // 64 + 36 + 4 · 25 = 200: 20 · 64 / 200 = 6.4 and 20 · 36 / 200 = 3.6; 20 / √200 = 1.41 standard deviations.
    expect(told?.items.slice(0, 2).map(({ id, moreKg }) => [id, moreKg])).toEqual([
      ['bag', expect.closeTo(6.4, 9)],
      ['kit', expect.closeTo(3.6, 9)],
    ]);
    expect(told?.sigmas).toBeCloseTo(20 / Math.sqrt(200), 9);
    // (115 + 20) / 100 − 1
    expect(told?.contingencyShare).toBeCloseTo(0.35, 9);
  });

  it('a difference over a twentieth of what was added is a caution', () => {
    const [caution] = findingsOf(weighed(1200, 1320), 'weigh-difference');
    expect(caution).toMatchObject({ severity: 'caution', limit: 0.05 });
    expect(caution?.value).toBeCloseTo(20 / 300, 9);
    expect(findingsOf(weighed(1200, 1310), 'weigh-difference')).toEqual([]);
  });

  it('says nothing of a case that is not predicted, or before the build', () => {
    expect(weighed(1200, 1320, 'no-case').weighed).toBeNull();
    expect(inspectScene({ survey: null }).weighed).toBeNull();
  });
});
