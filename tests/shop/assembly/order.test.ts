import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ROUNDING_MM3, type Vec3 } from '../../../src/base/index.ts';
import { boxShape, convexVolume } from '../../../src/bodies/index.ts';
import { houseRules, standardCatalog } from '../../../src/catalog/index.ts';
import { type FitOut, type Panel, solveFitOut } from '../../../src/fitout/index.ts';
import { assemblyPlan, woodOf } from '../../../src/shop/assembly/index.ts';
import { blockOf, lumpOf } from '../../../src/shop/assembly/sweep.ts';
import { orderOfMoves } from '../../../src/shop/assembly/take-apart.ts';
import { carcass, divided, empty, fitted, share, solved } from '../../fitout/designs.ts';
import { depthInto, isSquare, woodOf as plainWood } from '../../fitout/measures.ts';
import { randomDesign } from '../../laws/arbitrary.ts';

const catalog = standardCatalog();
const rules = houseRules(catalog, []);
const stepsOf = (fitOut: FitOut, id: string) =>
  assemblyPlan(fitOut, catalog, rules).stages.find(({ assembly }) => assembly.id === id)?.steps ?? [];
const placeOf = (fitOut: FitOut, assembly: string, panel: string): number =>
  stepsOf(fitOut, assembly).findIndex(({ panels }) => panels.includes(panel));

describe('the wood of a panel', () => {
  it('is what the fit-out weighs: in random designs, without what is bored', () => {
    const fitOuts = fc
      .sample(randomDesign(fc, { maxCarcasses: 1 }), { seed: 602_214, numRuns: 12 })
      .map((design) => solveFitOut(design, catalog, rules));
    let count = 0;
    for (const panel of fitOuts.flatMap(({ panels }) => panels)) {
      // A round corner of a cut-out is none of the rectangle that it touches.
      if (panel.cuts.some(({ kind }) => kind === 'cutout')) continue;
      const sum = woodOf(panel).reduce((volume, shape) => volume + convexVolume(shape).volumeMm3, 0);
      expect(Math.abs(sum - panel.volumeMm3)).toBeLessThan(ROUNDING_MM3);
      count++;
    }
    expect(count).toBeGreaterThan(80);
  });

  it('ends at its bevels and its cut-off corners', () => {
    const fitOut = solved([
      carcass(empty('opening-1'), {
        chamfers: [{ id: 'chamfer-1', along: 'deep', corner: 'top-right', acrossMm: 120, upMm: 160 }],
      }),
    ]);
    for (const panel of fitOut.panels) {
      const sum = woodOf(panel as Panel).reduce((volume, shape) => volume + convexVolume(shape).volumeMm3, 0);
      expect(Math.abs(sum - panel.volumeMm3)).toBeLessThan(ROUNDING_MM3);
    }
    expect(fitOut.panels.some(({ bevels }) => bevels !== undefined)).toBe(true);
  });
});

