import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ROUNDING_MM, ROUNDING_MM3 } from '../../src/base/index.ts';
import { houseRules, standardCatalog } from '../../src/catalog/index.ts';
import { type Carcass, type Design, designNodes } from '../../src/design/index.ts';
import { createFitOutSolver, type FitOut, type Panel, solveFitOut } from '../../src/fitout/index.ts';
import { depthInto, isSquare, openingBox, sharedVolume, volumeOf, woodOf } from '../fitout/measures.ts';
import { randomDesign } from './arbitrary.ts';
import { frameOf, insideFittings, isCutOff, leavesOf } from './frames.ts';

const SEED = 20260711;
const RUNS = 80;
const catalog = standardCatalog();
const solve = (design: Design): FitOut => solveFitOut(design, catalog, houseRules(catalog, design.houseRules));

const lawful = (law: (design: Design, fitOut: FitOut) => void, runs = RUNS): void => {
  fc.assert(
    fc.property(randomDesign(fc), (design) => law(design, solve(design))),
    { seed: SEED, numRuns: runs },
  );
};

/** What is cut right through a panel: rectangles with their corners rounded, and round holes. */
const cutVolume = ({ cuts, thickness }: Panel): number =>
  cuts.reduce((volume, cut) => {
    if (cut.kind !== 'cutout' || cut.outline.shape === 'polygon') return volume;
    if (cut.outline.shape === 'circle') return volume + Math.PI * (cut.outline.diameter / 2) ** 2 * thickness;
    const { from, to, cornerRadius } = cut.outline;
    return volume + ((to[0] - from[0]) * (to[1] - from[1]) - (4 - Math.PI) * cornerRadius ** 2) * thickness;
  }, 0);

/** Air between the runners of a riser. */
const underOf = ({ stand, size }: Carcass, frame: readonly Panel[]): number =>
  stand.kind === 'riser'
    ? frame
        .filter(({ role }) => role === 'runner')
        .reduce((left, { volumeMm3 }) => left - volumeMm3, size.width * size.depth * stand.heightMm)
    : 0;

