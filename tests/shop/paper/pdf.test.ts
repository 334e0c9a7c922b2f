import { describe, expect, it } from 'vitest';
import type { Drawing, Shape } from '../../../src/shop/drawing/drawing.ts';
import { circle, line, patch, rectangle, roundedRectangle, text } from '../../../src/shop/drawing/shapes.ts';
import { drawingsToPdf } from '../../../src/shop/paper/pdf.ts';
import { faces, type Picture, pdfFonts, pdfPicture, pdfText } from './poppler.ts';

const page = (shapes: readonly Shape[]): Drawing => ({ title: 'A1', size: [210, 297], scale: 1, shapes });
const pdfOf = (shapes: readonly Shape[], pages = 1): Uint8Array =>
  drawingsToPdf(
    Array.from({ length: pages }, () => page(shapes)),
    { title: 'A1', subject: 'Brook Hollow' },
    faces,
  );

const DPI = 600;
const MM_PER_DOT = 25.4 / DPI;
const isInk = ({ grey, width }: Picture, x: number, y: number): boolean => (grey[y * width + x] ?? 255) < 128;
/** Middles of the runs of ink along a row of dots, in mm from the left. */
const inkAcross = (picture: Picture, yMm: number): readonly number[] => {
  const y = Math.round((297 - yMm) / MM_PER_DOT);
  const middles: number[] = [];
  let from = -1;
  for (let x = 0; x <= picture.width; x++) {
    const ink = x < picture.width && isInk(picture, x, y);
    if (ink && from < 0) from = x;
    if (!ink && from >= 0) {
      middles.push(((from + x) / 2) * MM_PER_DOT);
      from = -1;
    }
  }
  return middles;
};

describe('PDF', () => {
  it('is true to scale within a tenth of a millimetre', () => {
    const picture = pdfPicture(
      pdfOf([
        rectangle('outline', [20, 20], [190, 270]),
        circle('drill', [100, 200], 25),
        roundedRectangle('inner-cut', [40, 100], [160, 150], 25),
      ]),
      1,
      DPI,
    );
    // A4 at 600 dots an inch: 210 / 25.4 × 600 = 4960.6, 297 / 25.4 × 600 = 7015.7.
    expect([picture.width, picture.height]).toEqual([4961, 7016]);
    const near = (yMm: number, expected: readonly number[]): void => {
      const found = inkAcross(picture, yMm);
      expect(found).toHaveLength(expected.length);
      found.forEach((mm, i) => {
        expect(Math.abs(mm - (expected[i] ?? 0))).toBeLessThan(0.1);
      });
    };
    near(60, [20, 190]);
    // Through the middle of the circle of radius 25 at 100.
    near(200, [20, 75, 125, 190]);
    // 15 above the middle: √(25² − 15²) = 20 to either side.
    near(215, [20, 80, 120, 190]);
    // Through the middle of the slot, then 15 above it: its ends of radius 25 have their centres at 65 and 135.
    near(125, [20, 40, 160, 190]);
    near(140, [20, 45, 155, 190]);
  });

  it('fills patches with their holes left out', () => {
    const outer = [
      [20, 20],
      [60, 20],
      [60, 60],
      [20, 60],
    ] as const;
    const hole = [
      [30, 30],
      [50, 30],
      [50, 50],
      [30, 50],
    ] as const;
    const picture = pdfPicture(pdfOf([patch('rule', [outer, hole])]), 1, DPI);
    const at = (x: number, y: number): boolean =>
      isInk(picture, Math.round(x / MM_PER_DOT), Math.round((297 - y) / MM_PER_DOT));
    expect([at(25, 40), at(40, 40), at(55, 40), at(65, 40)]).toEqual([true, false, true, false]);
  });

  it('holds text as text, with the signs of the trade, in an embedded face', () => {
    const pdf = pdfOf([
      text([20, 250], '⌀ 12 × 23 5/8″ ⅝ ½ ± ≤ √'),
      text([100, 150], 'B4 turned', { turnRad: Math.PI / 2, align: 'middle' }),
      text([20, 50], 'strong', { strong: true, within: 4 }),
      text([20, 40], 'bell\u0007 half \ud800'),
    ]);
    const words = pdfText(pdf);
    for (const each of ['⌀ 12 × 23 5/8″ ⅝ ½ ± ≤ √', 'B4 turned', 'strong', 'bell'])
      expect(words.replace(/\s+/g, ' ')).toContain(each);
    const fonts = pdfFonts(pdf);
    expect(fonts).toHaveLength(2);
    for (const font of fonts) expect(font).toMatch(/DejaVuSansCondensed.*Identity-H\s+yes yes yes/);
  });

  it('squeezes text to the width that the layout reckoned with, and never wider', () => {
    const words = 'WWWWWWWWWW';
    const picture = pdfPicture(
      pdfOf([text([20, 100], words, { height: 5 }), text([20, 60], words, { height: 5, within: 20 })]),
      1,
      DPI,
    );
    const widest = (yMm: number): number => Math.max(...inkAcross(picture, yMm + 2.5));
    // Ten letters of 0.95 capital heights of 5 mm: 47.5 mm.
    expect(widest(100)).toBeLessThan(20 + 47.5);
    expect(widest(100)).toBeGreaterThan(20 + 40);
    expect(widest(60)).toBeLessThan(40);
  });

  it('gives the same bytes again, and one page a drawing', () => {
    const shapes = [line('outline', [0, 0], [9, 9]), text([1, 1], 'mark')];
    expect(pdfOf(shapes, 3)).toEqual(pdfOf([...shapes], 3));
    expect(new TextDecoder('latin1').decode(pdfOf(shapes, 3)).match(/\/Type \/Page\b/g)).toHaveLength(3);
  });

  it('asks the print dialog not to scale', () => {
    expect(new TextDecoder('latin1').decode(pdfOf([]))).toMatch(/\/PrintScaling \/?\(?None/);
  });

  it('refuses to write no page at all', () => {
    expect(() => drawingsToPdf([], { title: 'nothing', subject: '' }, faces)).toThrow('nothing');
  });
});
