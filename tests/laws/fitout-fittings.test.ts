import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Box, boxAt, placed, ROUNDING_MM, type Vec3 } from '../../src/base/index.ts';
import { houseRules, standardCatalog } from '../../src/catalog/index.ts';
import { type Design, designNodes, openingsFrom } from '../../src/design/index.ts';
import { type FitOut, type Panel, solveFitOut, wholePart } from '../../src/fitout/index.ts';
import { carcass, designOf, fitted } from '../fitout/designs.ts';
import { bodyBox, depthInto, isSquare, openingBox, woodOf } from '../fitout/measures.ts';
import { randomDesign, randomFitting } from './arbitrary.ts';

const SEED = 20260712;
const catalog = standardCatalog();
const solve = (design: Design): FitOut => solveFitOut(design, catalog, houseRules(catalog, design.houseRules));

/** A carcass of 18 mm birch (17.7) with the back (6.4) 12 from the rear, clear inside by across × deep × up. */
const clearOf = (fitting: Readonly<Record<string, unknown>>, [across, deep, up]: Vec3): Design =>
  designOf([
    carcass(fitted('opening-1', fitting), {
      size: { width: across + 2 * 17.7, height: up + 2 * 17.7, depth: deep + 6.4 + 12 },
    }),
  ]);

const mm = (min: number, max: number) => fc.integer({ min: min * 10, max: max * 10 }).map((tenths) => tenths / 10);
const anyRoom = fc.tuple(mm(60, 900), mm(60, 900), mm(30, 700));

const refusals = (fitOut: FitOut) =>
  fitOut.problems.filter(({ code, at }) => code === 'too-small' && at === 'opening-1');

const boxIn = (pose: FitOut['rooms'][number]['pose'], size: Vec3): Box => {
  const [a, b] = [placed(pose, [0, 0, 0]), placed(pose, size)];
  const low = (axis: 0 | 1 | 2): number => Math.min(a[axis], b[axis]);
  return boxAt([low(0), low(1), low(2)], [Math.abs(a[0] - b[0]), Math.abs(a[1] - b[1]), Math.abs(a[2] - b[2])]);
};

describe('a fitting in a random opening', () => {
  it('fits, or says the least size that it needs, and fits when given exactly that', () => {
    let refused = 0;
    let fits = 0;
    fc.assert(
      fc.property(randomFitting(fc), anyRoom, (fitting, room) => {
        const first = solve(clearOf(fitting, room));
        const least = first.openings[0]?.least ?? [0, 0, 0];
        const short = refusals(first);
        if (short.length === 0) {
          fits++;
          for (const axis of [0, 1, 2] as const) expect(room[axis]).toBeGreaterThanOrEqual(least[axis] - ROUNDING_MM);
          return;
        }
        refused++;
        for (const { needMm, haveMm } of short) expect(needMm).toBeGreaterThan(haveMm ?? Infinity);
        expect(refusals(solve(clearOf(fitting, least)))).toEqual([]);
      }),
      { seed: SEED, numRuns: 200 },
    );
    // Both happen often enough to mean something.
    expect(Math.min(refused, fits)).toBeGreaterThan(20);
  });

  it('is refused in a room smaller than its least on any one axis', () => {
    fc.assert(
      fc.property(randomFitting(fc), fc.constantFrom(0 as const, 1 as const, 2 as const), (fitting, axis) => {
        const least = solve(clearOf(fitting, [400, 400, 400])).openings[0]?.least ?? [0, 0, 0];
        const names = ['across', 'deep', 'up'] as const;
        const smaller = least.map((side, i) => (i === axis ? side - 1 : side)) as unknown as Vec3;
        expect(refusals(solve(clearOf(fitting, smaller))).map((problem) => problem.axis)).toContain(names[axis]);
      }),
      { seed: SEED, numRuns: 60 },
    );
  });
});

/** How far a body may stand out of its opening: housed shelves, and what is meant to stand in front of the face. */
const outward = (id: string): boolean => /\/(pull|latch|lock|front|face)$/.test(wholePart(id));
/** Air beyond a wall that is kept for what passes through it. */
const beyond = (id: string): boolean => id.endsWith('/beyond');
/** Boards that are let into what is around the opening: across, or up and down. */
const HOUSED: readonly (readonly [RegExp, 0 | 2])[] = [
  [/\/(shelf-|cover|ledge|backing|divider-)/, 0],
  [/\/divider-/, 2],
];
const HOUSING_MM = 6;