describe('a fit-out', () => {
  it('fills the carcass: frame panels, leaf openings and the void behind the back make the outside volume', () => {
    lawful((design, fitOut) => {
      for (const carcass of design.cabinet.carcasses) {
        const frame = frameOf(fitOut, carcass.id);
        // Where something is cut off, fitout-structure.test.ts holds the same with solids.
        if (frame.length === 0 || isCutOff(carcass)) continue;
        // A hole where something is housed is told, and its volume is in both.
        if (fitOut.problems.some(({ because }) => because.some((words) => words.includes('meets what is cut'))))
          continue;
        const leaves = leavesOf(fitOut, carcass.id).map((opening) => openingBox(fitOut, opening));
        // A fitting that its opening is too small for still shows, but is not joined to anything.
        const refused = new Set<string>(fitOut.problems.filter(({ code }) => code === 'too-small').map(({ at }) => at));
        for (const [id, outer] of insideFittings(fitOut)) if (refused.has(outer)) refused.add(id);
        const fixedFittings = fitOut.panels.filter(
          ({ carcass: owner, mover, origin, id }) =>
            owner === carcass.id && mover === null && !refused.has(origin) && !frame.some((panel) => panel.id === id),
        ) as readonly Panel[];
        // What a fixed shelf takes of a frame panel stands outside every leaf opening.
        const housed = fixedFittings
          .filter(isSquare)
          .flatMap(woodOf)
          .reduce(
            (sum, box) => sum + volumeOf(box) - leaves.reduce((part, leaf) => part + sharedVolume(box, leaf), 0),
            0,
          );
        const { width, height, depth } = carcass.size;
        const { back } = carcass.joints;
        const inner = fitOut.openings.find(({ id }) => id === carcass.opening.id)?.size ?? [0, 0, 0];
        const behind = back.kind === 'groove' ? inner[0] * inner[2] * back.setbackMm : 0;
        const cut = frame.reduce((volume, panel) => volume + cutVolume(panel), 0);
        const sum =
          cut +
          frame.reduce((volume, panel) => volume + panel.volumeMm3, 0) +
          leaves.reduce((volume, box) => volume + volumeOf(box), 0) +
          housed +
          behind +
          underOf(carcass, frame);
        expect(Math.abs(sum - width * height * depth)).toBeLessThan(ROUNDING_MM3);
      }
    });
  });

  it('has no two frame panels in the same place, no panel in an opening beside it, and no two openings in the same place', () => {
    lawful((design, fitOut) => {
      for (const carcass of design.cabinet.carcasses) {
        if (isCutOff(carcass)) continue;
        const wood = frameOf(fitOut, carcass.id).map(woodOf);
        const leaves = leavesOf(fitOut, carcass.id).map((opening) => openingBox(fitOut, opening));
        const deepest = wood.flatMap((boxes, i) =>
          boxes.map((box) =>
            [...wood.slice(i + 1).flat(), ...leaves].reduce((most, other) => Math.max(most, depthInto(box, other)), 0),
          ),
        );
        const between = leaves.flatMap((leaf, i) => leaves.slice(i + 1).map((other) => depthInto(leaf, other)));
        expect(Math.max(0, ...deepest, ...between)).toBeLessThanOrEqual(ROUNDING_MM);
      }
    });
  });

  it('is the same bytes when solved again, and when solved by a solver that knows another design', () => {
    fc.assert(
      fc.property(randomDesign(fc), randomDesign(fc), (design, other) => {
        const first = JSON.stringify(solve(design));
        const solver = createFitOutSolver(catalog);
        const rules = houseRules(catalog, []);
        solver(other, rules);
        solver(design, rules);
        expect(JSON.stringify(solver(design, rules))).toBe(first);
        expect(JSON.stringify(solve(design))).toBe(first);
      }),
      { seed: SEED, numRuns: 40 },
    );
  });

  it('has no size or place that is not a number, and no negative size', () => {
    lawful((_design, fitOut) => {
      expect(JSON.stringify(fitOut)).not.toMatch(/NaN|Infinity/);
      for (const opening of fitOut.openings)
        for (const side of opening.size) expect(side).toBeGreaterThanOrEqual(-ROUNDING_MM);
      for (const panel of fitOut.panels) {
        expect(Math.min(panel.length, panel.width, panel.thickness)).toBeGreaterThan(0);
        expect(panel.volumeMm3).toBeGreaterThanOrEqual(-ROUNDING_MM3);
      }
      const numbers = (value: unknown): readonly number[] => {
        if (typeof value === 'number') return [value];
        return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbers) : [];
      };
      expect(numbers(fitOut).every(Number.isFinite)).toBe(true);
    });
  });

  it('names a node of the design behind every part, and gives every part a name of its own', () => {
    lawful((design, fitOut) => {
      const nodes = new Set<string>(designNodes(design).map(({ id }) => id));
      const parts = [fitOut.panels, fitOut.bodies, fitOut.movers, fitOut.masses, fitOut.hardware, fitOut.devices];
      for (const list of parts) {
        for (const { origin } of list) expect(nodes.has(origin)).toBe(true);
        expect(new Set(list.map(({ id }) => id)).size).toBe(list.length);
      }
      const movers = new Set(fitOut.movers.map(({ id }) => id));
      for (const { mover } of [...fitOut.panels, ...fitOut.bodies, ...fitOut.masses])
        if (mover !== null) expect(movers.has(mover)).toBe(true);
    });
  });

  it('weighs what its panels weigh: volume times density', () => {
    lawful((_design, fitOut) => {
      for (const panel of fitOut.panels) {
        const density = catalog.materials.get(panel.material)?.densityKgM3 ?? Number.NaN;
        expect(panel.massKg * 1e9).toBeCloseTo(panel.volumeMm3 * density, 0);
        const item = fitOut.masses.find(({ id }) => id === panel.id);
        expect(item?.massKg).toBe(panel.massKg);
      }
    });
  });
});
