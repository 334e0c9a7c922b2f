import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { signedArea } from '../../../src/base/index.ts';
import type { Panel } from '../../../src/fitout/index.ts';
import { resolved } from '../../../src/shop/drawing/dimensions.ts';
import type { Drawing, Text } from '../../../src/shop/drawing/drawing.ts';
import { type PartWords, panelDrawing } from '../../../src/shop/drawing/panel-drawing.ts';
import { panelFigure } from '../../../src/shop/drawing/panel-figure.ts';
import { markParts } from '../../../src/shop/marks.ts';
import { fitOutOf, panel, twoColumns } from '../fixture.ts';
import { anyFitOut } from '../random-fit-out.ts';
import { areaOn } from './areas.ts';

const words: PartWords = {
  designTitle: 'Brook Hollow support car',
  signed: 'draft',
  foot: { projection: 'third', revisions: [] },
  name: 'side',
  where: 'Main cabinet',
  materialName: 'Birch plywood 18 mm',
  cutLength: 700,
  cutWidth: 599,
  note: '',
  cutToleranceMm: 0.5,
  boreToleranceMm: 0.2,
};

const drawn = (fitout: Parameters<typeof markParts>[0], units: 'in' | 'mm' = 'mm'): readonly (readonly Drawing[])[] =>
  markParts(fitout).parts.map((part) => panelDrawing(part, words, units));
const textsOf = (drawing: Drawing): readonly string[] =>
  resolved(drawing)
    .shapes.filter((shape): shape is Text => shape.kind === 'text')
    .map(({ text }) => text);
const only = (part: Panel, units: 'in' | 'mm' = 'mm'): Drawing => {
  const drawing = drawn(fitOutOf([part]), units)[0]?.[0];
  if (!drawing) throw new Error('nothing was drawn');
  return drawing;
};
const partArea = (part: Panel): number =>
  part.outline === null ? part.length * part.width : Math.abs(signedArea(part.outline));

describe('the figure of a part', () => {
  it('has an arc at each rounded corner of a cut-out', () => {
    const outline = { shape: 'rectangle', from: [100, 100], to: [282, 153], cornerRadius: 3 } as const;
    const figure = panelFigure(panel('p', { cuts: [{ kind: 'cutout', outline, why: 'radio' }] }));
    // 182 · 53 − (4 − π) · 3² = 9638.2743 mm².
    expect(areaOn(figure, 'inner-cut')).toBeCloseTo(9638.2743, 3);
  });

  it('keeps work on face b apart, except for holes that go through', () => {
    const hole = { kind: 'hole', face: 'b', at: [50, 50], diameter: 5, why: '' } as const;
    const figure = panelFigure(
      panel('p', {
        cuts: [
          { ...hole, depth: 10 },
          { ...hole, depth: null },
          { kind: 'groove', face: 'b', from: [0, 9], to: [700, 15], depth: 6, takes: null },
        ],
      }),
    );
    expect(figure.map(({ layer }) => layer)).toEqual(['outline', 'drill-b', 'drill', 'groove-b']);
  });
});

describe('the drawing of a part', () => {
  it('fits the largest standard scale: 700 × 600 mm with a table beside it goes 1:5 on A4', () => {
    expect(only(twoColumns().panels[0] ?? panel('p')).scale).toBe(1 / 5);
  });

  it('gives overall and running dimensions, and every cut in a table', () => {
    const side = only(twoColumns().panels[0] ?? panel('p'));
    const texts = textsOf(side);
    // Overall 700 × 600; dado edges 17.85 and 682.15; groove edges 581.6 and 588.
    for (const figure of ['700', '600', '17.9', '682.1', '581.6', '588']) expect(texts).toContain(figure);
    for (const tag of ['r1', 'r2', 'r3', 'h1', 'h6', 'S1', 'S2'])
      expect(texts.some((text) => text.startsWith(tag))).toBe(true);
    expect(texts).toContain('sheet 1 of 1');
    expect(texts.some((text) => text.includes('No approval'))).toBe(true);
  });

  it('says inches to 1/32 and the millimetres beside them', () => {
    const texts = textsOf(only(panel('p', { length: 365.125, width: 254 }), 'in'));
    // 365.125 mm = 14 3/8 in, 254 mm = 10 in.
    expect(texts).toContain('14 3/8 × 10 in (365.1 × 254 mm)');
    expect(texts).toContain('14 3/8');
  });

  it('goes on to more sheets where the table is long, with every hole once', () => {
    const cuts = Array.from({ length: 230 }, (_, i) => {
      const at = [10 + 3 * (i % 115), i < 115 ? 50 : 90] as const;
      return { kind: 'hole', face: 'a', at, diameter: 2, depth: 5, why: '' } as const;
    });
    const pages = drawn(fitOutOf([panel('p', { cuts })]))[0] ?? [];
    expect(pages.length).toBeGreaterThan(1);
    const rows = pages.flatMap(textsOf);
    expect(rows).toContain(`sheet 2 of ${pages.length}`);
    // Each tag stands once beside its hole and once in a table.
    for (let i = 1; i <= 230; i++) expect(rows.filter((text) => text === `h${i}`)).toHaveLength(2);
  });

  it('keeps everything on the paper', () => {
    for (const units of ['mm', 'in'] as const)
      for (const page of drawn(twoColumns(), units).flat())
        for (const shape of resolved(page).shapes) {
          const points =
            shape.kind === 'polyline'
              ? shape.corners.map(({ at }) => at)
              : shape.kind === 'patch'
                ? shape.rings.flat()
                : 'from' in shape
                  ? [shape.from, shape.to]
                  : [shape.at];
          for (const [x, y] of points) {
            expect(x).toBeGreaterThanOrEqual(0);
            expect(y).toBeGreaterThanOrEqual(0);
            expect(x).toBeLessThanOrEqual(page.size[0]);
            expect(y).toBeLessThanOrEqual(page.size[1]);
          }
        }
  });
});

describe('laws of the drawings', () => {
  it('every part is drawn, and its outline holds the area of the part at the scale of the sheet', () => {
    fc.assert(
      fc.property(anyFitOut, fc.constantFrom('mm' as const, 'in' as const), (fitout, units) => {
        const parts = markParts(fitout).parts;
        parts.forEach((part) => {
          const pages = panelDrawing(part, words, units);
          const [first] = pages;
          if (!first) throw new Error(`no drawing of ${part.mark}`);
          const strokes = resolved(first).shapes.filter(({ kind }) => kind === 'polyline' || kind === 'circle');
          const area = partArea(part.panel);
          expect(areaOn(strokes, 'outline') / first.scale ** 2 / area).toBeCloseTo(1, 9);
          const holes = part.panel.cuts.filter((cut) => cut.kind === 'hole');
          const bored = holes.reduce((sum, hole) => sum + (Math.PI * hole.diameter ** 2) / 4, 0);
          const drilled = areaOn(strokes, 'drill') + areaOn(strokes, 'drill-b');
          expect(drilled / first.scale ** 2).toBeCloseTo(bored, 6);
        });
      }),
      { seed: 31_415_926, numRuns: 25 },
    );
  });
});