describe('a drawer or slide-out', () => {
  const sliding = randomFitting(fc, 0).filter(({ kind }) => kind === 'drawer' || kind === 'slide-out');
  const rule = (id: string): number => houseRules(catalog, []).value(id);

  /** Least spare over everything that the mover carries, and behind it and its slides. */
  const spares = (fitOut: FitOut): { readonly above: number; readonly behind: number } => {
    const [opening] = fitOut.openings;
    if (!opening) throw new Error('no opening');
    const { max } = openingBox(fitOut, opening);
    // The front closes the opening and keeps its reveal only.
    const carried = fitOut.bodies.filter(
      ({ origin, id }) => origin === 'opening-1' && !/\/(front|latch|pull)$/.test(wholePart(id)),
    );
    const high = Math.max(...carried.map((body) => bodyBox(body as never).max[2]));
    const far = Math.max(...carried.map((body) => bodyBox(body as never).max[1]));
    return { above: max[2] - high, behind: max[1] - far };
  };

  it('keeps its clearances in its least room and in any room that it fits', () => {
    let fits = 0;
    fc.assert(
      fc.property(sliding, anyRoom, (fitting, room) => {
        const least = solve(clearOf(fitting, room)).openings[0]?.least ?? [0, 0, 0];
        const larger = room.map((side, axis) => (least[axis] ?? 0) + side / 10) as unknown as Vec3;
        for (const size of [least, larger]) {
          const fitOut = solve(clearOf(fitting, size));
          if (fitOut.problems.some(({ code }) => code === 'rules-fight')) continue;
          fits++;
          const { above, behind } = spares(fitOut);
          const clearAbove = fitting.kind === 'drawer' ? rule('drawer-clear-above') : rule('tray-clear-above');
          expect(above).toBeGreaterThanOrEqual(clearAbove - ROUNDING_MM);
          expect(behind).toBeGreaterThanOrEqual(rule('back-clear') - ROUNDING_MM);
        }
      }),
      { seed: SEED, numRuns: 80 },
    );
    expect(fits).toBeGreaterThan(100);
  });
});

describe('everything of a fitting that fits', () => {
  it('lies inside its opening at rest, but for what stands in front of the face', () => {
    let seen = 0;
    fc.assert(
      fc.property(randomFitting(fc, 0), anyRoom, (fitting, room) => {
        const design = clearOf(fitting, room);
        const fitOut = solve(design);
        if (fitOut.problems.length > 0) return;
        const [opening] = fitOut.openings;
        if (!opening) return;
        const box = openingBox(fitOut, opening);
        const own = new Set<string>(
          [...openingsFrom(design.cabinet.carcasses[0]?.opening as never)].map(({ id }) => id),
        );
        for (const { id, kind } of designNodes(design)) if (kind === 'device') own.add(id);
        // A front over the face covers half of what surrounds it.
        for (const body of fitOut.bodies.filter(
          ({ origin, id }) => own.has(origin) && !wholePart(id).endsWith('/front') && !beyond(id),
        )) {
          seen++;
          const at = bodyBox(body as never);
          for (const axis of [0, 1, 2] as const) {
            const housed = HOUSED.some(([boards, into]) => axis === into && boards.test(body.id));
            const spare = ROUNDING_MM + (housed ? HOUSING_MM : 0);
            if (!(axis === 1 && outward(body.id))) expect(at.min[axis]).toBeGreaterThanOrEqual(box.min[axis] - spare);
            expect(at.max[axis]).toBeLessThanOrEqual(box.max[axis] + spare);
          }
        }
      }),
      { seed: SEED, numRuns: 300 },
    );
    expect(seen).toBeGreaterThan(300);
  });

  it('leaves every room for gear clear of the panels of its carcass', () => {
    let rooms = 0;
    fc.assert(
      fc.property(randomDesign(fc, { gentle: true, depth: 3 }), (design) => {
        const fitOut = solve(design);
        const refused = new Set(fitOut.problems.filter(({ code }) => code === 'too-small').map(({ at }) => at));
        if (refused.size > 0) return;
        // What a problem says cannot be made, a front laid over a partition say, is not held to it.
        const unmade = new Set<string>(fitOut.problems.map(({ at }) => at));
        const panels = (fitOut.panels as readonly Panel[]).filter(
          (panel) => isSquare(panel) && !unmade.has(panel.origin),
        );
        const wood = new Map(
          fitOut.carcasses.map(({ id }) => [id, panels.filter((panel) => panel.carcass === id).flatMap(woodOf)]),
        );
        for (const { pose, size, carcass: owner } of fitOut.rooms) {
          rooms++;
          const room = boxIn(pose, size);
          const deepest = (wood.get(owner) ?? []).reduce((most, box) => Math.max(most, depthInto(box, room)), 0);
          expect(deepest).toBeLessThanOrEqual(ROUNDING_MM);
        }
      }),
      { seed: SEED, numRuns: 150 },
    );
    expect(rooms).toBeGreaterThan(50);
  });
});
