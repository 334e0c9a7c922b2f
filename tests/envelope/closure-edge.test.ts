import { describe, expect, it } from 'vitest';
import { radians, signedArea, type Vec2, type Vec3 } from '../../src/base/index.ts';
import { loadSolids } from '../../src/bodies/index.ts';
import type { Survey } from '../../src/design/index.ts';
import { convexSlabs } from '../../src/envelope/convex-slabs.ts';
import {
  type CargoSpace,
  closureEdge,
  closurePose,
  createCargoSpace,
  lowestOpenEdge,
  openingFromMarks,
} from '../../src/envelope/index.ts';
import { rules } from './random-survey.ts';
import { boxSurvey, HATCH } from './surveys.ts';

const solids = await loadSolids();
const spaceOf = (survey: Survey): CargoSpace => {
  const made = createCargoSpace(survey, rules, solids);
  if (!made.ok) throw new Error(JSON.stringify(made.error));
  return made.value;
};
const GLASS = {
  ...HATCH,
  id: 'glass',
  name: 'Glass',
  kind: 'hatch-glass',
  hinge: { from: [-30, -500, 860], to: [-30, 500, 860] },
  innerProfile: [
    [0, 0],
    [400, 0],
  ],
  thicknessMm: 6,
  opensDeg: 90,
  carriedBy: 'hatch',
};

describe('lowestOpenEdge', () => {
  it('of a hatch that opens level is the underside of its trim', () => {
    const space = spaceOf(boxSurvey({ closures: [HATCH] }));
    // Hinge at 900 above the floor; opened by 90° the trim lies level at 900, its 40 of thickness above it.
    const edge = lowestOpenEdge(space, 'hatch', 800);
    expect(edge?.at[2]).toBeCloseTo(900, 9);
    expect(edge?.aboveGroundMm).toBeCloseTo(1700, 9);
    expect(lowestOpenEdge(space, 'hatch', null)?.aboveGroundMm).toBeNull();
  });

  it('a taped edge is off when it lies further away than springs and tyres let it', () => {
    const taped = (mm: number) => boxSurvey({ closures: [{ ...HATCH, lowestEdgeAboveGroundMm: mm }] });
    const edge = (mm: number, floor: number | null = 800) =>
      closureEdge(spaceOf(taped(mm)), taped(mm), 'hatch', floor, rules);
    // 900 above a floor that stands 800 above ground; 25 is allowed.
    expect(edge(1724)).toMatchObject({ tapedMm: 1724, limitMm: 25, off: false });
    expect(edge(1724)?.madeMm).toBeCloseTo(1700, 9);
    expect(edge(1726)?.off).toBe(true);
    expect(edge(1726, null)).toBeNull();
  });
});

describe('openingFromMarks', () => {
  const levels = ['sill', 'middle', 'top'] as const;
  const points = new Map<string, Vec3>(
    levels.flatMap((level, i) => [
      [`mark-opening-${level}-left`, [0, 600 - 20 * i, 400 * i]] as const,
      [`mark-opening-${level}-right`, [0, -610 + 20 * i, 400 * i]] as const,
    ]),
  );

  it('runs up the right side and down the left, from the sill to the sill', () => {
    const ring = openingFromMarks(points);
    expect(ring).toEqual([
      [-610, 0],
      [-590, 400],
      [-570, 800],
      [560, 800],
      [580, 400],
      [600, 0],
    ]);
  });

  it('is nothing while one mark is not held', () => {
    expect(openingFromMarks(new Map([...points].slice(1)))).toBeNull();
  });
});

describe('closurePose', () => {
  it('glass opens by itself in a closed hatch, and with the hatch', () => {
    const space = spaceOf(boxSurvey({ closures: [HATCH, GLASS] }));
    const tip = (opened: Record<string, number>) => {
      const { turn, at } = closurePose(space, 'glass', opened);
      const [x, y, z] = [-30, 0, 460];
      return [0, 1, 2].map((k) => (turn[0][k] ?? 0) * x + (turn[1][k] ?? 0) * y + (turn[2][k] ?? 0) * z + (at[k] ?? 0));
    };
    // Glass hinge at (−30, 860), its edge 400 below at 460. Alone by 90°: 400 straight back, at 860.
    expect(tip({ glass: radians(90) })[0]).toBeCloseTo(-430, 9);
    expect(tip({ glass: radians(90) })[2]).toBeCloseTo(860, 9);
    // With the hatch too, everything turns a quarter about (−20, 900): (dx, dz) → (dz, −dx) of (−410, −40).
    const both = tip({ glass: radians(90), hatch: radians(90) });
    expect(both[0]).toBeCloseTo(-20 - 40, 9);
    expect(both[2]).toBeCloseTo(900 + 410, 9);
  });
});

describe('zones with an outline from above', () => {
  const bent: readonly Vec2[] = [
    [100, -300],
    [900, -300],
    [900, 400],
    [600, 400],
    [600, 0],
    [400, 200],
    [100, 0],
  ];
  const zone = (outline: readonly Vec2[]) => ({
    id: 'zone-1',
    name: 'tank',
    rule: 'no-hole',
    solid: { shape: 'box', min: [0, -400, -60], max: [1000, 500, 0] },
    outlineFromAbove: outline,
  });

  it('come as convex pieces that fill it, under one id', () => {
    const pieces = convexSlabs(bent);
    const area = pieces.reduce((sum, piece) => sum + Math.abs(signedArea(piece)), 0);
    expect(area).toBeCloseTo(Math.abs(signedArea(bent)), 6);
    const { zones } = spaceOf(boxSurvey({ zones: [zone(bent)] }));
    expect(zones.length).toBe(pieces.length);
    expect(new Set(zones.map(({ id }) => id)).size).toBe(1);
    const volume = zones.reduce(
      (sum, { shape }) => sum + solids.scope(() => solids.volume(solids.fromConvex(shape))),
      0,
    );
    expect(Math.abs(volume - 60 * area)).toBeLessThan(1);
  });

  it('an outline that crosses itself is refused', () => {
    const crossed: readonly Vec2[] = [
      [0, 0],
      [500, 500],
      [500, 0],
      [0, 400],
    ];
    const made = createCargoSpace(boxSurvey({ zones: [zone(crossed)] }), rules, solids);
    expect(made.ok ? '' : made.error[0]?.code).toBe('self-crossing');
  });
});
