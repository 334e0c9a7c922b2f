import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sameLength } from '../../../src/base/index.ts';
import { gridOf, type SnapInput, snapDivider } from '../../../src/views/editor/sheets/cabinet/face/snap-divider.ts';

const input = (change: Partial<SnapInput>): SnapInput => ({
  wantedMm: 100,
  totalMm: 300,
  leastMm: 20,
  targets: [],
  reachMm: 5,
  gridMm: 1,
  ...change,
});

describe('snapDivider', () => {
  test('a target in reach holds it, and says why', () => {
    const snapped = snapDivider(input({ wantedMm: 146, targets: [{ firstMm: 150, says: 'equal' }] }));
    expect(snapped).toEqual({ firstMm: 150, secondMm: 150, says: 'equal' });
  });

  test('out of reach it rests on the grid', () => {
    const snapped = snapDivider(input({ wantedMm: 144.4, targets: [{ firstMm: 150, says: 'equal' }] }));
    expect(snapped).toEqual({ firstMm: 144, secondMm: 156, says: null });
  });

  test('the nearer of two targets, the first named of two equally near', () => {
    const targets = [
      { firstMm: 148, says: 'in line' },
      { firstMm: 152, says: 'equal' },
    ];
    expect(snapDivider(input({ wantedMm: 151, targets })).says).toBe('equal');
    expect(snapDivider(input({ wantedMm: 150, targets })).says).toBe('in line');
  });

  test('sixteenths of an inch: 100 mm is 63 sixteenths, 100.0125 mm', () => {
    // 25.4 / 16 = 1.5875; 100 / 1.5875 = 62.99 → 63 × 1.5875
    expect(snapDivider(input({ gridMm: gridOf('in') })).firstMm).toBeCloseTo(100.0125, 9);
  });

  test('both rooms keep their least and together stay what they were', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -500, max: 900, noNaN: true }),
        fc.array(fc.record({ firstMm: fc.double({ min: -100, max: 500, noNaN: true }), says: fc.constant('x') })),
        (wantedMm, targets) => {
          const { firstMm, secondMm } = snapDivider(input({ wantedMm, targets, reachMm: 40 }));
          return firstMm >= 20 && secondMm >= 20 && sameLength(firstMm + secondMm, 300);
        },
      ),
      { seed: 2, numRuns: 300 },
    );
  });
});
