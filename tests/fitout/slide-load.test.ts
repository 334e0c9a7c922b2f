import { describe, expect, it } from 'vitest';
import { houseRules, type Slide, standardCatalog } from '../../src/catalog/index.ts';
import { allowedSlideLoadKg } from '../../src/fitout/index.ts';
import { PIECES, slideFastener } from '../../src/fitout/standard-pieces.ts';

const catalog = standardCatalog();
const rules = houseRules(catalog, []);
const slide = (id: string): Slide => {
  const found = catalog.slides.get(id);
  if (!found) throw new Error(`no slide ${id}`);
  return found;
};

describe('what a pair of slides may carry in a vehicle', () => {
  it('is half its rating, less where the mover is wider than the slide is long, less again with over-travel', () => {
    // 68 × 0.5.
    expect(allowedSlideLoadKg(slide('slide-68'), 500, 400, rules)).toBe(34);
    // 68 × 0.5 × 500/800.
    expect(allowedSlideLoadKg(slide('slide-68'), 500, 800, rules)).toBe(21.25);
    // 68 × 0.5 × 0.75.
    expect(allowedSlideLoadKg(slide('slide-68-over'), 500, 400, rules)).toBe(25.5);
  });

  it('halves once more where a side slide is laid flat', () => {
    // 100 × 0.5 × 0.5.
    expect(allowedSlideLoadKg(slide('slide-100-flat'), 500, 400, rules)).toBe(25);
  });

  it('follows the house rules', () => {
    const stricter = houseRules(catalog, [
      { rule: 'slide-vehicle-factor', value: 0.25, who: 'shop', why: 'rough roads' },
    ]);
    // 227 × 0.25.
    expect(allowedSlideLoadKg(slide('slide-227'), 600, 500, stricter)).toBe(56.75);
  });
});

describe('fasteners that the fit-out picks by itself', () => {
  it('are records of the standard catalog', () => {
    const holes = [...catalog.slides.values()].flatMap(({ carcassHoles, boxHoles }) => [...carcassHoles, ...boxHoles]);
    const picked = [...Object.values(PIECES), ...holes.map(({ diameterMm }) => slideFastener(diameterMm).item)];
    expect(picked.filter((id) => !catalog.hardware.has(id))).toEqual([]);
  });

  it('go through the holes of their slides: screws of 4 in holes of 4.5, M8 in holes of 8.5', () => {
    expect(slideFastener(4.5)).toEqual({ upToMm: 5, item: 'wood-screw-4x16', blind: true });
    expect(slideFastener(8.5)).toMatchObject({ item: 'bolt-m8x40', blind: false });
  });
});
