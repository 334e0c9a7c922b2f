import { describe, expect, it, test } from 'vitest';
import type { Vec3 } from '../../../src/base/index.ts';
import { seededRandom } from '../../../src/base/index.ts';
import {
  centreOf,
  centreWithVehicle,
  SIGMAS_AT_95,
  type SpreadItem,
  solveCase,
} from '../../../src/inspection/loads/index.ts';
import { findingsOf, inspectScene, mass, node, rules, vehicleWith } from '../fixture.ts';

const item = (kg: number, at: Vec3, sigmaKg = 0, sigma = 0): SpreadItem => ({
  kg,
  sigmaKg,
  at,
  sigmaMm: [sigma, sigma, sigma],
});

/** Two normal draws from two even ones. */
const normals = (random: () => number): (() => number) => {
  let spare: number | null = null;
  return () => {
    if (spare !== null) {
      const own = spare;
      spare = null;
      return own;
    }
    const [radius, angle] = [Math.sqrt(-2 * Math.log(1 - random())), 2 * Math.PI * random()];
    spare = radius * Math.sin(angle);
    return radius * Math.cos(angle);
  };
};

describe('centreOf', () => {
  test('moving an item of m by d moves the centre by m d / M', () => {
    const others = [item(2000, [1500, 0, 700]), item(300, [-200, 100, 400])];
    const [before, after] = [100, 250].map((x) => centreOf([...others, item(46, [x, 0, 0])]).at[0]);
    expect((after ?? 0) - (before ?? 0)).toBeCloseTo((46 * 150) / 2346, 9);
  });

  test('masses add, and two loads superpose', () => {
    const [a, b] = [item(120, [100, 40, 300], 6), item(80, [-300, -90, 700], 8)];
    const both = centreOf([a, b]);
    expect(both.kg).toBe(200);
    expect(both.sigmaKg).toBe(10);
    expect(both.at[2] * 200).toBeCloseTo(120 * 300 + 80 * 700, 9);
  });

  test('one kilogram of doubt at 800 from the centre of 400 kg is worth two millimetres', () => {
    // x̄ = (300 · 0 + 100 · 1000) / 400 = 250; the far one lies 750 away: 750 · 1 / 400 = 1.875.
    expect(centreOf([item(300, [0, 0, 0]), item(100, [1000, 0, 0], 1)]).sigmaMm[0]).toBeCloseTo(1.875, 9);
  });

  test('nothing has no centre', () => {
    expect(() => centreOf([])).toThrow(RangeError);
  });
});

it('20,000 draws agree with the propagated spread within 3 %', () => {
  const axles = [item(1308, [4025, 0, -70], 5), item(1242, [955, 0, -70], 5)] as const;
  const common: Vec3 = [0, 15, 22];
  const items = [
    item(62, [540, 300, 390], 2.4, 10),
    item(54, [560, -290, 370], 2, 10),
    item(27, [900, -300, 560], 1.4, 10),
    item(114, [2520, 390, 330], 10, 10),
    item(114, [2520, -390, 330], 10, 10),
    item(18, [1850, 120, -180], 0.9, 10),
    item(9, [300, 213, 120], 1.8, 10),
  ];
  const told = centreWithVehicle(axles, common, items);
  const next = normals(seededRandom(20_260_611));
  const draws = 20_000;
  const sums = [0, 0, 0, 0, 0, 0, 0, 0];
  for (let i = 0; i < draws; i++) {
    const shift: Vec3 = [next() * common[0], next() * common[1], next() * common[2]];
    let kg = 0;
    const moment = [0, 0, 0];
    const add = (one: SpreadItem, off: Vec3): void => {
      const own = one.kg + next() * one.sigmaKg;
      kg += own;
      for (const axis of [0, 1, 2] as const)
        moment[axis] = (moment[axis] ?? 0) + own * (one.at[axis] + off[axis] + next() * one.sigmaMm[axis]);
    };
    for (const axle of axles) add(axle, shift);
    for (const one of items) add(one, [0, 0, 0]);
    [...moment.map((value) => value / kg), kg].forEach((value, k) => {
      sums[2 * k] = (sums[2 * k] ?? 0) + value;
      sums[2 * k + 1] = (sums[2 * k + 1] ?? 0) + value ** 2;
    });
  }
  const sigmaOf = (k: number): number => {
    const [sum, square] = [(sums[2 * k] ?? 0) / draws, (sums[2 * k + 1] ?? 0) / draws];
    return Math.sqrt(square - sum ** 2);
  };
  for (const axis of [0, 1, 2] as const) expect(Math.abs(sigmaOf(axis) / told.sigmaMm[axis] - 1)).toBeLessThan(0.03);
  expect(Math.abs(sigmaOf(3) / told.sigmaKg - 1)).toBeLessThan(0.03);
});

const FIGURES = {
  wheelbaseMm: 3000,
  trackMm: 1600,
  sillBehindRearAxleMm: 900,
  floorAboveGroundMm: 750,
  cgHeightAsReceivedMm: 700,
  slip: { frontKg: 1200, rearKg: 1000 },
  fuel: { tankLitres: 80, atSlipShare: 0.5, kgPerLitre: 0.75, at: [1200, 0, 0] },
  seats: [{ id: 'seat-1', name: 'Driver', at: [2400, 400, 300], occupant: 'driver', occupantKg: 100 }],
};

