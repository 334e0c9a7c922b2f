import { describe, expect, it } from 'vitest';
import type { Vec3 } from '../../src/base/index.ts';
import type { FitOut } from '../../src/fitout/index.ts';
import { planCarryIn } from '../../src/inspection/index.ts';
import { boxSurvey, HATCH } from '../envelope/surveys.ts';
import { body, catalog, designWith, findingsOf, fitOut, inspectScene, node, rules, spaceOf } from './fixture.ts';
import { carriedCarcass } from './scenes/carry.ts';
import { moving } from './scenes/vehicle.ts';

/**
 * Survey 3 mm, one vehicle against the next 2, build 1 (house rules), all as one standard deviation and independent; twice
 * that is the 95 % of the house rule: 2 √(3² + 2² + 1²) = 7.483. A start value is known to 40: 2 √(40² + 2² + 1²) = 80.125.
 */
const SIGMA = 3;
const TAPED = 2 * Math.sqrt(9 + 4 + 1);
const FROM_CLASS = 2 * Math.sqrt(1600 + 4 + 1);

const box = (id: string, min: Vec3, max: Vec3, more: Record<string, unknown> = {}) => ({
  id,
  name: id,
  kind: 'striker',
  solid: { shape: 'box', min, max },
  ...more,
});
const OUT = moving('tray', { kind: 'slide', direction: [-1, 0, 0], travel: 400 });
/** Stowed from x = 100 to 500, 100 to 200 high; it comes out to x = −300. */
const TRAY = body({ id: 'tray/box', origin: node('tray'), mover: 'tray', min: [100, -100, 100], max: [500, 100, 200] });

const inspected = (obstacles: readonly unknown[], fitout: Partial<FitOut>, rest: Record<string, unknown> = {}) =>
  inspectScene({ survey: boxSurvey({ sigmaMm: SIGMA, obstacles, ...rest }), fitout });
const travelOf = (obstacles: readonly unknown[], fitout: Partial<FitOut> = { bodies: [TRAY], movers: [OUT] }) => {
  const inspection = inspected(obstacles, fitout);
  return {
    measured: inspection.measured.filter(({ rule }) => rule === 'mover-travel'),
    found: findingsOf(inspection, 'mover-travel'),
  };
};

