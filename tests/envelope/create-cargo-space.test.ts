import { afterAll, describe, expect, test } from 'vitest';
import { loadSolids } from '../../src/bodies/index.ts';
import { houseRules, standardCatalog } from '../../src/catalog/index.ts';
import type { Survey } from '../../src/design/index.ts';
import { createCargoSpace, holdsBox, holdsPoint } from '../../src/envelope/index.ts';
import { boxSurvey, HATCH, surveyOf, wall } from './surveys.ts';

const solids = await loadSolids();
const rules = houseRules(standardCatalog(), []);
afterAll(solids.dispose);

const spaceOf = (survey: Survey) => {
  const read = createCargoSpace(survey, rules, solids);
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  return read.value;
};
const faults = (survey: Survey): readonly string[] => {
  const read = createCargoSpace(survey, rules, solids);
  return read.ok ? [] : read.error.map(({ at, code }) => `${at} ${code}`);
};
const box = (id: string, min: readonly number[], max: readonly number[], rest: Record<string, unknown> = {}) => ({
  id,
  name: id,
  kind: 'other',
  solid: { shape: 'box', min, max },
  ...rest,
});

describe('createCargoSpace', () => {
  test('the loft of a box is the box', () => {
    const space = spaceOf(boxSurvey());
    // 1,200 × 900 × 1,500 mm.
    expect(space.skinVolumeMm3).toBe(1_620_000_000);
    expect(space.freeVolumeMm3).toBe(1_620_000_000);
    expect(space.bounds).toEqual({ min: [0, -600, 0], max: [1500, 600, 900] });
  });

  test('a room that narrows has the volume of the prismatoid', () => {
    const space = spaceOf(
      surveyOf([
        { xMm: 0, left: wall(600, 900) },
        { xMm: 1500, left: wall(300, 450) },
      ]),
    );
    // h/6 (A0 + 4 Am + A1) = 1500/6 × (1200 × 900 + 4 × 900 × 675 + 600 × 450) = 250 × 3,780,000.
    expect(space.skinVolumeMm3).toBeCloseTo(945_000_000, 3);
  });

  test('fixed obstacles are taken away, overlaps once, and what stands outside takes nothing', () => {
    const space = spaceOf(
      boxSurvey({
        obstacles: [
          // Two wheelhouses of 700 × 150 × 250.
          box('wheel-left', [300, 450, 0], [1000, 600, 250]),
          box('wheel-right', [300, -600, 0], [1000, -450, 250]),
          // 50 × 150 × 50 on top of the left one counts once: its lower half lies inside the wheelhouse.
          box('ledge', [300, 450, 225], [350, 600, 275]),
          box('outside', [2000, 0, 0], [2100, 100, 100]),
        ],
      }),
    );
    // 2 × 700 × 150 × 250 + 50 × 150 × 25.
    expect(space.skinVolumeMm3 - space.freeVolumeMm3).toBeCloseTo(52_500_000 + 187_500, 3);
    expect(space.bodies.map(({ id, kind, closure }) => `${id} ${kind} ${closure}`)).toEqual([
      'wheel-left obstacle null',
      'wheel-right obstacle null',
      'ledge obstacle null',
      'outside obstacle null',
    ]);
  });

  test('a prism in the side view takes its area times its width', () => {
    const prism = {
      shape: 'side-prism',
      outline: [
        [900, 0],
        [200, 0],
        [350, 300],
        [700, 300],
      ],
      fromY: 700,
      toY: 400,
    };
    const space = spaceOf(boxSurvey({ obstacles: [{ id: 'wheel', name: 'Wheel', kind: 'wheelhouse', solid: prism }] }));
    // (700 + 350) / 2 × 300 = 157,500 mm² over the 200 mm of it that stand inside, whichever way the outline runs.
    expect(space.skinVolumeMm3 - space.freeVolumeMm3).toBeCloseTo(157_500 * 200, 3);
  });

  test('a round strut takes at least its true volume, and no more than a strut one per cent thicker', () => {
    const capsule = { shape: 'capsule', from: [400, 0, 300], to: [900, 0, 300], radiusMm: 20 };
    const space = spaceOf(boxSurvey({ obstacles: [{ id: 'bar', name: 'Bar', kind: 'strut', solid: capsule }] }));
    // π r² l + 4/3 π r³: 628,319 + 33,510 mm³ at r = 20; facets stand out by at most 1 % of the radius.
    const volume = (r: number): number => Math.PI * r ** 2 * 500 + (4 / 3) * Math.PI * r ** 3;
    const taken = space.skinVolumeMm3 - space.freeVolumeMm3;
    expect(taken).toBeGreaterThan(volume(20));
    expect(taken).toBeLessThan(volume(20.2));
  });

  test('what a closure carries swings with it and takes nothing from the room', () => {
    const space = spaceOf(
      boxSurvey({
        closures: [
          HATCH,
          {
            ...HATCH,
            id: 'glass',
            name: 'Glass',
            kind: 'hatch-glass',
            carriedBy: 'hatch',
            innerProfile: [
              [0, 0],
              [400, 20],
              [420, 10],
            ],
          },
        ],
        obstacles: [box('handle', [-20, -50, 300], [30, 50, 340], { movesWith: 'hatch', kind: 'latch' })],
      }),
    );
    expect(space.freeVolumeMm3).toBe(space.skinVolumeMm3);
    expect(space.bodies.map(({ id, kind, closure }) => `${id} ${kind} ${closure}`)).toEqual([
      'handle obstacle hatch',
      'hatch/piece-1 closure hatch',
      'glass/piece-1 closure glass',
      'glass/piece-2 closure glass',
    ]);
    expect(space.closures.map(({ id, carriedBy }) => `${id} on ${carriedBy}`)).toEqual([
      'hatch on null',
      'glass on hatch',
    ]);
  });

  test('survey and vehicle spread add as squares', () => {
    // √(1.5² + 2²) = 2.5 mm.
    expect(spaceOf(boxSurvey({ sigmaMm: 1.5 })).sigmaMm).toBe(2.5);
  });

  test('points and boxes: inside, touching, inside an obstacle, outside', () => {
    const space = spaceOf(boxSurvey({ obstacles: [box('wheel', [300, 450, 0], [1000, 600, 250])] }));
    expect(holdsPoint(space, [700, 0, 400])).toBe(true);
    expect(holdsPoint(space, [700, 0, 0])).toBe(true);
    expect(holdsPoint(space, [700, 450, 100])).toBe(true);
    expect(holdsPoint(space, [700, 500, 100])).toBe(false);
    expect(holdsPoint(space, [700, 0, -1])).toBe(false);
    expect(holdsBox(space, { min: [300, -600, 0], max: [1000, 450, 900] })).toBe(true);
    expect(holdsBox(space, { min: [300, -600, 0], max: [1000, 450.01, 900] })).toBe(false);
    expect(holdsBox(space, { min: [1200, 450, 0], max: [1500, 600, 900] })).toBe(true);
    expect(holdsBox(space, { min: [1200, 450, 0], max: [1501, 600, 900] })).toBe(false);
    // A box around the obstacle, touching it nowhere but swallowing it.
    expect(holdsBox(space, { min: [200, 400, 0], max: [1100, 600, 300] })).toBe(false);
  });

  test.each<[string, Record<string, unknown>, readonly string[]]>([
    [
      'a flat box',
      { obstacles: [box('flat', [0, 0, 0], [100, 100, 0])] },
      ['survey.obstacles[0].solid.max[2] no-size'],
    ],
    [
      'an outline with an inward corner',
      {
        zones: [
          {
            id: 'zone',
            name: 'Zone',
            rule: 'no-hole',
            solid: {
              shape: 'side-prism',
              outline: [
                [0, 0],
                [100, 0],
                [50, 20],
                [50, 100],
              ],
              fromY: 0,
              toY: 10,
            },
          },
        ],
      },
      ['survey.zones[0].solid.outline not-convex'],
    ],
    [
      'an obstacle that swings with nothing',
      { obstacles: [box('handle', [0, 0, 0], [1, 1, 1], { movesWith: 'hatch' })] },
      ['survey.obstacles[0].movesWith no-such-closure'],
    ],
    [
      'closures that carry each other',
      {
        closures: [
          { ...HATCH, id: 'one', carriedBy: 'two' },
          { ...HATCH, id: 'two', carriedBy: 'one' },
        ],
      },
      ['survey.closures[0].carriedBy circle', 'survey.closures[1].carriedBy circle'],
    ],
    [
      'an obstacle that leaves nothing free',
      { obstacles: [box('block', [-10, -700, -10], [1600, 700, 1000])] },
      ['survey.obstacles nothing-free'],
    ],
  ])('refuses %s, with its place', (_, rest, expected) => {
    expect(faults(boxSurvey(rest))).toEqual(expected);
  });
});
