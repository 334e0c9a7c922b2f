import decodeQR from 'qr/decode.js';
import { describe, expect, it } from 'vitest';
import { LABEL_SHEET_IDS, LABEL_SHEETS, labelCorner, labelPages, partLabels } from '../../../src/shop/labels/index.ts';
import { drawingsToPdf } from '../../../src/shop/paper/pdf.ts';
import { shopWork } from '../../../src/shop/shop-work.ts';
import { catalog, design, emptyInspection, fitOutOf, panel, rules, twoColumns } from '../fixture.ts';
import { faces, type Picture, pdfPicture, pdfText } from '../paper/poppler.ts';

const DOTS = 300;
const MM_PER_DOT = 25.4 / DOTS;

const labelsOf = (fitout = twoColumns(), title = 'Brook Hollow support car') =>
  partLabels(shopWork({ design: design(title), fitout, catalog, rules, space: null, inspection: emptyInspection }));

const pdfOf = (id: (typeof LABEL_SHEET_IDS)[number], first = 1, labels = labelsOf()): Uint8Array =>
  drawingsToPdf(labelPages(labels, id, first, 'mm'), { title: 'labels', subject: '' }, faces);

/** A cut-out of the page, as a camera over one label would see it. */
const cutOut = ({ width, grey, height }: Picture, id: (typeof LABEL_SHEET_IDS)[number], place: number) => {
  const sheet = LABEL_SHEETS[id];
  const [x, y] = labelCorner(sheet, place);
  const from = [Math.round(x / MM_PER_DOT), Math.round(height - (y + sheet.size[1]) / MM_PER_DOT)] as const;
  const size = [Math.round(sheet.size[0] / MM_PER_DOT), Math.round(sheet.size[1] / MM_PER_DOT)] as const;
  const data = new Uint8ClampedArray(size[0] * size[1] * 4).fill(255);
  for (let row = 0; row < size[1]; row++)
    for (let column = 0; column < size[0]; column++) {
      const shade = grey[(from[1] + row) * width + from[0] + column] ?? 255;
      data.fill(shade, (row * size[0] + column) * 4, (row * size[0] + column) * 4 + 3);
    }
  return { width: size[0], height: size[1], data };
};

describe('labels', () => {
  it('are as many as pieces, each once, in the order of the sheets', () => {
    const labels = labelsOf();
    // Seven panels: top and bottom are one mark of two pieces.
    expect(labels).toHaveLength(7);
    expect(labels.filter(({ mark }) => mark === 'A3').map(({ piece, pieces }) => [piece, pieces])).toEqual([
      [1, 2],
      [2, 2],
    ]);
    const numbers = labels.flatMap(({ sheet, row }) =>
      sheet === null ? [] : [`${row.material} ${sheet.number}/${sheet.of}`],
    );
    expect(numbers).toEqual([...numbers].sort());
  });

  it('name a piece that lies on no sheet, and put it last', () => {
    const labels = labelsOf(fitOutOf([panel('long', { length: 3000 }), panel('short', { length: 300 })]));
    expect(labels.map(({ sheet }) => sheet)).toEqual([{ number: 1, of: 1 }, null]);
  });

  it.each(LABEL_SHEET_IDS)('of %s carry a code that another reader decodes, and lie where the label is', (id) => {
    const labels = labelsOf();
    const page = pdfPicture(pdfOf(id), 1, DOTS);
    expect(page.width * MM_PER_DOT).toBeCloseTo(LABEL_SHEETS[id].page[0], 0);
    for (const place of [0, 1, 3, 6]) {
      const label = labels[place];
      expect(label).toBeDefined();
      expect(decodeQR(cutOut(page, id, place))).toBe(label?.code);
    }
    expect(labels[0]?.code).toMatch(/^Brook Hollow support car\ndraft [0-9a-f]{4} [0-9a-f]{4}\nA\d+$/);
  });

  it('carry mark, name, size, bands, sheet and revision as text', () => {
    const text = pdfText(pdfOf('a4-14'));
    for (const words of [
      'A1',
      '700 × 600 × 17.7 mm',
      'side, left',
      'band L1',
      'sheet 1/2',
      'piece 1/2',
      'left hand',
      'draft',
    ])
      expect(text).toContain(words);
  });

  it('begin at the first free label of a sheet', () => {
    const [one] = labelPages(labelsOf(), 'a4-14', 1, 'mm');
    const pages = labelPages(labelsOf(), 'a4-14', 10, 'mm');
    // Five are left on the sheet of fourteen, two go on the next.
    expect(pages).toHaveLength(2);
    const marksOn = (page: (typeof pages)[number] | undefined): number =>
      page?.shapes.filter(({ kind }) => kind === 'patch').length ?? 0;
    expect([marksOn(one), marksOn(pages[0]), marksOn(pages[1])]).toEqual([7, 5, 2]);
    const low = pages[0]?.shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.at[1]] : [])) ?? [];
    // The tenth label is in the fifth row: nothing stands above its upper edge, 15.15 + 4 · 38.1 below the top.
    expect(Math.max(...low)).toBeLessThan(297 - 15.15 - 4 * 38.1);
  });

  it.each(LABEL_SHEET_IDS)('of %s keep every stroke and word to themselves', (id) => {
    const long = 'A very long title that nobody would write on a part but that somebody will ';
    const [first] = labelsOf(twoColumns(), long.repeat(3).slice(0, 200)).filter(({ mark }) => mark === 'A3');
    if (!first) throw new Error('no label');
    const label = { ...first, name: long, where: long, sheet: { number: 12, of: 34 }, mark: 'AB123' };
    const sheet = LABEL_SHEETS[id];
    const place = sheet.columns + 1;
    const dots = 150;
    const page = pdfPicture(pdfOf(id, place + 1, [label]), 1, dots);
    const [left, low] = labelCorner(sheet, place);
    const outside = (x: number, y: number): boolean =>
      x < left || x > left + sheet.size[0] || y < low || y > low + sheet.size[1];
    let inside = 0;
    page.grey.forEach((shade, i) => {
      if (shade > 200) return;
      const x = (((i % page.width) + 0.5) * 25.4) / dots;
      const y = sheet.page[1] - ((Math.floor(i / page.width) + 0.5) * 25.4) / dots;
      if (outside(x, y)) expect.fail(`ink at ${x.toFixed(1)}, ${y.toFixed(1)}`);
      inside++;
    });
    expect(inside).toBeGreaterThan(1000);
  });
});
