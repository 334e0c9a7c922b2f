import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ROUNDING_KG, ROUNDING_MM, type Vec3 } from '../../src/base/index.ts';
import { certifiedTravel, type Motion } from '../../src/bodies/index.ts';
import { houseRules, standardCatalog } from '../../src/catalog/index.ts';
import { type Design, FITTING_KINDS, type FittingKind, freshFitting, type NodeId } from '../../src/design/index.ts';
import { type FitOut, type Mover, solveFitOut } from '../../src/fitout/index.ts';
import { carcass, designOf, fitted } from '../fitout/designs.ts';
import { randomFitting } from './arbitrary.ts';

const SEED = 20260815;
const catalog = standardCatalog();
const rules = houseRules(catalog, []);
const solve = (design: Design): FitOut => solveFitOut(design, catalog, rules);

/** A carcass of 18 mm birch (17.7) with the back (6.4) 12 from the rear, clear inside by across × deep × up. */
const clearTo = (design: Design, [across, deep, up]: Vec3): Design => {
  const size = { width: across + 2 * 17.7, height: up + 2 * 17.7, depth: deep + 6.4 + 12 };
  return {
    ...design,
    cabinet: { ...design.cabinet, carcasses: design.cabinet.carcasses.map((one) => ({ ...one, size })) },
  };
};
const designWith = (fitting: Readonly<Record<string, unknown>>): Design =>
  designOf([carcass(fitted('opening-1', fitting))]);
const clearOf = (fitting: Readonly<Record<string, unknown>>, room: Vec3): Design => clearTo(designWith(fitting), room);

/** As it comes when it is chosen for `opening-1`. */
const asItComes = (kind: FittingKind): Readonly<Record<string, unknown>> => {
  let count = 1;
  return freshFitting(kind, (prefix) => `${prefix}-${++count}` as NodeId) as unknown as Readonly<
    Record<string, unknown>
  >;
};

const side = fc.integer({ min: 30, max: 700 });

describe.each(FITTING_KINDS)('%s as it comes', (kind) => {
  it('fits into a random opening, or says the least size that it needs', () => {
    const design = designWith(asItComes(kind));
    const least = solve(design).openings[0]?.least ?? [0, 0, 0];
    expect(solve(clearTo(design, least)).problems).toEqual([]);
    let refused = 0;
    fc.assert(
      fc.property(fc.tuple(side, side, side), (room) => {
        const told = solve(clearTo(design, room)).problems;
        const short = ([0, 1, 2] as const).filter((axis) => room[axis] < least[axis] - ROUNDING_MM);
        if (short.length > 0) refused++;
        expect(told.every(({ code }) => code === 'too-small')).toBe(true);
        for (const axis of short) {
          const word = (['across', 'deep', 'up'] as const)[axis];
          expect(told.find((problem) => problem.axis === word)?.needMm).toBeGreaterThanOrEqual(
            least[axis] - ROUNDING_MM,
          );
        }
        // A plate that leans needs more depth than its least where it stands taller than its least.
        for (const { needMm, haveMm } of told) expect(needMm).toBeGreaterThan(haveMm ?? Infinity);
        if (short.length === 0 && kind !== 'faceplate') expect(told).toEqual([]);
      }),
      { seed: SEED, numRuns: 200 },
    );
    expect(refused).toBeGreaterThan(0);
    expect(refused).toBeLessThan(200);
  });
});

const travelOf = ({ motion }: Mover): Motion =>
  motion.kind === 'slide'
    ? { kind: 'slide', along: motion.direction, fromMm: 0, toMm: motion.travel }
    : { kind: 'turn', point: motion.point, axis: motion.axis, fromRad: 0, toRad: motion.travelRad };

const carriedBy = (fitOut: FitOut, id: string): ReadonlySet<string | null> =>
  new Set([id, ...fitOut.movers.filter((mover) => mover.carriedBy === id).map((mover) => mover.id)]);

const roomy = fc.tuple(
  fc.integer({ min: 250, max: 900 }),
  fc.integer({ min: 250, max: 900 }),
  fc.integer({ min: 150, max: 700 }),
);

describe('a fitting that fits', () => {
  it('goes through its whole travel without meeting its carcass or what it leaves behind', () => {
    let moved = 0;
    const stayed = new Set<string>();
    fc.assert(
      fc.property(randomFitting(fc, 0), roomy, (fitting, room) => {
        const fitOut = solve(clearOf(fitting, room));
        if (fitOut.problems.length > 0) return;
        for (const mover of fitOut.movers) {
          const moving = carriedBy(fitOut, mover.id);
          const shapes = fitOut.bodies.filter((body) => moving.has(body.mover)).map(({ shape }) => shape);
          // Panels and hardware alike: the half of a slide that stays, a spring, the box of a roll.
          const left = fitOut.bodies.filter(({ mover: carrier }) => carrier === null);
          for (const { kind, id } of left) if (kind === 'hardware') stayed.add(id.replace(/^.*\//, ''));
          const { contact } = certifiedTravel(
            travelOf(mover as Mover),
            shapes,
            left.map(({ shape }) => shape),
            0,
            { limit: 1 },
          );
          expect(contact).toBeNull();
          moved++;
        }
      }),
      { seed: SEED, numRuns: 600 },
    );
    expect(moved).toBeGreaterThan(100);
    for (const piece of ['slide-left', 'slide-right', 'spring-left', 'spring-right', 'coil'])
      expect(stayed).toContain(piece);
  });

  it('weighs its panels and what is bought for it, and the steel of a magnetic face, and no more', () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(randomFitting(fc, 0), roomy, (fitting, room) => {
        const fitOut = solve(clearOf(fitting, room));
        if (fitOut.problems.length > 0) return;
        seen.add(String(fitting.kind));
        const mine = (origin: string): boolean => origin === 'opening-1' || origin.startsWith('device-');
        const own = fitOut.masses.filter(
          ({ origin, kind, name }) => mine(origin) && kind !== 'finish' && name !== 'fasteners',
        );
        const wood = fitOut.panels.filter(({ origin }) => mine(origin)).reduce((sum, { massKg }) => sum + massKg, 0);
        const pieces = fitOut.hardware.filter(({ origin, at, from }) => mine(origin) && (at || from === 'slide'));
        const bought = pieces.reduce((sum, { from, item, quantity, lengthMm }) => {
          if (from === 'device') return sum + (catalog.devices.get(item)?.massKg ?? Number.NaN);
          if (from === 'slide')
            return sum + ((catalog.slides.get(item)?.massKgPerMetre ?? Number.NaN) * (lengthMm ?? 0)) / 1000;
          return sum + quantity * (catalog.hardware.get(item)?.massKg ?? Number.NaN);
        }, 0);
        const steel = own.find(({ id }) => id === 'opening-1/steel-face')?.massKg ?? 0;
        const total = own.reduce((sum, { massKg }) => sum + massKg, 0);
        expect(Math.abs(total - wood - bought - steel)).toBeLessThan(ROUNDING_KG);
      }),
      { seed: SEED, numRuns: 400 },
    );
    // Each kind came up at least once.
    expect([...seen].sort()).toEqual([...FITTING_KINDS].sort());
  });
});
