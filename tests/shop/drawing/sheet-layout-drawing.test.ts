import { describe, expect, it } from 'vitest';
import { sheetLayoutDrawing } from '../../../src/shop/drawing/sheet-layout-drawing.ts';
import {
  type BoardLayout,
  cutList,
  drawingToSvg,
  layoutSheets,
  markParts,
  sheetJobs,
} from '../../../src/shop/index.ts';
import { catalog, fitOutOf, panel, rules, twoColumns } from '../fixture.ts';

const WORDS = { designTitle: 'Brook Hollow support car', customer: '', signed: 'draft', units: 'mm' } as const;

const boardOf = (fitout = twoColumns()): BoardLayout => {
  const rows = cutList({ fitout, marks: markParts(fitout), catalog, rules });
  const [board] = layoutSheets(sheetJobs(rows, catalog, rules, []), { seed: 1, steps: 30 }).boards;
  if (board === undefined) throw new Error('no board');
  return board;
};

const wordsOn = (laid: BoardLayout, at: number): readonly string[] =>
  sheetLayoutDrawing(laid, at, WORDS).flatMap(({ shapes }) =>
    shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : [])),
  );

describe('drawing of one sheet', () => {
  it('shows every part once in true scale, inside the frame', () => {
    const laid = boardOf();
    for (const [at, sheet] of laid.layout.sheets.entries()) {
      const [drawing] = sheetLayoutDrawing(laid, at, WORDS);
      if (drawing === undefined) throw new Error('no drawing');
      const boxes = drawing.shapes.flatMap((shape) =>
        shape.kind === 'polyline' && shape.layer === 'seen' ? [shape.corners.map((corner) => corner.at)] : [],
      );
      const areas = boxes.map((points) => ((points[2]?.[0] ?? 0) - (points[0]?.[0] ?? 0)) / drawing.scale);
      const rounded = (numbers: readonly number[]) => numbers.map(Math.round).toSorted((a, b) => a - b);
      expect(rounded(areas)).toEqual(rounded(sheet.parts.map(({ length }) => length)));
      for (const [x, y] of boxes.flat()) {
        expect(x).toBeGreaterThan(9);
        expect(x).toBeLessThan(drawing.size[0] - 9);
        expect(y).toBeGreaterThan(9 + 31);
      }
      for (const { mark } of sheet.parts) expect(wordsOn(laid, at)).toContain(mark);
    }
  });

  it('has the sequence of cuts beside it, every setting net of the kerf', () => {
    const laid = boardOf(fitOutOf([panel('only', { grain: 'any' })]));
    const words = wordsOn(laid, 0);
    // One part of 700 × 600: whichever way it lies, fence and stop are set to these two.
    const settings = words.filter((each) => /^(fence|stop) (600|700)$/.test(each));
    expect(settings).toHaveLength(2);
    expect(words.filter((each) => each.startsWith('trim'))).toHaveLength(4);
  });

  it('hatches what is kept and says its size', () => {
    const laid = boardOf(fitOutOf([panel('only')]));
    const [drawing] = sheetLayoutDrawing(laid, 0, WORDS);
    expect(laid.keptOffcuts).toBeGreaterThan(0);
    expect(drawing?.shapes.some(({ layer }) => layer === 'hatch')).toBe(true);
    expect(wordsOn(laid, 0).filter((each) => each.startsWith('keep '))).toHaveLength(laid.keptOffcuts);
  });

  it('is in ink alone and carries nothing of a page that could run', () => {
    const laid = boardOf(fitOutOf([panel('only', { name: '<script>x</script>' })]));
    for (const drawing of sheetLayoutDrawing(laid, 0, { ...WORDS, designTitle: '"><svg onload=x>' })) {
      const svg = drawingToSvg(drawing);
      expect(svg).not.toMatch(/<script|<svg onload/);
      expect(new Set(svg.match(/#[0-9a-f]{3,6}\b/g))).toEqual(new Set(['#000']));
    }
  });

  it('gives nothing for a sheet that there is not', () => {
    expect(sheetLayoutDrawing(boardOf(), 9, WORDS)).toEqual([]);
  });
});
