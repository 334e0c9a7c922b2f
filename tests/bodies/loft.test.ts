import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { polygonHolds, type Random, seededRandom, signedArea, type Vec2, type Vec3 } from '../../src/base/index.ts';
import { earTriangles } from '../../src/bodies/ears.ts';
import {
  loftShell,
  prepareShell,
  shellCentroid,
  shellHolds,
  shellIsClosed,
  shellVolume,
} from '../../src/bodies/index.ts';
import { anySeed, SEED } from './scenes.ts';

/** A cargo section with a wheelhouse on either side, anticlockwise in y, z. */
const wheels: readonly Vec2[] = [
  [-400, 0],
  [400, 0],
  [400, 250],
  [550, 250],
  [550, 900],
  [-550, 900],
  [-550, 250],
  [-400, 250],
];

/** A star of n corners about a middle: never crosses itself, mostly not convex. */
const star = (random: Random, count: number): readonly Vec2[] =>
  Array.from({ length: count }, (_, i): Vec2 => {
    const reach = 100 + random() * 500;
    const angle = ((i + random() * 0.8) / count) * 2 * Math.PI;
    return [reach * Math.cos(angle), 500 + reach * Math.sin(angle)];
  });

describe('earTriangles', () => {
  it('covers any star exactly, turning as the ring turns', () =>
    fc.assert(
      fc.property(anySeed, (seed) => {
        const random = seededRandom(seed);
        const ring = star(random, 3 + Math.floor(random() * 30));
        for (const polygon of [ring, [...ring].reverse()]) {
          const areas = earTriangles(polygon).map((ear) => signedArea(ear.map((i): Vec2 => polygon[i] ?? [0, 0])));
          expect(areas).toHaveLength(polygon.length - 2);
          for (const area of areas) expect(Math.sign(area)).toBe(Math.sign(signedArea(polygon)));
          expect(areas.reduce((sum, area) => sum + area, 0)).toBeCloseTo(signedArea(polygon), 5);
        }
      }),
      { seed: SEED, numRuns: 200 },
    ));

  it('takes repeated and straight corners', () => {
    const ring: readonly Vec2[] = [
      [0, 0],
      [50, 0],
      [100, 0],
      [100, 0],
      [100, 80],
      [0, 80],
      [0, 40],
    ];
    const areas = earTriangles(ring).map((ear) => signedArea(ear.map((i): Vec2 => ring[i] ?? [0, 0])));
    expect(areas.reduce((sum, area) => sum + area, 0)).toBeCloseTo(8000, 9); // 100 · 80
  });

  it('refuses a ring that crosses itself', () => {
    expect(() =>
      earTriangles([
        [0, 0],
        [10, 10],
        [10, 0],
        [0, 10],
        [-5, 5],
      ]),
    ).toThrow(RangeError);
  });
});

describe('loftShell', () => {
  it('makes a closed solid of the right volume and middle, either way round', () => {
    for (const ring of [wheels, [...wheels].reverse()]) {
      const shell = loftShell([
        { x: 0, ring },
        { x: 700, ring },
      ]);
      expect(shellIsClosed(shell)).toBe(true);
      const area = 800 * 250 + 1100 * 650;
      expect(shellVolume(shell)).toBeCloseTo(area * 700, 3);
      const [x, y, z] = shellCentroid(shell);
      expect(x).toBeCloseTo(350, 9);
      expect(y).toBeCloseTo(0, 9);
      expect(z).toBeCloseTo((800 * 250 * 125 + 1100 * 650 * 575) / area, 9);
    }
  });

  it('makes the frustum between two squares', () => {
    const square = (half: number): readonly Vec2[] => [
      [-half, -half],
      [half, -half],
      [half, half],
      [-half, half],
    ];
    const shell = loftShell([
      { x: 0, ring: square(50) },
      { x: 90, ring: square(20) },
    ]);
    expect(shellVolume(shell)).toBeCloseTo((90 / 3) * (100 ** 2 + 40 ** 2 + 100 * 40), 6); // h/3 (A + a + √(Aa))
  });

  it('lets a wheelhouse die out in repeated corners', () => {
    const plain: readonly Vec2[] = [
      [-550, 0],
      [550, 0],
      [550, 250],
      [550, 250],
      [550, 900],
      [-550, 900],
      [-550, 250],
      [-550, 250],
    ];
    const shell = loftShell([
      { x: 0, ring: wheels },
      { x: 400, ring: plain },
      { x: 800, ring: plain },
    ]);
    expect(shellIsClosed(shell)).toBe(true);
    const box = 1100 * 900 * 800;
    expect(shellVolume(shell)).toBeLessThan(box);
    expect(shellVolume(shell)).toBeGreaterThan(box - 2 * 150 * 250 * 400); // less than two whole wheelhouses gone
  });

  it.each([
    ['one section', [{ x: 0, ring: wheels }]],
    [
      'unequal corner counts',
      [
        { x: 0, ring: wheels },
        { x: 5, ring: wheels.slice(1) },
      ],
    ],
    [
      'sections out of order',
      [
        { x: 5, ring: wheels },
        { x: 5, ring: wheels },
      ],
    ],
    [
      'rings that run different ways',
      [
        { x: 0, ring: wheels },
        { x: 5, ring: [...wheels].reverse() },
      ],
    ],
    [
      'rings of two corners',
      [
        { x: 0, ring: wheels.slice(0, 2) },
        { x: 5, ring: wheels.slice(0, 2) },
      ],
    ],
  ])('refuses %s', (_, sections) => expect(() => loftShell(sections)).toThrow(RangeError));
});

describe('shellHolds', () => {
  it('tells inside from outside exactly, corners and edges of the mesh in line with the point included', () => {
    const prepared = prepareShell(
      loftShell([
        { x: 0, ring: wheels },
        { x: 300, ring: wheels },
        { x: 900, ring: wheels },
      ]),
    );
    const random = seededRandom(SEED);
    let seen = 0;
    let wrong = 0;
    for (let i = 0; i < 20000; i++) {
      // Half the points lie on the lines of the section, where a careless count goes wrong.
      const snap = (value: number): number => (random() < 0.5 ? Math.round(value / 50) * 50 : value);
      const point: Vec3 = [random() * 1200 - 150, snap(random() * 1400 - 700), snap(random() * 1200 - 150)];
      const onRing = wheels.some((a, k) => {
        const b = wheels[(k + 1) % wheels.length] ?? a;
        const [y, z] = [point[1], point[2]];
        const across = (b[0] - a[0]) * (z - a[1]) - (b[1] - a[1]) * (y - a[0]);
        const near = Math.hypot(b[0] - a[0], b[1] - a[1]);
        return across === 0 && Math.hypot(y - a[0], z - a[1]) <= near && Math.hypot(y - b[0], z - b[1]) <= near;
      });
      if (onRing) continue;
      seen += 1;
      const want = point[0] > 0 && point[0] < 900 && polygonHolds(wheels, [point[1], point[2]]);
      if (shellHolds(prepared, point) !== want) wrong += 1;
    }
    expect(wrong).toBe(0);
    expect(seen).toBeGreaterThan(15000);
  });

  it('refuses to prepare a shell without triangles', () =>
    expect(() => prepareShell({ positions: [], triangles: [] })).toThrow(RangeError));
});
