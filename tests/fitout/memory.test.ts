import { describe, expect, it } from 'vitest';
import { houseRules, standardCatalog } from '../../src/catalog/index.ts';
import type { Design } from '../../src/design/index.ts';
import { createFitOutSolver, solveFitOut } from '../../src/fitout/index.ts';
import { carcass, designOf, empty } from './designs.ts';

const catalog = standardCatalog();
const rules = houseRules(catalog, []);

const two = (): Design =>
  designOf([
    carcass(empty('opening-1')),
    carcass(empty('opening-2'), {
      id: 'carcass-2',
      place: {
        x: { rule: 'beside', carcass: 'carcass-1', side: 'plus', gapMm: 5 },
        y: { rule: 'at', mm: 0 },
        z: { rule: 'at', mm: 0 },
      },
    }),
  ]);

const widened = (design: Design, index: number, by: number): Design => ({
  ...design,
  cabinet: {
    ...design.cabinet,
    carcasses: design.cabinet.carcasses.map((each, i) =>
      i === index ? { ...each, size: { ...each.size, width: each.size.width + by } } : each,
    ),
  },
});

describe('a solver with a memory', () => {
  it('solves only the carcass that changed', () => {
    const solve = createFitOutSolver(catalog);
    const design = two();
    const before = solve(design, rules);
    const after = solve(widened(design, 1, 10), rules);
    const panel = (fitOut: typeof before, id: string) => fitOut.panels.find((each) => each.id === id);
    expect(panel(after, 'carcass-1/top')).toBe(panel(before, 'carcass-1/top'));
    expect(panel(after, 'carcass-2/top')).not.toBe(panel(before, 'carcass-2/top'));
    // The second carcass stands beside the first, so that a wider first one moves it: 900 + 10 + 5.
    const moved = solve(widened(design, 0, 10), rules);
    expect(moved.carcasses[1]?.pose.at[0]).toBe(915);
  });

  it('sees gear, places and rules that changed', () => {
    const solve = createFitOutSolver(catalog);
    const design = two();
    const place = { opening: 'opening-1', level: 0, at: [0, 0, 0], stance: 'upright', turnDeg: 0 };
    const gear = [{ id: 'gear-1', name: 'Bag', sizeMm: [100, 100, 100], massKg: 3, massFrom: 'measured', place }];
    const withGear = designOf([carcass(empty('opening-1'))], { gear });
    solve(design, rules);
    for (const next of [withGear, { ...withGear, gear: [] }, design])
      expect(JSON.stringify(solve(next, rules))).toBe(JSON.stringify(solveFitOut(next, catalog, rules)));
    const heavier = houseRules(catalog, [{ rule: 'finish-mass', value: 1, who: 'shop', why: 'thick' }]);
    expect(JSON.stringify(solve(design, heavier))).toBe(JSON.stringify(solveFitOut(design, catalog, heavier)));
    expect(JSON.stringify(solve(design, heavier))).not.toBe(JSON.stringify(solve(design, rules)));
  });

  it('weighs the finish and the small fasteners of each carcass', () => {
    const { masses, panels, carcasses } = solveFitOut(two(), catalog, rules);
    const of = (id: string) => masses.find((item) => item.id === id)?.massKg;
    const own = panels.filter((panel) => panel.carcass === 'carcass-1');
    const area = own.reduce((sum, { length, width }) => sum + 2 * length * width, 0) / 1e6;
    // 0.25 kg on each square metre of face, and 2 % of the panels.
    expect(of('carcass-1/finish')).toBeCloseTo(0.25 * area, 9);
    const wood = own.reduce((sum, { massKg }) => sum + massKg, 0);
    expect(of('carcass-1/fasteners')).toBeCloseTo(0.02 * wood, 9);
    expect(carcasses[0]?.massKg).toBeCloseTo(wood * 1.02 + 0.25 * area, 9);
  });
});