describe('the order of assembly', () => {
  const fitOut = solved([
    carcass(
      divided('opening-1', 'columns', [
        [share(), empty('opening-2')],
        [share(), empty('opening-3')],
      ]),
    ),
  ]);
  const at = (role: string): number => placeOf(fitOut, 'carcass-1', `carcass-1/${role}`);

  it('puts the back in before the side that closes its groove, and names that', () => {
    expect(at('back')).toBeGreaterThan(0);
    expect(at('back')).toBeLessThan(Math.max(at('side-left'), at('side-right')));
    const back = stepsOf(fitOut, 'carcass-1')[at('back')];
    expect(back?.before).toHaveLength(1);
    // Held by grooves of the four round it; three of them are there.
    expect(back?.joints.map(({ joint }) => joint.kind)).toEqual(['groove', 'groove', 'groove']);
    expect(back?.joints.every(({ screws }) => screws === 0)).toBe(true);
  });

  it('puts the divider into its dados before the back stands behind it', () => {
    const divider = placeOf(fitOut, 'carcass-1', 'opening-1/divider-1');
    expect(divider).toBeLessThan(Math.max(at('top'), at('bottom')));
    for (const step of stepsOf(fitOut, 'carcass-1')) expect(step.found).toBe(true);
  });

  it('builds a drawer before the carcass that takes it, and puts it in last', () => {
    const withDrawer = solved([
      carcass(
        fitted('opening-1', {
          kind: 'drawer',
          slide: 'slide-45',
          boxMaterial: 'birch-ply-12',
          bottomMaterial: 'birch-ply-6',
          inside: empty('opening-2'),
        }),
      ),
    ]);
    const plan = assemblyPlan(withDrawer, catalog, rules);
    expect(plan.stages.map(({ assembly }) => assembly.id)).toEqual(['opening-1/drawer', 'carcass-1']);
    expect(plan.vehicle.map(({ kind }) => kind).filter((kind) => kind !== 'fixed')).toEqual(['carcass', 'mover']);
    // The rails of the slide are screwed on while the sides still lie there.
    const fixed = plan.stages.flatMap(({ steps }) => steps.flatMap(({ fixFirst }) => fixFirst));
    expect(fixed.length).toBeGreaterThanOrEqual(4);
  });

  it('says how many screws no driver reaches: shelves at one height on both sides of a divider', () => {
    const shelves = (id: string) =>
      fitted(id, { kind: 'open-storage', shelvesUpMm: [300], shelfMaterial: 'birch-ply-12' });
    const plan = solved([
      carcass(
        divided('opening-1', 'columns', [
          [share(), shelves('opening-2')],
          [share(), shelves('opening-3')],
        ]),
      ),
    ]);
    const out = stepsOf(plan, 'carcass-1').flatMap(({ joints }) => joints.map(({ outOfReach }) => outOfReach));
    expect(Math.max(...out)).toBeGreaterThan(0);
    // One shelf alone is screwed through the divider from the other bay.
    const alone = solved([
      carcass(
        divided('opening-1', 'columns', [
          [share(), shelves('opening-2')],
          [share(), empty('opening-3')],
        ]),
      ),
    ]);
    for (const { joints } of stepsOf(alone, 'carcass-1'))
      for (const { outOfReach } of joints) expect(outOfReach).toBe(0);
  });
});

describe('taking apart', () => {
  const thing = (id: string, rank: number, ...boxes: readonly (readonly [Vec3, Vec3])[]) => ({
    id,
    rank,
    lump: lumpOf(boxes.map(([min, max]) => blockOf(boxShape({ min, max })))),
  });
  const free = {
    ways: [
      [1, 0, 0],
      [-1, 0, 0],
      [0, 1, 0],
      [0, -1, 0],
      [0, 0, 1],
      [0, 0, -1],
    ] as readonly Vec3[],
    reach: 1000,
    reachable: () => true,
  };

  it('takes two that hook into each other off together, and says so', () => {
    // A hook of each behind the other along x; both may be lifted off the plate, neither alone along z: a lid lies on both.
    const plate = thing('plate', 0, [
      [0, 0, 0],
      [100, 100, 10],
    ]);
    const left = thing(
      'left',
      1,
      [
        [10, 10, 10],
        [40, 20, 20],
      ],
      [
        [30, 10, 20],
        [40, 60, 30],
      ],
    );
    const right = thing(
      'right',
      2,
      [
        [10, 50, 10],
        [28, 60, 40],
      ],
      [
        [10, 10, 31],
        [60, 60, 40],
      ],
    );
    const moves = orderOfMoves([plate, left, right], free);
    expect(moves.flatMap(({ ids }) => ids).sort()).toEqual(['left', 'plate', 'right']);
    expect(moves[0]).toMatchObject({ ids: ['plate'], into: null });
    for (const { into } of moves.slice(1)) expect(into).not.toBeNull();
  });

  it('does not claim a way where there is none: a ball in a closed box', () => {
    const wall = (min: Vec3, max: Vec3) => [min, max] as const;
    const shell = thing(
      'shell',
      0,
      wall([0, 0, 0], [100, 100, 10]),
      wall([0, 0, 90], [100, 100, 100]),
      wall([0, 0, 10], [10, 100, 90]),
      wall([90, 0, 10], [100, 100, 90]),
      wall([10, 0, 10], [90, 10, 90]),
      wall([10, 90, 10], [90, 100, 90]),
    );
    const ball = thing('ball', 1, [
      [40, 40, 40],
      [60, 60, 60],
    ]);
    expect(orderOfMoves([shell, ball], free).map(({ into }) => into)).toEqual([null, null]);
  });

  it('keeps what cannot be screwed later for the end', () => {
    const stack = [0, 1, 2].map((i) =>
      thing(`p${i}`, i, [
        [0, 0, i * 10],
        [50, 50, i * 10 + 10],
      ]),
    );
    const screwed = { ...free, reachable: (moving: readonly string[]) => !moving.includes('p2') };
    // By rank p2 would come last; its screws are out of reach then, so another is taken off first.
    expect(orderOfMoves(stack, free).at(-1)?.ids).toEqual(['p2']);
    expect(orderOfMoves(stack, screwed).at(-1)?.ids).not.toEqual(['p2']);
  });
});

