import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { add, cross, type Vec3 } from '../../../src/base/index.ts';
import {
  boltResistance,
  boltUse,
  type GroupAnchor,
  groupForces,
  plateCollapse,
  sheetBearing,
  sheetPunching,
} from '../../../src/inspection/hold/index.ts';
import reference from '../../reference/anchors.json' with { type: 'json' };

const GRAVITY = 9.80665;

const floor = (x: number, y: number): GroupAnchor => ({ at: [x, y, 0], on: 'floor' });

/** The rows of a case about a toe line at x = 0, its anchors spread evenly across, thrown to the rear. */
const groupOf = (rows: readonly { readonly fromToeMm: number; readonly bolts: number }[]): readonly GroupAnchor[] =>
  rows.flatMap(({ fromToeMm, bolts }) =>
    Array.from({ length: bolts }, (_, i) => floor(fromToeMm, (i / (bolts - 1) - 0.5) * 400)),
  );

describe('reference values', () => {
  it('holds to the published tolerance', () => expect(reference.tolerance).toBe(0.001));

  test.each(reference.cases)('$massKg kg at $accelerationG g', (one) => {
    const within = (value: number, wanted: number): void =>
      expect(Math.abs(value - wanted) / wanted).toBeLessThanOrEqual(reference.tolerance);
    const forceN = one.massKg * one.accelerationG * GRAVITY;
    within(forceN, one.expect.forceN);
    const forces = groupForces(
      groupOf(one.boltRows),
      { min: [0, -300], max: [1000, 300], z: 0 },
      {
        at: [500, 0, one.cgHeightMm],
        force: [-forceN, 0, 0],
      },
    );
    const tensions = forces?.anchors.map(([, , z]) => -z) ?? [];
    const shears = forces?.anchors.map(([x, y]) => Math.hypot(x, y)) ?? [];
    const [tensionN, shearN] = [Math.max(...tensions), Math.max(...shears)];
    within(tensionN, one.expect.tensionWorstBoltN);
    within(shearN, one.expect.shearPerBoltN);
    const bolt = {
      shearN: boltResistance(0.6, one.boltUltimateMPa, one.stressAreaMm2, 1.25),
      tensionN: boltResistance(0.9, one.boltUltimateMPa, one.stressAreaMm2, 1.25),
    };
    within(boltUse({ tensionN, shearN }, bolt, 1.4), one.expect.boltInteraction);
    const bearing = sheetBearing(2.5, one.sheetUltimateMPa, one.boltDiameterMm, one.sheetMm, 1.25);
    within(bearing, one.expect.bearingSheetN);
    within(shearN / bearing, one.expect.bearingUse);
  });
});

describe('sums by hand', () => {
  it('punches 0.8 mm of skin round a washer, a wide washer and a plate', () => {
    // 0.6 · π · 16 · 0.8 · 270 / 1.25 = 5212; 30: 9772; 50: 16286
    expect([16, 30, 50].map((d) => Math.round(sheetPunching(0.6, 270, d, 0.8, 1.25)))).toEqual([5212, 9772, 16286]);
  });

  it('bends a plate of 5 mm and 80 mm under a nut of 12.8 mm', () => {
    // m = 235 · 25 / 4 = 1468.75; 2 π m = 9228.4; 1 − 2 · 6.4 / 120 = 0.89333; 9228.4 / 0.89333 = 10330
    expect(Math.round(plateCollapse((235 * 25) / 4, 6.4, 40))).toBe(10330);
  });

  it('lets a wall bracket take the tipping at its height', () => {
    // 1000 N at 500: 500,000 about the edge. Levers 0, 0, 800 on the wall and 1000, 1000 on the floor:
    // Σ l² = 640,000 + 2,000,000; the bracket pulls 500,000 · 800 / 2,640,000 = 151.5, each far anchor 189.4.
    const anchors: GroupAnchor[] = [
      floor(1000, -200),
      floor(1000, 200),
      floor(0, -200),
      floor(0, 200),
      { at: [0, 0, 800], on: 'wall' },
    ];
    const forces = groupForces(
      anchors,
      { min: [0, -300], max: [1000, 300], z: 0 },
      {
        at: [500, 0, 500],
        force: [1000, 0, 0],
      },
    );
    expect(forces?.anchors.map(([, , z]) => Math.abs(Math.round(z * 10) / 10))).toEqual([0, 0, 189.4, 189.4, 0]);
    expect(forces?.anchors[4]?.[0]).toBeCloseTo(-151.515, 3);
    // The floor shares the other 848.5 N.
    expect(forces?.anchors[0]?.[0]).toBeCloseTo(-212.121, 3);
  });

  it('refuses anchors that something turns about, and no anchors', () => {
    const foot = { min: [0, -300], max: [1000, 300], z: 0 } as const;
    const push = { at: [500, 10, 400], force: [1000, 0, 0] } as const;
    expect(groupForces([], foot, push)).toBeNull();
    expect(groupForces([floor(100, 0)], foot, push)).toBeNull();
    expect(groupForces([floor(100, 0), floor(500, 0)], foot, { at: [500, 10, 400], force: [0, 0, 1000] })).toBeNull();
  });
});

