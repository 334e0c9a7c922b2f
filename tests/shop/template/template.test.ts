import { describe, expect, it } from 'vitest';
import { boxShape } from '../../../src/bodies/index.ts';
import { houseRules, standardCatalog } from '../../../src/catalog/index.ts';
import type { Design } from '../../../src/design/index.ts';
import type { CargoSpace } from '../../../src/envelope/index.ts';
import { solveFitOut } from '../../../src/fitout/index.ts';
import { resolved } from '../../../src/shop/drawing/dimensions.ts';
import { drawingsToPdf } from '../../../src/shop/paper/pdf.ts';
import { templateDxf, templateFigure, templateSheets, tilesOf } from '../../../src/shop/template/index.ts';
import { carcass, designOf, empty } from '../../fitout/designs.ts';
import { byEzdxf, byParser } from '../dxf/readers.ts';
import { faces, type Picture, pdfPicture, pdfText } from '../paper/poppler.ts';

const catalog = standardCatalog();
const anchor = (id: string, left: 'left' | 'right', face: 'face' | 'back', rest = {}) => ({
  id,
  on: 'floor',
  across: { from: left, mm: 80 },
  deep: { from: face, mm: 90 },
  bolt: 'bolt-m8x40',
  washer: 'washer-m8-30',
  plate: 'backing-plate-80',
  ...rest,
});
const design: Design = designOf([
  carcass(empty('opening-1'), {
    facing: 'rear',
    size: { width: 500, height: 400, depth: 300 },
    // 60 forward of the sill; the viewer's left edge 250 to the vehicle's left.
    place: { x: { rule: 'at', mm: 60 }, y: { rule: 'at', mm: -250 }, z: { rule: 'at', mm: 0 } },
    anchors: [
      anchor('anchor-1', 'left', 'face'),
      anchor('anchor-2', 'right', 'face'),
      anchor('anchor-3', 'left', 'back'),
      anchor('anchor-4', 'right', 'back', { insert: 'rivet-nut-steel-m8', plate: null }),
    ],
  }),
]);
const rules = houseRules(catalog, []);
const fitout = solveFitOut(design, catalog, rules);
/** A tank under the middle: x from 200 to 320, y from −100 to 100. */
const tank = {
  id: 'zone-1',
  name: 'tank',
  rule: 'no-hole',
  shape: boxShape({ min: [200, -100, -300], max: [320, 100, -20] }),
} as CargoSpace['zones'][number];
const space = { zones: [tank] } as unknown as CargoSpace;
const first = fitout.carcasses[0];
if (!first) throw new Error('no carcass');
const figure = templateFigure(first, { fitout, catalog, rules, space });
const words = {
  designTitle: 'Brook Hollow support car',
  customer: '',
  signed: 'draft',
  foot: { projection: 'third', revisions: [] },
  name: 'Main cabinet',
  letter: 'A',
  units: 'mm',
} as const;

describe('the template of a carcass', () => {
  it('has its holes where the anchors are: 60 + 90 forward, 250 − 80 aside', () => {
    expect(figure.holes.map(({ tag, at, diameter }) => [tag, at.map(Math.round), diameter])).toEqual([
      ['h1', [-170, 150], 8.5],
      ['h2', [170, 150], 8.5],
      // 60 + 300 − 90
      ['h3', [-170, 270], 8.5],
      ['h4', [170, 270], 8.5],
    ]);
    // From 170 to the tank's edge at 100.
    expect(figure.holes[2]?.clearMm).toBeCloseTo(70, 9);
    // √(70² + 50²): the near corner of the tank is 200 forward.
    expect(figure.holes[0]?.clearMm).toBeCloseTo(Math.hypot(70, 50), 9);
    expect(figure.holes[3]).toMatchObject({ insert: 'Rivet nut M8, steel', breakingNm: 26, plateMm: null });
  });

  it('says where a hole lies inside a zone', () => {
    const over = { ...tank, shape: boxShape({ min: [100, 100, -300], max: [200, 240, -20] }) };
    const inside = templateFigure(first, { fitout, catalog, rules, space: { zones: [over] } as unknown as CargoSpace });
    // h1 is at 150 forward and 170 to the left: 50 from the near and the far edge.
    expect(inside.holes[0]?.clearMm).toBeCloseTo(-50, 9);
    const page = templateSheets(inside, words)[0];
    expect(page && resolved(page).shapes.some((shape) => shape.kind === 'text' && shape.text === 'INSIDE IT')).toBe(
      true,
    );
  });

  it('is one file that both readers find the same in, millimetres and inches', () => {
    const [mm, inch] = [templateDxf(figure, 'mm'), templateDxf(figure, 'in')];
    const [second, secondInch] = byEzdxf([mm, inch]);
    for (const [found, one] of [
      [byParser(mm), 1],
      [second, 1],
      [byParser(inch), 25.4],
      [secondInch, 25.4],
    ] as const) {
      if (!found) throw new Error('nothing read');
      expect(found.unit).toBe(one === 1 ? 4 : 1);
      expect(found.layers).toEqual(['BORE-8_5', 'DATUM', 'FOOT', 'NO-HOLE', 'PLATE']);
      const area = (layer: string): number =>
        found.outlines.filter((each) => each.layer === layer).reduce((sum, each) => sum + Math.abs(each.area), 0) *
        one *
        one;
      expect(area('FOOT')).toBeCloseTo(500 * 300, 3);
      expect(area('NO-HOLE')).toBeCloseTo(120 * 200, 3);
      // Three plates of 80; the fourth anchor has an insert.
      expect(area('PLATE')).toBeCloseTo(3 * 80 * 80, 3);
      expect(
        found.circles.map(({ at, radius }) => [...at, radius].map((mmOf) => Math.round(mmOf * one * 1e4) / 1e4)),
      ).toEqual([
        [-170, 150, 4.25],
        [170, 150, 4.25],
        [-170, 270, 4.25],
        [170, 270, 4.25],
      ]);
      expect(found.others).toBe(0);
    }
  });

  it('is nothing for a carcass without anchors', () => {
    expect(templateSheets({ ...figure, holes: [], walls: [] }, words)).toEqual([]);
  });
});

