import { describe, expect, test } from 'vitest';
import { axleLoads, staticStability } from '../../../src/inspection/index.ts';
import axleReference from '../../reference/axle-loads.json' with { type: 'json' };
import stabilityReference from '../../reference/stability.json' with { type: 'json' };

describe('axleLoads', () => {
  test('the published tolerance is the one tested', () => {
    expect(axleReference.tolerance).toBe(0.001);
    expect(stabilityReference.tolerance).toBe(0.0001);
  });

  test.each(axleReference.cases)('reference case with $items.length items', (reference) => {
    const loads = axleLoads({
      wheelbaseMm: reference.wheelbaseMm,
      trackMm: reference.trackMm,
      asReceived: {
        frontKg: reference.asReceivedKg.front,
        rearKg: reference.asReceivedKg.rear,
        leftKg: null,
        rightKg: null,
      },
      items: reference.items.map(({ kg, xMm, yMm }) => ({ kg, forwardOfRearAxleMm: xMm, leftMm: yMm })),
    });
    const { expect: wanted } = reference;
    const given = {
      frontKg: loads.frontKg,
      rearKg: loads.rearKg,
      totalKg: loads.totalKg,
      cgForwardOfRearAxleMm: loads.cgForwardOfRearAxleMm,
      cgLeftMm: loads.cgLeftMm,
      leftShare: loads.leftShare ?? Number.NaN,
    };
    for (const key of Object.keys(wanted) as (keyof typeof wanted)[])
      expect(Math.abs(given[key] - wanted[key]), key).toBeLessThanOrEqual(axleReference.tolerance);
  });

  test('a load behind the rear axle takes weight off the front', () => {
    const loads = axleLoads({
      wheelbaseMm: 3000,
      trackMm: null,
      asReceived: { frontKg: 1200, rearKg: 1200, leftKg: null, rightKg: null },
      items: [{ kg: 300, forwardOfRearAxleMm: -600, leftMm: 0 }],
    });
    // 300 × 600 / 3000 = 60 kg come off the front axle: 1,140 in front, 1,200 + 300 + 60 behind.
    expect(loads.frontKg).toBeCloseTo(1140, 9);
    expect(loads.rearKg).toBeCloseTo(1560, 9);
    expect(loads.leftShare).toBeNull();
  });

  test('left and right as weighed move the centre of gravity as received', () => {
    const loads = axleLoads({
      wheelbaseMm: 3000,
      trackMm: 1600,
      asReceived: { frontKg: 1200, rearKg: 1200, leftKg: 1260, rightKg: 1140 },
      items: [{ kg: 100, forwardOfRearAxleMm: 0, leftMm: -400 }],
    });
    // (1260 − 1140) / 2400 × 800 = 40 mm left; with the load (2400 × 40 − 100 × 400) / 2500 = 22.4 mm.
    expect(loads.cgLeftMm).toBeCloseTo(22.4, 9);
    // ½ + 22.4 / 1600.
    expect(loads.leftShare).toBeCloseTo(0.514, 9);
  });

  test('refuses a wheelbase that is no length', () => {
    const asReceived = { frontKg: 1, rearKg: 1, leftKg: null, rightKg: null };
    expect(() => axleLoads({ wheelbaseMm: 0, trackMm: null, asReceived, items: [] })).toThrow(/wheelbase 0 mm/);
  });
});

describe('staticStability', () => {
  test.each(stabilityReference.cases)('reference case with $addedKg kg at $addedCgHeightM m', (reference) => {
    const stable = staticStability({
      trackMm: reference.trackM * 1000,
      base: { kg: reference.baseKg, heightMm: reference.baseCgHeightM * 1000, leftMm: 0 },
      items: [
        { kg: reference.addedKg, heightMm: reference.addedCgHeightM * 1000, leftMm: reference.addedLeftM * 1000 },
      ],
    });
    const { expect: wanted } = reference;
    expect(stable.cgHeightMm / 1000).toBeCloseTo(wanted.cgHeightM, 8);
    expect(stable.before).toBeCloseTo(wanted.ssfBefore, 8);
    expect(stable.after).toBeCloseTo(wanted.ssfAfter, 8);
    expect(stable.worstSide).toBeCloseTo(wanted.ssfWorstSide, 8);
  });

  test('refuses a base without weight or height and a track that is no length', () => {
    const base = { kg: 2000, heightMm: 700, leftMm: 0 };
    expect(() => staticStability({ trackMm: 0, base, items: [] })).toThrow(/track 0 mm/);
    expect(() => staticStability({ trackMm: 1700, base: { ...base, kg: 0 }, items: [] })).toThrow(/base of 0 kg/);
    expect(() => staticStability({ trackMm: 1700, base: { ...base, heightMm: 0 }, items: [] })).toThrow(/at 0 mm/);
  });
});
