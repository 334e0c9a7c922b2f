import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  areaCentroid,
  type Polygon,
  polygonHolds,
  seededRandom,
  segmentsMeet,
  selfCrossing,
  signedArea,
  type Vec2,
} from '../../src/base/index.ts';

const SEEDED = { seed: 20263, numRuns: 2000 } as const;

const whole = fc.integer({ min: 0, max: 6 });
const corner: fc.Arbitrary<Vec2> = fc.tuple(whole, whole);

const SQUARE: Polygon = [
  [0, 0],
  [10, 0],
  [10, 10],
  [0, 10],
];
/** An L: the square without its upper right quarter. */
const ELL: Polygon = [
  [0, 0],
  [10, 0],
  [10, 5],
  [5, 5],
  [5, 10],
  [0, 10],
];
const cyclic = (polygon: Polygon, by: number): Polygon => [...polygon.slice(by), ...polygon.slice(0, by)];

describe('area and centre', () => {
  test('area is positive anticlockwise and negative clockwise', () => {
    expect(signedArea(SQUARE)).toBe(100); // 10 × 10
    expect(signedArea([...SQUARE].reverse())).toBe(-100);
    expect(signedArea(ELL)).toBe(75); // 100 − 5 × 5
    expect(signedArea([])).toBe(0);
  });

  test('the centre of an L', () => {
    // (100 × 5 − 25 × 7.5) / 75 = 312.5 / 75 = 4.1666…
    const [x, y] = areaCentroid(ELL);
    expect(x).toBeCloseTo(312.5 / 75, 12);
    expect(y).toBeCloseTo(312.5 / 75, 12);
  });

  test('a polygon without area has no centre', () => {
    expect(() => areaCentroid([[0, 0], [1, 1], [2, 2]])).toThrow('no area'); // biome-ignore format: three points
  });

  test('area and centre do not depend on the first corner, and move with the polygon', () => {
    fc.assert(
      fc.property(fc.array(corner, { minLength: 3, maxLength: 7 }), fc.nat(6), corner, (polygon, start, by) => {
        const area = signedArea(polygon);
        expect(signedArea(cyclic(polygon, start % polygon.length))).toBe(area);
        if (area === 0) return;
        const moved = polygon.map(([x, y]): Vec2 => [x + by[0], y + by[1]]);
        const [a, b] = [areaCentroid(polygon), areaCentroid(moved)];
        expect(b[0] - a[0]).toBeCloseTo(by[0], 6);
        expect(b[1] - a[1]).toBeCloseTo(by[1], 6);
      }),
      SEEDED,
    );
  });
});

/** On whole corners: do the closed segments share a point? By fractions of whole numbers, which are exact. */
const plainSegmentsMeet = (a: Vec2, b: Vec2, c: Vec2, d: Vec2): boolean => {
  const det = (b[0] - a[0]) * (d[1] - c[1]) - (b[1] - a[1]) * (d[0] - c[0]);
  const s = (c[0] - a[0]) * (d[1] - c[1]) - (c[1] - a[1]) * (d[0] - c[0]);
  const t = (c[0] - a[0]) * (b[1] - a[1]) - (c[1] - a[1]) * (b[0] - a[0]);
  if (det !== 0) return s / det >= 0 && s / det <= 1 && t / det >= 0 && t / det <= 1;
  // Parallel or a point: they meet where an end of one lies on the other.
  return [c, d].some((p) => plainOn(a, b, p)) || [a, b].some((p) => plainOn(c, d, p));
};

/** On whole corners: does the point lie on the closed segment? Then its two parts are as long as the whole. */
const plainOn = (a: Vec2, b: Vec2, p: Vec2): boolean => {
  const along = (p[0] - a[0]) * (b[0] - a[0]) + (p[1] - a[1]) * (b[1] - a[1]);
  const across = (p[0] - a[0]) * (b[1] - a[1]) - (p[1] - a[1]) * (b[0] - a[0]);
  const square = (b[0] - a[0]) ** 2 + (b[1] - a[1]) ** 2;
  if (square === 0) return p[0] === a[0] && p[1] === a[1];
  return across === 0 && along >= 0 && along <= square;
};

describe('segmentsMeet', () => {
  test('agrees with fractions on a small grid, where touching is common', () => {
    fc.assert(
      fc.property(
        corner,
        corner,
        corner,
        corner,
        (a, b, c, d) => segmentsMeet(a, b, c, d) === plainSegmentsMeet(a, b, c, d),
      ),
      { ...SEEDED, numRuns: 20_000 },
    );
  });

  test('touching counts, however steep', () => {
    expect(segmentsMeet([0, 0], [3, 1], [3, 1], [9, 9])).toBe(true);
    expect(segmentsMeet([0, 0], [3e8, 1e8], [3, 1], [3, 9])).toBe(true);
    expect(segmentsMeet([0, 0], [3e8, 1e8], [3, 1 + 2 ** -50], [3, 9])).toBe(false);
  });
});