describe('law of the assembly order', () => {
  it('every panel goes in once, and on its way in meets nothing that is there: stepped along its way with plain boxes', () => {
    let [moved, unfound] = [0, 0];
    fc.assert(
      fc.property(randomDesign(fc, { maxCarcasses: 1, depth: 3, gentle: true }), (design) => {
        const fitOut = solveFitOut(design, catalog, rules);
        const byId = new Map(fitOut.panels.map((panel) => [panel.id, panel as Panel]));
        const { stages } = assemblyPlan(fitOut, catalog, rules);
        const placed = stages.flatMap(({ steps }) =>
          steps.filter(({ panels }) => panels.length === 1).flatMap(({ panels }) => panels),
        );
        expect([...placed].sort()).toEqual([...byId.keys()].sort());
        for (const { steps } of stages) {
          const there: Panel[] = [];
          for (const { panels, into, found } of steps) {
            const coming = panels.flatMap((id) => byId.get(id) ?? []).filter(isSquare);
            if (!found) unfound++;
            // Those that were put together apart are checked when they go in together.
            const inner = steps.some(
              (later) => later.panels.length > 1 && panels.length === 1 && later.panels.includes(panels[0] ?? ''),
            );
            if (into?.every((share) => Math.abs(share) === 1 || share === 0) && !inner) {
              const own = coming.flatMap(plainWood);
              // What is drawn in one place with another already, where a fitting found no room, blocks nothing.
              const rest = there
                .filter((panel) => !panels.includes(panel.id) && isSquare(panel))
                .map(plainWood)
                .filter((boxes) => !boxes.some((box) => own.some((each) => depthInto(each, box) > 0.02)))
                .flat();
              for (const back of [0.5, 1, 2, 4, 7, 12, 20, 35, 60, 110, 200, 400, 800]) {
                const by = (v: Vec3): Vec3 => [v[0] - into[0] * back, v[1] - into[1] * back, v[2] - into[2] * back];
                const worst = Math.max(
                  0,
                  ...own.flatMap(({ min, max }) =>
                    rest.map((other) => depthInto({ min: by(min), max: by(max) }, other)),
                  ),
                );
                expect(worst).toBeLessThanOrEqual(0.02);
                moved++;
              }
            }
            there.push(...panels.flatMap((id) => (there.some((each) => each.id === id) ? [] : (byId.get(id) ?? []))));
          }
        }
      }),
      { seed: 20_260_711, numRuns: 25 },
    );
    expect(moved).toBeGreaterThan(1000);
    expect(unfound).toBe(0);
  });
});
