import { describe, expect, test } from 'vitest';
import { ROUNDING_MM } from '../../src/base/index.ts';
import { type Material, standardCatalog } from '../../src/catalog/index.ts';

const catalog = standardCatalog();
const materials = [...catalog.materials.values()];
const slides = [...catalog.slides.values()];

/** Where the density of each kind of sheet can lie (kg/m³) and its stiffness (MPa). */
const BOUNDS: Record<Material['kind'], { density: readonly [number, number]; young: readonly [number, number] }> = {
  plywood: { density: [600, 760], young: [4_000, 14_000] },
  'faced-plywood': { density: [620, 800], young: [4_000, 14_000] },
  plastic: { density: [900, 1_450], young: [700, 3_500] },
  aluminium: { density: [2_640, 2_750], young: [68_000, 72_000] },
  // Two skins of 0.5 mm aluminium about a core of plastic: between the plastic and the metal.
  composite: { density: [1_100, 1_900], young: [20_000, 70_000] },
};

const within = (value: number, [low, high]: readonly [number, number]): boolean => value >= low && value <= high;

describe('sheets', () => {
  test.each(materials)('$id is a sheet that can exist', (material) => {
    const bounds = BOUNDS[material.kind];
    expect(within(material.densityKgM3, bounds.density)).toBe(true);
    expect(within(material.youngMPa.along, bounds.young)).toBe(true);
    expect(within(material.youngMPa.across, bounds.young)).toBe(true);
    expect(material.youngMPa.along).toBeGreaterThanOrEqual(material.youngMPa.across);
    expect(within(material.thicknessMm, material.thicknessRangeMm)).toBe(true);
    for (const sheet of material.sheets) {
      expect(sheet.lengthMm).toBeGreaterThanOrEqual(sheet.widthMm);
      expect(sheet.name).toBe(`${sheet.lengthMm} × ${sheet.widthMm}`);
      expect(sheet.price).toBeGreaterThan(0);
    }
  });

  test('only wood has a grain, only sheet metal bends, and metal alone does not creep', () => {
    for (const { id, kind, grain, bend, creepFactor } of materials) {
      const wood = kind === 'plywood' || kind === 'faced-plywood';
      expect([id, grain]).toEqual([id, wood ? 'length' : 'any']);
      expect([id, bend !== null]).toEqual([id, kind === 'aluminium']);
      expect([id, creepFactor === 1]).toEqual([id, kind === 'aluminium']);
    }
  });

  test('a bend is no sharper than the alloy bears, its neutral axis inside the sheet', () => {
    const bent = materials.filter((material) => material.bend !== null);
    expect(bent.length).toBe(4);
    for (const { thicknessMm, bend } of bent) {
      expect(bend?.insideRadiusMm).toBeGreaterThanOrEqual(1.5 * thicknessMm - ROUNDING_MM);
      expect(within(bend?.kFactor ?? 0, [0.33, 0.5])).toBe(true);
    }
  });

  // Bend allowance (π/2)(R + K t), deduction 2(R + t) − BA: t 1.6, R 2.4, K 0.40 gives 4.78 and 3.22; 3.18, 4.8 gives 9.54 and 6.42.
  test.each([
    ['aluminium-16', 4.78, 3.22],
    ['aluminium-32', 9.54, 6.42],
  ])('%s bends by a right angle with an allowance of %d and a deduction of %d', (id, allowance, deduction) => {
    const material = catalog.materials.get(id);
    const radius = material?.bend?.insideRadiusMm ?? Number.NaN;
    const thickness = material?.thicknessMm ?? Number.NaN;
    const along = (Math.PI / 2) * (radius + (material?.bend?.kFactor ?? Number.NaN) * thickness);
    expect(along).toBeCloseTo(allowance, 1);
    expect(2 * (radius + thickness) - along).toBeCloseTo(deduction, 1);
  });

  // Mass of one square metre = density · thickness: 695 · 0.0177 = 12.3 kg, as the data sheets say.
  test.each([
    ['birch-ply-6', 4.4],
    ['birch-ply-9', 6.4],
    ['birch-ply-12', 8.3],
    ['birch-ply-15', 10.3],
    ['birch-ply-18', 12.3],
    ['aluminium-16', 4.3],
    ['aluminium-32', 8.54],
    ['composite-3', 4.5],
    ['composite-6', 7.3],
  ])('%s weighs %d kg a square metre', (id, kgM2) => {
    const material = catalog.materials.get(id);
    expect(((material?.densityKgM3 ?? 0) * (material?.thicknessMm ?? 0)) / 1000).toBeCloseTo(kgM2, 1);
  });

  // E t³ / 12 for one metre of width (kN·m²): 55 556 · 27 / 12 / 1e6 = 0.125.
  test.each([
    ['composite-3', 0.125],
    ['composite-4', 0.24],
    ['composite-6', 0.59],
  ])('%s is as stiff as its skins make it, %d kN·m² a metre', (id, stiffness) => {
    const material = catalog.materials.get(id);
    const perMetre = ((material?.youngMPa.along ?? 0) * (material?.thicknessMm ?? 0) ** 3) / 12 / 1e6;
    expect(perMetre).toBeCloseTo(stiffness, 3);
  });

  // Shelf 800 × 400 with 25 kg spread: 5wL⁴/384EI with E 1080, t 12: 5 · 0.3065 · 800⁴ / (384 · 1080 · 57 600) = 26 mm.
  test('a 12 mm HDPE shelf of 800 × 400 under 25 kg sags 26 mm before creep', () => {
    const { youngMPa, thicknessMm } = catalog.materials.get('hdpe-12') ?? { youngMPa: { along: 0 }, thicknessMm: 0 };
    const lineLoad = (25 * 9.80665) / 800;
    const secondMoment = (400 * thicknessMm ** 3) / 12;
    expect((5 * lineLoad * 800 ** 4) / (384 * youngMPa.along * secondMoment)).toBeCloseTo(26.3, 1);
  });
});

