import { describe, expect, test } from 'vitest';
import type { NodeId } from '../../../src/design/index.ts';
import { dashed, lengthwiseLines, ringPoint, stationRings } from '../../../src/shop/solids/vehicle-lines.ts';

const square = [
  [-100, 0],
  [100, 0],
  [100, 200],
  [-100, 200],
] as const;

describe('vehicle lines', () => {
  test('a ring of four corners gives four closed pieces', () => {
    const lines = stationRings([{ station: 's' as NodeId, x: 50, ring: square }]);
    // four pieces of two ends of three numbers
    expect(lines).toHaveLength(4 * 6);
    expect(lines.slice(-3)).toEqual([50, -100, 0]);
  });

  test('a direction leaves the ring where it should', () => {
    expect(ringPoint(square, 0)).toEqual([0, 200]);
    const [y, z] = ringPoint(square, Math.PI / 2) ?? [0, 0];
    expect(y).toBeCloseTo(100, 9);
    expect(z).toBeCloseTo(100, 9);
  });

  test('of two crossings the outer one counts', () => {
    const notched = [
      [-100, 0],
      [100, 0],
      [100, 200],
      [20, 200],
      [20, 60],
      [-20, 60],
      [-20, 200],
      [-100, 200],
    ] as const;
    // straight down from the middle [0, 100], which lies in the notch: its floor at 60, then the bottom at 0
    expect(ringPoint(notched, Math.PI)?.[1]).toBeCloseTo(0, 9);
  });

  test('dashes of 30 and gaps of 20 over 100 mm: 0–30 and 50–80', () => {
    const line = dashed(
      [
        [0, 0, 0],
        [100, 0, 0],
      ],
      30,
      20,
    );
    expect(line).toEqual([0, 0, 0, 30, 0, 0, 50, 0, 0, 80, 0, 0]);
  });

  test('a dash runs on round a corner', () => {
    const line = dashed(
      [
        [0, 0, 0],
        [20, 0, 0],
        [20, 40, 0],
      ],
      30,
      20,
    );
    // 20 along x, the last 10 of the first dash along y, a gap of 20, then a dash from 30 to the end at 40
    expect(line).toEqual([0, 0, 0, 20, 0, 0, 20, 0, 0, 20, 10, 0, 20, 30, 0, 20, 40, 0]);
  });

  test('lengthwise lines run from station to station', () => {
    const lines = lengthwiseLines([
      { station: 'a' as NodeId, x: 0, ring: square },
      { station: 'b' as NodeId, x: 500, ring: square },
    ]);
    const xs = lines.filter((_, i) => i % 3 === 0);
    expect(Math.min(...xs)).toBe(0);
    expect(Math.max(...xs)).toBeLessThanOrEqual(500);
    expect(Math.max(...xs)).toBeGreaterThan(450);
  });
});
