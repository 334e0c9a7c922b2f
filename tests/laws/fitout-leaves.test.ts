import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ROUNDING_KG, ROUNDING_MM, type Vec3 } from '../../src/base/index.ts';
import { certifiedTravel, type Motion, motionPose, shapeAt, TRAVEL_TOLERANCE_MM } from '../../src/bodies/index.ts';
import { houseRules, standardCatalog } from '../../src/catalog/index.ts';
import type { Design } from '../../src/design/index.ts';
import { type FitOut, type Mover, solveFitOut } from '../../src/fitout/index.ts';
import { carcass, designOf, fitted } from '../fitout/designs.ts';
import { randomLeaf } from './arbitrary.ts';

const SEED = 20260729;
const catalog = standardCatalog();
const solve = (design: Design): FitOut => solveFitOut(design, catalog, houseRules(catalog, design.houseRules));

/** Square to the vehicle, clear inside by across × deep × up. */
const clearOf = (fitting: Readonly<Record<string, unknown>>, [across, deep, up]: Vec3): Design =>
  designOf([
    carcass(fitted('opening-1', fitting), {
      size: { width: across + 2 * 17.7, height: up + 2 * 17.7, depth: deep + 6.4 + 12 },
    }),
  ]);

const anyRoom = fc.tuple(
  fc.integer({ min: 150, max: 900 }),
  fc.integer({ min: 250, max: 900 }),
  fc.integer({ min: 200, max: 700 }),
);

const travelOf = ({ motion }: Mover): Motion =>
  motion.kind === 'slide'
    ? { kind: 'slide', along: motion.direction, fromMm: 0, toMm: motion.travel }
    : { kind: 'turn', point: motion.point, axis: motion.axis, fromRad: 0, toRad: motion.travelRad };

/** A mover and whatever it carries. */
const carriedBy = (fitOut: FitOut, id: string): ReadonlySet<string | null> =>
  new Set([id, ...fitOut.movers.filter((mover) => mover.carriedBy === id).map((mover) => mover.id)]);

/** The reveal of the house rules, which every part of a leaf keeps from the frame all the way, as far as the travel is proven. */
const REVEAL = 2;

describe('a door or a command board that fits', () => {
  it('goes through its whole travel without meeting the carcass, latch and tray and light included', () => {
    let turned = 0;
    fc.assert(
      fc.property(randomLeaf(fc), anyRoom, (fitting, room) => {
        const fitOut = solve(clearOf(fitting, room));
        if (fitOut.problems.length > 0) return;
        for (const mover of fitOut.movers) {
          const moving = carriedBy(fitOut, mover.id);
          const shapes = fitOut.bodies.filter((body) => moving.has(body.mover)).map(({ shape }) => shape);
          const frame = fitOut.bodies.filter(
            ({ mover: carrier, kind, id }) => carrier === null && (kind === 'panel' || id.endsWith('/coil')),
          );
          const result = certifiedTravel(
            travelOf(mover as Mover),
            shapes,
            frame.map(({ shape }) => shape),
            0,
            {
              limit: 2 * REVEAL,
            },
          );
          expect(result.contact).toBeNull();
          // Springs and slides that stay end on the leaf itself or run beside it: clear of it, by no stated gap.
          const stays = fitOut.bodies.filter(({ mover: carrier, kind }) => carrier === null && kind === 'hardware');
          const besides = certifiedTravel(
            travelOf(mover as Mover),
            shapes,
            stays.map(({ shape }) => shape),
            0,
            { limit: 2 * REVEAL },
          );
          expect(besides.contact).toBeNull();
          expect(result.leastGap).toBeGreaterThanOrEqual(REVEAL - TRAVEL_TOLERANCE_MM);
          turned++;
        }
      }),
      { seed: SEED, numRuns: 120 },
    );
    expect(turned).toBeGreaterThan(30);
  });

  it('moves out of the face: every part of the leaf is before it at a right angle', () => {
    let seen = 0;
    fc.assert(
      fc.property(randomLeaf(fc), anyRoom, (fitting, room) => {
        const fitOut = solve(clearOf(fitting, room));
        if (fitOut.problems.length > 0) return;
        const leaf = fitOut.bodies.find(({ id }) => id === 'opening-1/front');
        const mover = fitOut.movers.find(({ id }) => id === leaf?.mover);
        if (!leaf || mover?.motion.kind !== 'turn' || mover.motion.travelRad < Math.PI / 2) return;
        seen++;
        const open = shapeAt(leaf.shape, motionPose(travelOf(mover as Mover), Math.PI / 2));
        // The face looks along −y from y = 0.
        for (const [, y] of open.vertices) expect(y).toBeLessThanOrEqual(ROUNDING_MM);
      }),
      { seed: SEED, numRuns: 200 },
    );
    expect(seen).toBeGreaterThan(20);
  });

  it('weighs its panels, its pieces, its light and its steel face, and no more', () => {
    let seen = 0;
    fc.assert(
      fc.property(randomLeaf(fc), anyRoom, (fitting, room) => {
        const fitOut = solve(clearOf(fitting, room));
        if (fitOut.problems.length > 0) return;
        seen++;
        const own = fitOut.masses.filter(({ origin, kind, name }) => {
          return origin === 'opening-1' && kind !== 'finish' && name !== 'fasteners';
        });
        const panels = fitOut.panels.filter(({ origin }) => origin === 'opening-1');
        const wood = panels.reduce((sum, { massKg }) => sum + massKg, 0);
        const pieces = fitOut.hardware.filter(
          ({ origin, at, from }) => origin === 'opening-1' && (at || from === 'slide'),
        );
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
      { seed: SEED, numRuns: 200 },
    );
    expect(seen).toBeGreaterThan(40);
  });
});