describe('slides', () => {
  test.each(slides)('$id is a slide that can exist', (slide) => {
    expect(slide.extension).toBeLessThanOrEqual(1.1);
    expect(slide.extension).toBeGreaterThanOrEqual(0.5);
    expect(slide.mount === 'under').toBe(slide.sideSpaceMm === 0);
    expect([...slide.lengthsMm].sort((a, b) => a - b)).toEqual(slide.lengthsMm);
    expect(new Set(slide.lengthsMm).size).toBe(slide.lengthsMm.length);
    const shortest = slide.lengthsMm[0] ?? 0;
    for (const holes of [slide.carcassHoles, slide.boxHoles]) {
      expect(holes[0]?.alongMm).toBe(37);
      // Three screws or more in the shortest, every hole on the 32 mm pitch and inside the slide's height.
      expect(holes.filter((hole) => hole.alongMm < shortest).length).toBeGreaterThanOrEqual(3);
      for (const hole of holes) {
        expect((hole.alongMm - 37) % 32).toBe(0);
        expect(hole.upMm).toBeLessThan(slide.heightMm);
      }
    }
  });

  test('side space is what a part measures, never less than its name says', () => {
    const spaces = new Set(slides.filter((slide) => slide.mount === 'side').map((slide) => slide.sideSpaceMm));
    expect([...spaces].sort((a, b) => a - b)).toEqual([12.9, 19.3]);
  });

  test('of two slides of one mount the stronger is at least as high, and heavier by the metre', () => {
    const full = slides.filter((slide) => slide.extension === 1 && !slide.id.endsWith('-lock'));
    for (const weak of full)
      for (const strong of full.filter((other) => other.mount === weak.mount && other.ratingKg > weak.ratingKg)) {
        expect(strong.heightMm).toBeGreaterThanOrEqual(weak.heightMm);
        expect(strong.massKgPerMetre).toBeGreaterThan(weak.massKgPerMetre);
        expect(strong.price).toBeGreaterThan(weak.price);
      }
  });

  test('a slide whose lock is not rated is given no detent', () => {
    for (const slide of slides) if (slide.locks.in) expect([slide.id, slide.detentN]).toEqual([slide.id, 0]);
  });
});
