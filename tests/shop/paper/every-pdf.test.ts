import { beforeAll, describe, expect, it } from 'vitest';
import { resolved } from '../../../src/shop/drawing/dimensions.ts';
import { createDrawings, type Drawing, type Drawings } from '../../../src/shop/index.ts';
import { drawingsToPdf } from '../../../src/shop/paper/pdf.ts';
import { demoDesign, wholeFlow } from '../../golden/flow.ts';
import { GOLDEN_DESIGNS } from '../../golden/produce.ts';
import { eachPicture, faces, type PageWords, type Picture, pdfText, pdfWords } from './poppler.ts';

/** Every page of every view, paper and part of the four demo designs, in millimetres and inches. */
const pages: Drawing[] = [];
let pdf: Uint8Array;

beforeAll(async () => {
  const flow = await wholeFlow();
  for (const name of GOLDEN_DESIGNS) {
    const design = demoDesign(name);
    const space = flow.space(design);
    const drawings: Drawings = createDrawings({
      design,
      fitout: flow.fitOut(design),
      catalog: flow.catalog,
      rules: flow.rules(design),
      space: space.ok ? space.value : null,
    });
    const names = [...drawings.views, ...drawings.papers, ...drawings.parts];
    pages.push(...names.flatMap((each) => drawings.draw(each) ?? []));
  }
  pdf = drawingsToPdf(pages, { title: 'all', subject: 'Brook Hollow' }, faces);
}, 120_000);

const DPI = 300;
const MM_PER_DOT = 25.4 / DPI;

/** How far the nearest ink stands off a straight stroke at a point of it, square to it, mm; the middle of its run of dots. */
const offAt = ({ grey, width, height }: Picture, [x, y]: readonly [number, number], upright: boolean): number => {
  const [column, row] = [x / MM_PER_DOT - 0.5, height - y / MM_PER_DOT - 0.5];
  const dark = (step: number): boolean => {
    const [c, r] = upright
      ? [Math.round(column) + step, Math.round(row)]
      : [Math.round(column), Math.round(row) + step];
    return (grey[r * width + c] ?? 255) < 160;
  };
  const around = Array.from({ length: 13 }, (_, i) => i - 6).filter(dark);
  const start = around.reduce((best, step) => (Math.abs(step) < Math.abs(best) ? step : best), 99);
  if (start === 99) return Number.POSITIVE_INFINITY;
  let [low, high] = [start, start];
  while (dark(low - 1) && low > -12) low--;
  while (dark(high + 1) && high < 12) high++;
  const exact = upright ? column - Math.round(column) : row - Math.round(row);
  return Math.abs((low + high) / 2 - exact) * MM_PER_DOT;
};

const MM_PER_POINT = 25.4 / 72;
/** Nothing else lies within this of the middle of a stroke that stands alone. */
const ALONE_MM = 1.2;

/** True where words stand, or nearly: points of the page up from its lower edge. */
const wordsAt = ({ height, words }: PageWords, [x, y]: readonly [number, number]): boolean => {
  const [right, down, near] = [x / MM_PER_POINT, height - y / MM_PER_POINT, ALONE_MM / MM_PER_POINT];
  return words.some(
    ({ x0, y0, x1, y1 }) => right > x0 - near && right < x1 + near && down > y0 - near && down < y1 + near,
  );
};

/** Straight strokes that stand alone at their middle: no other ends, runs or words within a millimetre of it. */
const aloneOf = (page: Drawing, words: PageWords) => {
  const lines = resolved(page).shapes.flatMap((shape) => {
    if (shape.kind === 'line') return [{ layer: shape.layer, from: shape.from, to: shape.to }];
    if (shape.kind !== 'polyline') return [];
    return shape.corners.flatMap(({ at, bulge }, i) => {
      const next = shape.corners[(i + 1) % shape.corners.length];
      return bulge === 0 && next && (shape.closed || i + 1 < shape.corners.length)
        ? [{ layer: shape.layer, from: at, to: next.at }]
        : [];
    });
  });
  const straight = lines.filter(
    ({ layer, from, to }) =>
      ['outline', 'seen', 'frame', 'inner-cut', 'rule'].includes(layer) &&
      (Math.abs(from[0] - to[0]) < 1e-9 || Math.abs(from[1] - to[1]) < 1e-9) &&
      Math.hypot(from[0] - to[0], from[1] - to[1]) > 6,
  );
  return straight.flatMap((own) => {
    const middle = [(own.from[0] + own.to[0]) / 2, (own.from[1] + own.to[1]) / 2] as const;
    const lonely = lines.every((other) => {
      if (other === own) return true;
      const [ux, uy] = [other.to[0] - other.from[0], other.to[1] - other.from[1]];
      const long = ux * ux + uy * uy;
      const share =
        long === 0
          ? 0
          : Math.min(1, Math.max(0, ((middle[0] - other.from[0]) * ux + (middle[1] - other.from[1]) * uy) / long));
      return Math.hypot(middle[0] - other.from[0] - ux * share, middle[1] - other.from[1] - uy * share) > ALONE_MM;
    });
    return lonely && !wordsAt(words, middle) ? [{ middle, upright: Math.abs(own.from[0] - own.to[0]) < 1e-9 }] : [];
  });
};

describe('every drawing as PDF', () => {
  it('is true to scale within a tenth of a millimetre, measured on the dots that poppler sets', () => {
    const words = pdfWords(pdf);
    expect(words.length).toBe(pages.length);
    const off: string[] = [];
    let measured = 0;
    eachPicture(pdf, 1, pages.length, DPI, (picture, number) => {
      const page = pages[number - 1];
      const wordsOfPage = words[number - 1];
      if (!page || !wordsOfPage) throw new Error(`page ${number} is in no drawing`);
      expect(Math.abs(picture.width * MM_PER_DOT - page.size[0])).toBeLessThan(0.1);
      expect(Math.abs(picture.height * MM_PER_DOT - page.size[1])).toBeLessThan(0.1);
      for (const { middle, upright } of aloneOf(page, wordsOfPage).slice(0, 25)) {
        const mm = offAt(picture, middle, upright);
        if (!(mm < 0.1))
          off.push(`page ${number} at ${middle.map((at) => at.toFixed(1)).join(', ')}: ${mm.toFixed(3)} mm`);
        measured++;
      }
    });
    expect(pages.length).toBeGreaterThan(300);
    expect(measured).toBeGreaterThan(pages.length * 5);
    expect(off).toEqual([]);
  }, 600_000);

  it('holds every word of the drawing as text', () => {
    const bare = (words: string): string => words.replace(/\s+/g, '');
    const found = bare(pdfText(pdf));
    const words = new Set(
      pages.flatMap((page) =>
        resolved(page).shapes.flatMap((shape) =>
          shape.kind === 'text' && shape.turnRad === 0 ? [bare(shape.text)] : [],
        ),
      ),
    );
    const missing = [...words].filter((each) => each !== '' && !found.includes(each));
    // Where two texts stand close, the reader may weave one into the other: those few are named.
    expect(missing.length / words.size).toBeLessThan(0.02);
    for (const each of ['thirdangle', 'Ø', 'changesbyletter']) expect(found).toContain(each);
  }, 120_000);
});
