import { describe, expect, it } from 'vitest';
import { barSection, barStress, boltsUnder, holedBar, leastMm4 } from '../../../src/inspection/hold/index.ts';

const NO_LOAD = { along: 0, across: 0, out: 0, aboutAlong: 0, aboutAcross: 0, aboutOut: 0 };

describe('sections of bars', () => {
  it('a flat bar of 30 × 4 is that of the books', () => {
    const flat = barSection([{ across: [-15, 15], out: [0, 4] }]);
    // 30 · 4; 4 · 30³ / 12 = 9000; 30 · 4³ / 12 = 160
    expect([flat.areaMm2, flat.acrossMm4, flat.outMm4]).toEqual([120, 9000, 160]);
    expect(leastMm4(flat)).toBeCloseTo(160, 9);
    // 12 kN / 120 = 100; 30 N m / (4 · 30² / 6 = 600) = 50; 8 N m / (30 · 4² / 6 = 80) = 100
    expect(barStress(flat, { ...NO_LOAD, along: 12_000 })).toBeCloseTo(100, 9);
    expect(barStress(flat, { ...NO_LOAD, aboutOut: 30_000 })).toBeCloseTo(50, 9);
    expect(barStress(flat, { ...NO_LOAD, aboutAcross: -8_000 })).toBeCloseTo(100, 9);
    // √3 (600 / 120 + 1600 / (30 · 4² / 3 = 160)) = √3 · 15
    expect(barStress(flat, { ...NO_LOAD, across: 600, aboutAlong: 1_600 })).toBeCloseTo(15 * Math.sqrt(3), 9);
  });

  it('an angle of 30 × 30 × 3 without rounded corners: 171 mm², 8.3 from its back, least moment about 45°', () => {
    const angle = barSection([
      { across: [-15, 15], out: [0, 3] },
      { across: [-15, -12], out: [3, 30] },
    ]);
    // 90 + 81; (90 · 1.5 + 81 · 16.5) / 171 = 8.6053
    expect(angle.areaMm2).toBe(171);
    expect(angle.middle[1]).toBeCloseTo(8.6053, 4);
    expect(angle.middle[0] + 15).toBeCloseTo(8.6053, 4);
    // 30 · 27/12 + 90 · 7.1053² + 3 · 27³/12 + 81 · 7.8947² = 67.5 + 4543.6 + 4920.75 + 5048.5 = 14,580
    expect(angle.outMm4).toBeCloseTo(14_580.4, 0);
    expect(angle.acrossMm4).toBeCloseTo(angle.outMm4, 6);
    // Mixed: 90 · 6.3947 · −7.1053 + 81 · −7.1053 · 7.8947 = −4089.3 − 4543.6 = −8632.9; least 14,580.4 − 8632.9
    expect(leastMm4(angle)).toBeCloseTo(5947.5, 0);
  });

  it('the hole of a bolt weakens it', () => {
    // (30 − 8.5) · 4
    expect(holedBar(30, 4, 4, 8.5).areaMm2).toBeCloseTo(86, 9);
  });
});

describe('bolts under a force and a moment', () => {
  const square = [
    [300, 20, 0],
    [300, -20, 0],
    [-300, 20, 0],
    [-300, -20, 0],
  ] as const;

  it('shares the force evenly and turns by M r / Σ r²', () => {
    const forces = boltsUnder(square, { force: [400, 0, 0], moment: [0, 0, 361_600] });
    // Σ r² = 4 (300² + 20²) = 361,600: ω = 1 N/mm
    expect(forces?.[0]).toEqual([100 - 20, 300, 0]);
    expect(forces?.[3]).toEqual([100 + 20, -300, 0]);
    // About y: Σ x² = 360,000; ω = 1: z = −x
    expect(boltsUnder(square, { force: [0, 0, 0], moment: [0, 360_000, 0] })?.[0]?.[2]).toBeCloseTo(-300, 6);
  });

  it('two bolts on a line hold no turn about it', () => {
    const line = [square[0], square[1]];
    expect(boltsUnder(line, { force: [0, 0, 0], moment: [0, 1000, 0] })).toBeNull();
    // About x, square to the line: 40 · f = 8000
    const forces = boltsUnder(line, { force: [0, 0, 0], moment: [8000, 0, 0] });
    expect(forces?.[0]?.[2]).toBeCloseTo(200, 6);
    expect(boltsUnder([], { force: [1, 0, 0], moment: [0, 0, 0] })).toBeNull();
  });
});