const anyAnchor: fc.Arbitrary<GroupAnchor> = fc.record({
  at: fc.tuple(
    fc.integer({ min: 0, max: 1000 }),
    fc.integer({ min: -300, max: 300 }),
    fc.integer({ min: 100, max: 800 }),
  ),
  on: fc.constantFrom('floor', 'floor', 'floor', 'wall'),
});

const anyGroup: fc.Arbitrary<readonly GroupAnchor[]> = fc
  .array(anyAnchor, { minLength: 3, maxLength: 10 })
  .map((anchors) => anchors.map(({ at, on }) => (on === 'floor' ? { at: [at[0], at[1], 0], on } : { at, on })));

const anyForce: fc.Arbitrary<Vec3> = fc.tuple(
  fc.integer({ min: -30_000, max: 30_000 }),
  fc.integer({ min: -30_000, max: 30_000 }),
  fc.integer({ min: -30_000, max: 30_000 }),
);
const anyCentre: fc.Arbitrary<Vec3> = fc.tuple(
  fc.integer({ min: 100, max: 900 }),
  fc.integer({ min: -250, max: 250 }),
  fc.integer({ min: 50, max: 700 }),
);

const FOOT = { min: [0, -300], max: [1000, 300], z: 0 } as const;
const RUNS = { seed: 20_260, numRuns: 300 } as const;

describe('laws', () => {
  it('anchors and floor balance the force and its moment in every direction', () => {
    let held = 0;
    fc.assert(
      fc.property(anyGroup, anyForce, anyCentre, (anchors, force, at) => {
        const forces = groupForces(anchors, FOOT, { at, force });
        if (!forces) return;
        held++;
        const all = [
          { at, force },
          ...forces.bearing,
          ...anchors.map((anchor, i) => ({ at: anchor.at, force: forces.anchors[i] ?? force })),
        ];
        const sum = all.reduce<Vec3>((total, one) => add(total, one.force), [0, 0, 0]);
        const moment = all.reduce<Vec3>((total, one) => add(total, cross(one.at, one.force)), [0, 0, 0]);
        const size = Math.max(1, ...all.map((one) => Math.hypot(...one.force)));
        for (const value of sum) expect(Math.abs(value) / size).toBeLessThan(1e-9);
        for (const value of moment) expect(Math.abs(value) / size / 1000).toBeLessThan(1e-9);
        for (const { at: point, force: up } of forces.bearing) {
          // The floor only pushes up, and where the carcass stands.
          if (anchors.every(({ at: own }) => own[0] >= 0)) expect(up[2]).toBeGreaterThanOrEqual(-1e-9);
          expect(point[2]).toBe(0);
        }
      }),
      RUNS,
    );
    expect(held).toBeGreaterThan(200);
  });

  it('mirrored cabinet, mirrored loads', () => {
    const mirror = ([x, y, z]: Vec3): Vec3 => [x, -y, z];
    fc.assert(
      fc.property(anyGroup, anyForce, anyCentre, (anchors, force, at) => {
        const one = groupForces(anchors, FOOT, { at, force });
        const turned = anchors.map((anchor) => ({ ...anchor, at: mirror(anchor.at) }));
        const other = groupForces(turned, FOOT, { at: mirror(at), force: mirror(force) });
        expect(other === null).toBe(one === null);
        one?.anchors.forEach((own, i) => {
          const back = mirror(other?.anchors[i] ?? [0, 0, 0]);
          const size = Math.max(1, Math.hypot(...own));
          own.forEach((value, axis) => {
            expect(Math.abs(value - (back[axis] ?? 0)) / size).toBeLessThan(1e-6);
          });
        });
      }),
      RUNS,
    );
  });

  it('twice the force, twice the load', () => {
    fc.assert(
      fc.property(anyGroup, anyForce, anyCentre, (anchors, force, at) => {
        const double: Vec3 = [2 * force[0], 2 * force[1], 2 * force[2]];
        const [one, two] = [
          groupForces(anchors, FOOT, { at, force }),
          groupForces(anchors, FOOT, { at, force: double }),
        ];
        one?.anchors.forEach((own, i) => {
          own.forEach((value, axis) => {
            expect(Math.abs(2 * value - (two?.anchors[i]?.[axis] ?? 0))).toBeLessThan(1e-6 * (1 + Math.abs(value)));
          });
        });
      }),
      RUNS,
    );
  });
});