it('20,000 draws of slip, masses and places agree with the spread of both axles, of the whole and of the stability within 3 %', () => {
  const vehicle = vehicleWith(FIGURES);
  const [wheelbase, behind, floor, height] = [3000, 900, 750, 700];
  const aboard = (
    [
      ['bench', 62, 2.4, [200, 300, 390]],
      ['tray', 54, 8, [560, -290, 370]],
      ['pack', 27, 6, [300, -300, 560]],
      ['driver', 100, 10, [2520, 390, 330]],
    ] as const
  ).map(([id, kg, sigmaKg, at]) => ({ id, what: 'gear' as const, kg, sigmaKg, at }));
  const solved = solveCase(vehicle, { id: 'fitted', items: aboard, drawn: false }, rules);
  const result = solved?.result;
  if (!solved || !result) throw new Error('nothing was solved');
  const next = normals(seededRandom(20_260_704));
  const [slipSigma, place] = [rules.value('slip-sigma-kg'), rules.value('place-sigma')];
  const draws = 20_000;
  const drawn = Array.from({ length: draws }, () => {
    const [front, rear] = [1200 + next() * slipSigma, 1000 + next() * slipSigma];
    const side = next() * rules.value('received-left-sigma');
    const up = height * (1 + next() * rules.value('cg-height-sigma-share'));
    // Moments about the rear axle, about the middle and about the ground.
    let [kg, forward, left, high] = [front + rear, front * wheelbase, (front + rear) * side, (front + rear) * up];
    for (const one of aboard) {
      const own = one.kg + next() * one.sigmaKg;
      kg += own;
      forward += own * (one.at[0] - behind + next() * place);
      left += own * (one.at[1] + next() * place);
      high += own * (one.at[2] + floor + next() * place);
    }
    const frontKg = forward / wheelbase;
    // To the left, the worse side: half the track less what the centre lies to that side, over the height.
    return [frontKg, kg - frontKg, kg, (800 - left / kg) / (high / kg)] as const;
  });
  const sigmaOf = (k: 0 | 1 | 2 | 3): number => {
    const mean = drawn.reduce((sum, one) => sum + one[k], 0) / draws;
    return Math.sqrt(drawn.reduce((sum, one) => sum + (one[k] - mean) ** 2, 0) / draws);
  };
  expect(Math.abs((SIGMAS_AT_95 * sigmaOf(0)) / solved.frontSpreadKg - 1)).toBeLessThan(0.03);
  expect(Math.abs((SIGMAS_AT_95 * sigmaOf(1)) / solved.rearSpreadKg - 1)).toBeLessThan(0.03);
  expect(Math.abs((SIGMAS_AT_95 * sigmaOf(2)) / solved.totalSpreadKg - 1)).toBeLessThan(0.03);
  expect(Math.abs(sigmaOf(3) / (result.ssfSigma ?? 0) - 1)).toBeLessThan(0.03);
});

const tray = {
  id: 'tray',
  origin: node('opening-1'),
  name: 'tray',
  motion: { kind: 'slide' as const, direction: [-1, 0, 0] as const, travel: 900 },
  carriedBy: null,
  rests: [],
};

const check = (vehicle: Record<string, unknown>) =>
  inspectScene({
    survey: null,
    design: { vehicle: vehicleWith({ ...FIGURES, ...vehicle }) },
    fitout: { movers: [tray], masses: [mass('load', 60, [600, 0, 300], { kind: 'gear', mover: 'tray' })] },
  });

describe('loading cases', () => {
  test('parked with every tray out, the load stands behind the rear axle', () => {
    const { cases } = check({});
    const [stowed, out] = ['fitted', 'trays-out'].map((id) => cases.find((one) => one.id === id));
    // 60 kg at 300 behind the axle, then at 1,200: 6 and 24 kg off the front.
    expect(stowed?.takenOffFrontKg).toBeCloseTo(6, 9);
    expect(out?.takenOffFrontKg).toBeCloseTo(24, 9);
    expect((stowed?.frontKg ?? 0) - (out?.frontKg ?? 0)).toBeCloseTo(18, 9);
  });

  test('a case of the shop’s own: driver, a tank nearly empty, a dog', () => {
    const dog = { name: 'dog', kg: 30, at: [900, 0, 300] };
    const own = { id: 'case-1', name: 'night watch', seats: ['seat-1'], fuelShare: 0.1, extras: [dog] };
    const { cases } = check({ ownCases: [own] });
    // 2,200 + 60 + 100 + 30 − 80 · 0.4 · 0.75 = 2,366
    expect(cases.find(({ id }) => id === 'case-1')?.totalKg).toBeCloseTo(2366, 9);
  });

  test('the doubt grows with what is aboard, and is not told without a height', () => {
    const { cases } = check({});
    expect(cases[0]?.cgSigmaMm?.[2]).toBeCloseTo(21, 2);
    expect(cases[0]?.ssfSigma).not.toBeNull();
    const [none] = check({ cgHeightAsReceivedMm: null }).cases;
    expect(none).toMatchObject({ ssfSigma: null });
    expect(none?.cgSigmaMm?.[2]).toBeNull();
  });
});

describe('disclosure', () => {
  const said = (vehicle: Record<string, unknown>, kg: number) =>
    findingsOf(
      inspectScene({
        survey: null,
        design: { vehicle: vehicleWith(vehicle) },
        fitout: { masses: [mass('side', kg, [0, 0, 0])] },
      }),
      'disclosure',
    )[0];

  test.each([
    [{}, 45.4, 'ask'],
    [{ sale: 'new-untitled', region: 'us' }, 45.4, 'new-untitled'],
    [{ sale: 'in-service' }, 100, 'in-service'],
    [{ region: 'eu' }, 100, 'other'],
  ])('%o', (vehicle, limit, sale) => {
    expect(said(vehicle, 200)).toMatchObject({ severity: 'note', limit, facts: { sale } });
  });

  test('in service, less than the statement asks for says nothing', () => {
    expect(said({ sale: 'in-service' }, 80)).toBeUndefined();
  });
});