const DPI = 600;
const MM_PER_DOT = 25.4 / DPI;
/** Middles of the runs of ink along a line of dots, in mm from the left or from the foot. */
const inkAlong = (picture: Picture, axis: 'across' | 'up', atMm: number): readonly number[] => {
  const { grey, width, height } = picture;
  const dark = (i: number): boolean => {
    const at =
      axis === 'across'
        ? (height - 1 - Math.round(atMm / MM_PER_DOT)) * width + i
        : (height - 1 - i) * width + Math.round(atMm / MM_PER_DOT);
    return (grey[at] ?? 255) < 128;
  };
  const middles: number[] = [];
  let from = -1;
  const count = axis === 'across' ? width : height;
  for (let i = 0; i <= count; i++) {
    const ink = i < count && dark(i);
    if (ink && from < 0) from = i;
    if (!ink && from >= 0) {
      middles.push(((from + i) / 2) * MM_PER_DOT);
      from = -1;
    }
  }
  return middles;
};
const near = (found: readonly number[], mm: number): boolean => found.some((each) => Math.abs(each - mm) < 0.1);

describe('the template on paper', () => {
  const sheets = templateSheets(figure, words);
  const tiles = tilesOf(figure, 'mm');
  const printed = tiles.filter(({ blank }) => !blank);
  const overviews = sheets.length - printed.length;
  const pdf = drawingsToPdf(sheets, { title: 'template', subject: 'Brook Hollow' }, faces);

  it('covers the foot with tiles that overlap, and shows every hole whole on one of them', () => {
    for (const { at, diameter } of figure.holes)
      expect(
        tiles.some(
          ({ shown, blank }) =>
            !blank &&
            at.every(
              (value, i) => value - diameter / 2 > (shown.from[i] ?? 0) && value + diameter / 2 < (shown.to[i] ?? 0),
            ),
        ),
      ).toBe(true);
    // Tiles show 180 × 255, ten of it twice: 500 and the margin of 5 take three across; 300 and the sill take two.
    expect(tiles.map(({ name }) => name)).toEqual(['A1', 'B1', 'C1', 'A2', 'B2', 'C2']);
  });

  it('has check bars of 100 mm both ways on every tile, measured on the printed page', () => {
    for (const [i] of printed.entries()) {
      const picture = pdfPicture(pdf, overviews + i + 1, DPI);
      // The bar across begins at 21 and stands 17 above the foot of the page; its end strokes stand 2 above it.
      const across = inkAlong(picture, 'across', 18.5);
      expect(near(across, 21) && near(across, 121)).toBe(true);
      // The bar up stands at 14 from the left edge and begins at 33.
      const up = inkAlong(picture, 'up', 15.5);
      expect(near(up, 33) && near(up, 133)).toBe(true);
    }
  });

  it('has its holes at true distances on the printed page', () => {
    let measured = 0;
    printed.forEach(({ shown }, i) => {
      const picture = pdfPicture(pdf, overviews + i + 1, DPI);
      for (const { at, diameter } of figure.holes) {
        const [x, y] = [21 + at[0] - shown.from[0], 33 + at[1] - shown.from[1]];
        const inside = x > 35 && x < 190 && y > 45 && y < 275;
        if (!inside) continue;
        // A line 2 beside the middle meets the circle and nothing of its cross: ± √(4.25² − 2²) = ± 3.75.
        const across = inkAlong(picture, 'across', y - 2);
        const reach = Math.sqrt((diameter / 2) ** 2 - 4);
        expect(near(across, x - reach) && near(across, x + reach)).toBe(true);
        const up = inkAlong(picture, 'up', x - 2);
        expect(near(up, y - reach) && near(up, y + reach)).toBe(true);
        measured++;
      }
    });
    expect(measured).toBeGreaterThanOrEqual(3);
  });

  it('says where no hole may be, what to look for below, and the figures of every hole', () => {
    const text = pdfText(pdf).replace(/\s+/g, ' ');
    for (const each of ['NO HOLE: tank', 'Look and photograph below', 'check: 100 mm', 'h4', 'under 26', 'hatch sill'])
      expect(text).toContain(each);
  });
});
