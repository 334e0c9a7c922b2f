import { describe, expect, it } from 'vitest';
import { solveFitOut } from '../../../src/fitout/index.ts';
import { catalog, findingsOf, inspectScene, mass, rules, vehicleWith } from '../fixture.ts';
import { weighedScene } from '../scenes/loads.ts';
import { oneCarcass } from '../solved.ts';

describe('the scale after the build', () => {
  it('is set against the prediction of the same case', () => {
    // 2,200 + 115 + 120 + 65 = 2,500 predicted, all added on the rear axle; 2,520 weighed.
    const { weighed: told } = weighedScene(1200, 1320);
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

  it('an item put right takes its share of the difference and keeps what doubt is left', () => {
    const items = weighedScene(1200, 1320).weighed?.items ?? [];
    // 120 + 6.4, known to 8 √(1 − 64/200) = 6.6; the side of the cabinet carries the contingency: 115 / 1.15 listed.
    expect(items[0]).toMatchObject({ id: 'bag', listedKg: expect.closeTo(126.4, 9) });
    expect(items[0]?.listedSigmaKg).toBeCloseTo(8 * Math.sqrt(1 - 64 / 200), 9);
    expect(items.find(({ id }) => id === 'side')?.listedKg).toBeCloseTo(100, 9);
  });

  it('tells the left side where the scale gave it and the track is known', () => {
    const scene = (more: object, leftKg: number | null) =>
      inspectScene({
        survey: null,
        design: {
          vehicle: vehicleWith({
            wheelbaseMm: 3000,
            sillBehindRearAxleMm: 900,
            slip: { frontKg: 1200, rearKg: 1000 },
            built: { case: 'fitted', frontKg: 1200, rearKg: 1120, leftKg },
            ...more,
          }),
        },
        fitout: { masses: [mass('bag', 120, [900, 400, 0], { kind: 'gear' })] },
      }).weighed?.leftKg;
    // half of 2,320 and 120 · 400 / 1,600 = 30 more
    expect(scene({ trackMm: 1600 }, 1180)).toEqual({ predicted: expect.closeTo(1190, 9), weighed: 1180 });
    expect(scene({}, 1180)).toBeNull();
    expect(scene({ trackMm: 1600 }, null)).toBeNull();
  });

  it('a mass of the cabinet that was put right stands in the place of the listed one, in every sum', () => {
    const made = oneCarcass(-300);
    const listed = solveFitOut(made, catalog, rules);
    const side = listed.masses.find(({ kind }) => kind === 'panel');
    if (!side) throw new Error('no panel');
    const known = { ...made, vehicle: { ...made.vehicle, knownMasses: [{ of: side.id, kg: 9, sigmaKg: 0.5 }] } };
    const total = (fitout: typeof listed): number => fitout.masses.reduce((sum, { massKg }) => sum + massKg, 0);
    const after = solveFitOut(known, catalog, rules);
    expect(total(after) - total(listed)).toBeCloseTo(9 - side.massKg, 9);
    expect(after.masses.find(({ id }) => id === side.id)).toMatchObject({ massKg: 9, sigmaKg: 0.5 });
  });

  it('a difference over a twentieth of what was added is a caution', () => {
    const [caution] = findingsOf(weighedScene(1200, 1320), 'weigh-difference');
    expect(caution).toMatchObject({ severity: 'caution', limit: 0.05 });
    expect(caution?.value).toBeCloseTo(20 / 300, 9);
    expect(findingsOf(weighedScene(1200, 1310), 'weigh-difference')).toEqual([]);
  });

  it('says nothing of a case that is not predicted, or before the build', () => {
    expect(weighedScene(1200, 1320, 'no-case').weighed).toBeNull();
    expect(inspectScene({ survey: null }).weighed).toBeNull();
  });
});
