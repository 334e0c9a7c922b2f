import { describe, expect, it, test } from 'vitest';
import { plateSag, type SpringLeaf, shelfSag, shelfStress, springSwing } from '../../../src/inspection/carry/index.ts';
import reference from '../../reference/shelf-sag.json' with { type: 'json' };

const GRAVITY = 9.80665;

describe('shelves', () => {
  it('holds to the published tolerance', () => expect(reference.tolerance).toBe(0.001));

  test.each(reference.cases)('$spanMm × $depthMm × $thicknessMm under $loadKg kg', (one) => {
    const within = (value: number, wanted: number): void =>
      expect(Math.abs(value - wanted)).toBeLessThanOrEqual(reference.tolerance * wanted);
    within(shelfSag(one, one.loadKg * GRAVITY), one.expect.sagMm);
    within(shelfStress(one, one.loadKg * GRAVITY), one.expect.stressMPa);
  });

  it('a plate held on four sides sags far less than a shelf on two', () => {
    // 500 × 500 × 6.4, E 4,800, 10 kg: q = 98.07 / 250,000; 0.0443 q 500⁴ / (4,800 · 6.4³) = 0.863
    const board = { spanMm: 500, depthMm: 500, thicknessMm: 6.4, youngMPa: 4800 };
    expect(plateSag(board, 10 * GRAVITY)).toBeCloseTo(0.863, 3);
    // A long one comes to a strip of its short side: α = 0.142.
    const long = { ...board, spanMm: 5000 };
    expect(plateSag(long, 100 * GRAVITY)).toBeCloseTo(
      (0.142 * ((100 * GRAVITY) / 2_500_000) * 500 ** 4) / (4800 * 6.4 ** 3),
      6,
    );
    expect(plateSag({ ...board, spanMm: 550 }, 11 * GRAVITY)).toBeGreaterThan(plateSag(board, 10 * GRAVITY));
  });
});

describe('gas springs', () => {
  /** A lid of 8 kg hung at the top, 600 long, its middle 300 down; two springs. Opens by 90° to the rear (−x). */
  const lid = (ratedN: number): SpringLeaf => ({
    point: [0, 0, 600],
    axis: [0, 1, 0],
    travelRad: Math.PI / 2,
    weightN: 8 * GRAVITY,
    centre: [0, 0, 300],
    handMm: 600,
    springs: [1, 2].map(() => ({ wall: [180, 0, 420], leaf: [10, 0, 480], ratedN, fullMm: 300 })),
  });
  const figures = (day: number) => ({ day, rise: 1.25, strokeShare: 0.4 });

  it('stays open in the cold and closes in the heat, or not', () => {
    const strong = springSwing(lid(260), figures(0.86), figures(1.1));
    expect(strong.holdsOpen).toBeGreaterThan(0);
    const weak = springSwing(lid(60), figures(0.86), figures(1.1));
    expect(weak.holdsOpen).toBeLessThan(0);
    expect(springSwing(lid(800), figures(0.86), figures(1.1)).handN).toBeGreaterThan(strong.handN);
  });

  it('open, the moment is what levers and force say', () => {
    // Open by 90° towards −x the leaf point (10, −120) from the hinge stands at (−120, −10): (−120, 590).
    // From the wall (180, 420): 344.8 long, past 300, so 200 N · 0.86 each along (−0.870, 0.493).
    // Lever: |(−120)(0.493) − (−10)(−0.870)| = 67.9; 2 · 172 · 67.9 = 23,350, less 78.45 · 300 = 23,536.
    const swing = springSwing(lid(200), figures(0.86), figures(1.1));
    const [dx, dz] = [-300, 170];
    const long = Math.hypot(dx, dz);
    const lever = Math.abs((-120 * dz - -10 * dx) / long);
    expect(swing.holdsOpen).toBeCloseTo(2 * 200 * 0.86 * lever - 8 * GRAVITY * 300, 6);
  });
});