/** Where a point stands, by the sum of the angles at which it sees the edges: 0 outside, ±2π inside. */
const plainHolds = (polygon: Polygon, p: Vec2): boolean => {
  let sum = 0;
  for (const [i, a] of polygon.entries()) {
    const b = polygon[(i + 1) % polygon.length] ?? a;
    if (plainOn(a, b, p)) return true;
    const [ax, ay, bx, by] = [a[0] - p[0], a[1] - p[1], b[0] - p[0], b[1] - p[1]];
    sum += Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
  }
  return Math.abs(sum) > Math.PI;
};

/** A polygon that does not cross itself: corners round a middle, in the order of their direction. */
const starShaped = fc.integer({ min: 1, max: 2 ** 30 }).map((seed): Polygon => {
  const random = seededRandom(seed);
  const count = 3 + Math.floor(random() * 8);
  const turns = Array.from({ length: count }, (_, i) => ((i + 0.1 + 0.8 * random()) / count) * 2 * Math.PI);
  return turns.map((turn) => {
    const out = 20 + 80 * random();
    return [Math.round(100 + out * Math.cos(turn)), Math.round(100 + out * Math.sin(turn))];
  });
});

describe('polygonHolds', () => {
  test('edge and corner count as inside', () => {
    expect(polygonHolds(SQUARE, [10, 5])).toBe(true);
    expect(polygonHolds(SQUARE, [0, 0])).toBe(true);
    expect(polygonHolds(SQUARE, [10 + 2 ** -40, 5])).toBe(false);
    expect(polygonHolds(ELL, [7, 7])).toBe(false);
    expect(polygonHolds(ELL, [5, 7])).toBe(true);
  });

  test('agrees with the sum of angles, in either order of corners', () => {
    fc.assert(
      fc.property(starShaped, fc.integer({ min: 0, max: 200 }), fc.integer({ min: 0, max: 200 }), (polygon, x, y) => {
        fc.pre(selfCrossing(polygon) === null);
        const expected = plainHolds(polygon, [x, y]);
        expect(polygonHolds(polygon, [x, y])).toBe(expected);
        expect(polygonHolds([...polygon].reverse(), [x, y])).toBe(expected);
      }),
      SEEDED,
    );
  });

  test('a ray through corners is counted right', () => {
    // At the height of two corners of a diamond and of a notch: left, inside, in the notch, right.
    const notched: Polygon = [
      [0, 0],
      [10, 0],
      [10, 10],
      [5, 5],
      [0, 10],
    ];
    expect([-1, 1, 5, 9, 11].map((x) => polygonHolds(notched, [x, 5]))).toEqual([false, true, true, true, false]);
    expect([-1, 0, 1, 5, 9, 10, 11].map((x) => polygonHolds(notched, [x, 10]))).toEqual([
      false,
      true,
      false,
      false,
      false,
      true,
      false,
    ]);
  });
});

describe('selfCrossing', () => {
  test('a sound polygon has none, a bow tie has one', () => {
    expect(selfCrossing(ELL)).toBeNull();
    const bow: Polygon = [
      [0, 0],
      [10, 10],
      [10, 0],
      [0, 10],
    ];
    expect(selfCrossing(bow)).toEqual([0, 2]);
  });

  test('touching counts: a corner on a far edge, a corner met twice', () => {
    const pinched: Polygon = [
      [0, 0],
      [10, 0],
      [10, 10],
      [5, 0],
      [0, 10],
    ];
    expect(selfCrossing(pinched)).toEqual([0, 2]);
    const repeated: Polygon = [
      [0, 0],
      [0, 0],
      [10, 0],
      [10, 10],
    ];
    expect(selfCrossing(repeated)).not.toBeNull();
  });

  test('corners round a middle never cross', () => {
    fc.assert(
      fc.property(starShaped, (polygon) => {
        // Rounding to whole numbers can bring two far edges of a thin star together: those are left to the twin below.
        const crossing = selfCrossing(polygon);
        if (crossing === null) return true;
        const [i, j] = crossing;
        const at = (k: number): Vec2 => polygon[k % polygon.length] ?? [0, 0];
        return plainSegmentsMeet(at(i), at(i + 1), at(j), at(j + 1));
      }),
      SEEDED,
    );
  });

  test('finds a pair exactly when one of all pairs meets', () => {
    fc.assert(
      fc.property(fc.array(corner, { minLength: 4, maxLength: 6 }), (polygon) => {
        const n = polygon.length;
        const at = (k: number): Vec2 => polygon[k % n] ?? [0, 0];
        const meets = polygon.some((_, i) =>
          polygon.some(
            (__, j) => j > i + 1 && !(i === 0 && j === n - 1) && plainSegmentsMeet(at(i), at(i + 1), at(j), at(j + 1)),
          ),
        );
        return (selfCrossing(polygon) !== null) === meets;
      }),
      SEEDED,
    );
  });
});
