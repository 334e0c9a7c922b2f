import { describe, expect, it } from 'vitest';
import { signedArea } from '../../../src/base/index.ts';
import { bendOf } from '../../../src/fitout/bend.ts';
import type { Panel } from '../../../src/fitout/index.ts';
import { resolved } from '../../../src/shop/drawing/dimensions.ts';
import type { Text } from '../../../src/shop/drawing/drawing.ts';
import { bendRing, bevelRing, edgeSections, flangeOutside } from '../../../src/shop/drawing/edge-sections.ts';
import { panel } from '../fixture.ts';

const textsOf = (part: Panel, units: 'in' | 'mm' = 'mm'): readonly string[] =>
  edgeSections(part, units).flatMap((block) =>
    block.kind === 'picture'
      ? resolved({ title: '', size: [76, 76], scale: 1, shapes: block.shapes([0, 0]) })
          .shapes.filter((shape): shape is Text => shape.kind === 'text')
          .map(({ text }) => text)
      : [],
  );

const tilt = Math.atan2(6, 18);
const bevel = { edge: 'l1', tiltRad: tilt, longFace: 'a', setMm: 6 } as const;

// 3.2 mm sheet, inside radius 3, K 0.44, 90°: allowance π/2 · (3 + 0.44 · 3.2) = 6.9241, set-back 3 + 3.2 = 6.2,
// deduction 2 · 6.2 − 6.9241 = 5.4759. A flange of 25 outside then has its bend at 25 − 5.4759 / 2 = 22.2621 of the flat.
const { allowanceMm, deductionMm } = bendOf(3.2, { insideRadiusMm: 3, kFactor: 0.44 }, Math.PI / 2);
const bend = {
  from: [0, 22.2621],
  to: [300, 22.2621],
  angleRad: Math.PI / 2,
  towards: 'b',
  insideRadiusMm: 3,
  allowanceMm,
  deductionMm,
} as const;
const plate = panel('plate', { length: 300, width: 140, thickness: 3.2, bends: [bend] });

describe('section of a bevelled edge', () => {
  it('is the board less the triangle that the saw takes', () => {
    // 26 · 18 − 6 · 18 / 2 = 414 mm²; with 4 mm left square 26 · 18 − 6 · 14 / 2 = 426 mm².
    for (const longFace of ['a', 'b'] as const) {
      expect(signedArea(bevelRing({ ...bevel, longFace }, 18))).toBeCloseTo(414, 9);
      expect(signedArea(bevelRing({ ...bevel, longFace, landMm: 4 }, 18))).toBeCloseTo(426, 9);
    }
  });

  it('keeps the full size on the face that is the longer one', () => {
    expect(bevelRing(bevel, 18)).toContainEqual([0, 18]);
    expect(bevelRing(bevel, 18)).not.toContainEqual([0, 0]);
    expect(bevelRing({ ...bevel, longFace: 'b' }, 18)).toContainEqual([0, 0]);
  });

  it('says the tilt, how far the other face stands back, what is left square and the thickness', () => {
    // atan(6 / 18) = 18.4°.
    expect(textsOf(panel('p', { thickness: 18, bevels: [bevel] }))).toEqual([
      'E1  edge L1: saw tilted 18.4°, 1:1',
      '6',
      '18',
    ]);
    const tiltRad = Math.atan2(6, 14);
    // atan(6 / 14) = 23.2°.
    expect(textsOf(panel('p', { thickness: 18, bevels: [{ ...bevel, tiltRad, landMm: 4 }] }))).toEqual([
      'E1  edge L1: saw tilted 23.2°, 1:1',
      '6',
      '18',
      '4',
    ]);
  });

  it('is drawn once for edges with the same profile', () => {
    const bevels = [bevel, { ...bevel, edge: 'l2' }, { ...bevel, edge: 'w1', longFace: 'b' }] as const;
    const texts = textsOf(panel('p', { thickness: 18, bevels }));
    expect(texts.filter((each) => each.startsWith('E'))).toEqual([
      'E1  edge L1 L2: saw tilted 18.4°, 1:1',
      'E2  edge W1: saw tilted 18.4°, 1:1',
    ]);
  });
});

describe('section of a bend', () => {
  it('finds the outside of the flange from the line on the flat', () => {
    expect(flangeOutside(bend, plate)).toBeCloseTo(25, 3);
    // The other side: 140 − 22.2621 of the flat.
    const far = { ...bend, from: [0, 117.7379], to: [300, 117.7379] } as const;
    expect(flangeOutside(far, plate)).toBeCloseTo(25, 3);
  });

  it('has both straights and the bend at their true size', () => {
    // Plate shown 20 · 3.2 = 64; bend π/4 · (6.2² − 3²) = 23.1221; flange (25 − 6.2) · 3.2 = 60.16: 147.2821 mm². The
    // arcs are chords of 5°, which take less than a thousandth of the outer quarter.
    for (const towards of ['a', 'b'] as const)
      expect(Math.abs(signedArea(bendRing({ ...bend, towards }, 25, 3.2)) - 147.2821)).toBeLessThan(0.05);
  });

  it('turns towards the face named, as far as the flange is long outside', () => {
    const down = bendRing(bend, 25, 3.2).map(([, z]) => z);
    expect(Math.min(...down)).toBeCloseTo(3.2 - 25, 9);
    expect(Math.max(...down)).toBeCloseTo(3.2, 9);
    const up = bendRing({ ...bend, towards: 'a' }, 25, 3.2).map(([, z]) => z);
    expect(Math.max(...up)).toBeCloseTo(25, 9);
    expect(Math.min(...up)).toBeCloseTo(0, 9);
  });

  it('says the flange, the thickness, the inside radius and the deduction', () => {
    expect(textsOf(plate)).toEqual([
      'E1  bend at y 22.3: 90° to face b, 1:1',
      '25',
      '3.2',
      'inside radius 3 mm',
      'deduction 5.48 mm',
    ]);
  });

  it('gives the flange in words where it does not stand square', () => {
    const half = bendOf(3.2, { insideRadiusMm: 3, kFactor: 0.44 }, Math.PI / 4);
    const slant = { ...bend, angleRad: Math.PI / 4, deductionMm: half.deductionMm } as const;
    // Set-back 6.2 · tan 22.5° = 2.5681, allowance π/4 · 4.408 = 3.4620, deduction 1.6741: 22.2621 + 0.8371 = 23.1.
    expect(textsOf(panel('p', { length: 300, width: 140, thickness: 3.2, bends: [slant] }))).toContain(
      'flange 23.1 outside',
    );
  });

  it('stays out of plain parts', () => {
    expect(edgeSections(panel('p'), 'mm')).toEqual([]);
  });
});