describe('the ± of a travel', () => {
  it('is that of the obstacle it passes, whoever else is known less well', () => {
    // Passed 12 above the first; the second stands 1 m off, known from the vehicle class alone.
    const { measured } = travelOf([
      box('low', [0, -50, 0], [40, 50, 88]),
      box('afar', [1200, 300, 0], [1300, 400, 100], { startValues: true }),
    ]);
    expect(measured).toHaveLength(1);
    expect(measured[0]?.value).toBeCloseTo(12, 1);
    expect(measured[0]?.uncertainty).toBeCloseTo(TAPED, 9);
    const [worse] = travelOf([box('low', [0, -50, 0], [40, 50, 88], { startValues: true })]).measured;
    expect(worse?.uncertainty).toBeCloseTo(FROM_CLASS, 9);
  });

  it('makes a caution of a travel that passes, but nearer than the survey can tell', () => {
    // 8 to spare of 3 for moving parts: 5 is less than 7.5; 12 leaves 9.
    expect(travelOf([box('low', [0, -50, 0], [40, 50, 92])]).found).toMatchObject([
      { severity: 'caution', uncertainty: expect.closeTo(TAPED, 9) },
    ]);
    expect(travelOf([box('low', [0, -50, 0], [40, 50, 88])]).found).toEqual([]);
  });

  it('is nothing to a part of the cabinet, which stands as it is built', () => {
    const shelf = body({ id: 'shelf', min: [-200, -100, 208], max: [90, 100, 220] });
    const [own] = travelOf([], { bodies: [TRAY, shelf], movers: [OUT] }).measured;
    expect(own).toMatchObject({ uncertainty: 0 });
    expect(own?.value).toBeCloseTo(8, 1);
  });

  it('stands beside how far it comes where it meets something: a slide in mm, a turn in degrees', () => {
    const high = box('high', [0, -50, 0], [40, 50, 150]);
    // From x = 100 to the face at 40.
    const [met] = travelOf([high]).found;
    expect(met).toMatchObject({ severity: 'stop', unit: 'mm', uncertainty: expect.closeTo(TAPED, 9) });
    expect(met?.value).toBeCloseTo(60, 1);
    // A leaf 300 long about z through its corner at x = 600, y = −200: its far end meets a post 300 off.
    const leaf = body({
      id: 'leaf/box',
      origin: node('leaf'),
      mover: 'leaf',
      min: [600, -200, 100],
      max: [605, 100, 200],
    });
    const turning = moving('leaf', { kind: 'turn', point: [600, -200, 150], axis: [0, 0, 1], travelRad: Math.PI / 2 });
    const post = box('post', [300, -150, 0], [340, -100, 300]);
    const [turned] = travelOf([post], { bodies: [leaf], movers: [turning] }).found;
    expect(turned).toMatchObject({ severity: 'stop', unit: 'deg' });
    // It meets on a face of the post between 260 and 300 from the axis: 7.483 over that arm, in degrees.
    const degrees = (arm: number): number => ((TAPED / arm) * 180) / Math.PI;
    expect(turned?.uncertainty).toBeGreaterThanOrEqual(degrees(301));
    expect(turned?.uncertainty).toBeLessThanOrEqual(degrees(259));
  });

  it('to what hangs on a closure is that of the closure', () => {
    // Opened by 1° the hatch still hangs before the tray, and the lamp on its inside is met before it.
    const lamp = body({
      id: 'lamp',
      origin: node('lamp'),
      kind: 'device',
      carcass: null,
      mover: 'hatch',
      min: [-15, -50, 120],
      max: [5, 50, 180],
    });
    for (const [startValues, expected] of [
      [false, TAPED],
      [true, FROM_CLASS],
    ] as const) {
      const met = findingsOf(
        inspected([], { bodies: [TRAY, lamp], movers: [OUT] }, { closures: [{ ...HATCH, opensDeg: 1, startValues }] }),
        'mover-travel',
      ).filter(({ severity }) => severity === 'stop');
      expect(met).toMatchObject([{ parts: ['tray', 'lamp'], unit: 'mm', uncertainty: expect.closeTo(expected, 9) }]);
    }
  });
});

describe('the ± of a swing', () => {
  const over = (kind: 'hatch' | 'strut', startValues: boolean) => {
    const strut = {
      id: 'strut',
      name: 'strut, left',
      kind: 'strut',
      movesWith: 'hatch',
      startValues,
      solid: { shape: 'capsule', from: [10, 560, 400], to: [10, 560, 700], radiusMm: 10 },
    };
    const inspection = inspected(
      kind === 'strut' ? [strut] : [],
      { bodies: [body({ id: 'lip', origin: node('lip'), min: [-140, 540, 300], max: [-110, 580, 700] })] },
      { closures: [{ ...HATCH, startValues: kind === 'hatch' && startValues }] },
    );
    const ofIt = ({ rule, parts }: { rule: string; parts: readonly string[] }): boolean =>
      rule === 'closure-swing' && parts.includes(kind);
    return [...inspection.measured.filter(ofIt), ...inspection.findings.filter(ofIt)];
  };

  it.each([
    ['hatch', false, TAPED],
    ['hatch', true, FROM_CLASS],
    ['strut', false, TAPED],
    ['strut', true, FROM_CLASS],
  ] as const)('of a %s, known from the class: %s, is the sum of its own', (kind, startValues, expected) => {
    const rows = over(kind, startValues);
    // One measured, one found.
    expect(rows.length).toBeGreaterThanOrEqual(2);
    for (const { uncertainty } of rows) expect(uncertainty).toBeCloseTo(expected, 9);
  });
});

describe('the ± of a gap at rest and of two things that pass each other', () => {
  it('is the sum of the face, of the obstacle; nothing between two of the cabinet', () => {
    const inspection = inspected([box('low', [700, -50, 0], [740, 50, 88], { startValues: true })], {
      bodies: [
        body({ id: 'a', origin: node('a'), min: [300, -590, 20], max: [690, 0, 400] }),
        body({ id: 'b', origin: node('b'), carcass: node('carcass-2'), min: [300, 1, 20], max: [690, 580, 400] }),
      ],
    });
    const of = (rule: string) => [...inspection.measured, ...inspection.findings].filter((own) => own.rule === rule);
    expect(of('body-in-space').length).toBeGreaterThan(0);
    for (const { uncertainty } of of('body-in-space')) expect(uncertainty).toBeCloseTo(TAPED, 9);
    expect(of('body-obstacle').length).toBeGreaterThan(0);
    for (const { uncertainty } of of('body-obstacle')) expect(uncertainty).toBeCloseTo(FROM_CLASS, 9);
    expect(of('carcass-gap').length).toBeGreaterThan(0);
    for (const { uncertainty } of of('carcass-gap')) expect(uncertainty).toBe(0);
  });
});

describe('the ± of carrying in', () => {
  /** A box 600 wide and 500 high, from x = 60, through an opening 700 high and so wide on each side of its middle. */
  const way = (
    half: number,
    obstacles: readonly unknown[],
    boxes: Readonly<Record<string, readonly [Vec3, Vec3]>> = {},
  ) => {
    const survey = boxSurvey({
      sigmaMm: SIGMA,
      obstacles,
      aperture: [
        [-half, 0],
        [half, 0],
        [half, 700],
        [-half, 700],
      ],
    });
    const all = {
      box: [
        [60, -300, 0],
        [660, 300, 500],
      ] as const,
      ...boxes,
    };
    const made = fitOut({
      carcasses: Object.keys(all).map(carriedCarcass),
      bodies: Object.entries(all).map(([id, [min, max]]) => body({ id: `${id}/box`, carcass: node(id), min, max })),
    });
    const carry = planCarryIn(
      { design: designWith({ survey }), space: spaceOf(survey), fitout: made, catalog, rules },
      0,
    );
    return carry.carcasses.find((own) => own.carcass === 'box')?.path ?? null;
  };

  it('is that of what each step passes nearest, and of the whole way that of its least gap', () => {
    // 305 − 300: the frame, taped with the rest.
    const frame = way(305, []);
    expect(frame).toMatchObject({ nearest: 'the frame of the opening', uncertainty: expect.closeTo(TAPED, 9) });
    // A post 307 off the middle beside the way is nearer than the frame at 400, and known from the class alone.
    const post = way(400, [box('post', [10, 307, 0], [40, 340, 300], { startValues: true })]);
    expect(post).toMatchObject({ nearest: 'post', uncertainty: expect.closeTo(FROM_CLASS, 9) });
    for (const path of [frame, post]) {
      expect(path?.legs).toHaveLength((path?.poses.length ?? 0) - 1);
      for (const { leastGap, uncertainty, at, nearest } of path?.legs ?? []) {
        expect(leastGap).toBeGreaterThanOrEqual(path?.leastGap ?? Infinity);
        if (!Number.isFinite(leastGap)) continue;
        expect(uncertainty, nearest).toBeCloseTo(nearest === 'post' ? FROM_CLASS : TAPED, 9);
        // The two points stand as far apart as is said, to the half millimetre to which it is proven.
        const [[ax, ay, az], [bx, by, bz]] = at ?? [
          [0, 0, 0],
          [0, 0, 0],
        ];
        expect(Math.hypot(bx - ax, by - ay, bz - az) - leastGap).toBeGreaterThanOrEqual(-1e-6);
        expect(Math.hypot(bx - ax, by - ay, bz - az) - leastGap).toBeLessThanOrEqual(1);
      }
    }
  });

  it('is nothing where it passes another carcass', () => {
    const path = way(590, [], {
      beside: [
        [60, 311, 0],
        [660, 560, 500],
      ],
    });
    const [leg] = path?.legs.filter(({ nearest }) => nearest === 'beside') ?? [];
    expect(leg?.uncertainty ?? 0).toBe(0);
  });
});
