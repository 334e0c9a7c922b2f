import { describe, expect, it } from 'vitest';
import { resolved } from '../../../src/shop/drawing/dimensions.ts';
import type { Drawing, Text } from '../../../src/shop/drawing/drawing.ts';
import { line } from '../../../src/shop/drawing/shapes.ts';
import type { PaperHead, PaperPiece } from '../../../src/shop/paper/paper.ts';
import { paperPages } from '../../../src/shop/paper/paper-pages.ts';

const HEAD: PaperHead = {
  title: 'Check sheet',
  designTitle: 'Brook Hollow support car',
  customer: 'Brook Hollow',
  revision: 'draft',
  units: 'mm',
  caution: 'No approval.',
};
const textsOf = (page: Drawing): readonly Text[] =>
  resolved(page).shapes.flatMap((shape) => (shape.kind === 'text' ? [shape] : []));
const wordsOf = (page: Drawing): readonly string[] => textsOf(page).map(({ text }) => text);
const rows = (count: number): PaperPiece => ({
  kind: 'table',
  columns: [
    { title: 'mark', share: 1 },
    { title: 'what to look at', share: 3 },
  ],
  rows: Array.from({ length: count }, (_, i) => [`r${i + 1}`, `row ${i + 1}`]),
});

describe('a paper of words and tables', () => {
  it('is one upright page with head and foot, each on its own', () => {
    const [page, ...more] = paperPages(HEAD, [{ kind: 'words', words: 'All is well.' }]);
    expect(more).toEqual([]);
    expect(page?.size).toEqual([210, 297]);
    for (const words of [
      'Check sheet',
      'Brook Hollow support car, Brook Hollow',
      'draft',
      'No approval.',
      'page 1 of 1',
      'All is well.',
    ])
      expect(page && wordsOf(page)).toContain(words);
  });

  it('lies across, and is Letter where inches are used', () => {
    expect(paperPages({ ...HEAD, lies: 'across' }, [])[0]?.size).toEqual([297, 210]);
    expect(paperPages({ ...HEAD, units: 'in' }, [])[0]?.size).toEqual([215.9, 279.4]);
  });

  it('keeps every row of a long table, with the head of the table again on each page', () => {
    const pages = paperPages(HEAD, [rows(150)]);
    expect(pages.length).toBeGreaterThan(1);
    const marks = pages.flatMap((page) => wordsOf(page).filter((words) => /^r\d+$/.test(words)));
    expect(marks).toEqual(Array.from({ length: 150 }, (_, i) => `r${i + 1}`));
    pages.forEach((page, i) => {
      expect(wordsOf(page)).toContain('what to look at');
      expect(wordsOf(page)).toContain(`page ${i + 1} of ${pages.length}`);
    });
  });

  it('keeps all words between the margins', () => {
    const long: PaperPiece = { kind: 'words', words: 'Look below before any hole is drilled. '.repeat(120) };
    for (const page of paperPages(HEAD, [
      long,
      rows(80),
      { kind: 'blanks', captions: ['by', 'on', 'scale'], across: 3 },
    ]))
      for (const { at } of textsOf(page)) {
        expect(at[0]).toBeGreaterThanOrEqual(12);
        expect(at[0]).toBeLessThanOrEqual(198);
        expect(at[1]).toBeGreaterThanOrEqual(12);
        expect(at[1]).toBeLessThanOrEqual(285);
      }
  });

  it('leaves no heading alone at the foot of a page', () => {
    for (let before = 20; before < 70; before++) {
      const pages = paperPages(HEAD, [
        rows(before),
        { kind: 'heading', words: 'Loads' },
        { kind: 'words', words: 'Under the rating.' },
      ]);
      const at = pages.findIndex((page) => wordsOf(page).includes('Loads'));
      expect(pages.findIndex((page) => wordsOf(page).includes('Under the rating.'))).toBe(at);
    }
  });

  it('begins a new page where told, and not twice at the head of one', () => {
    const words: PaperPiece = { kind: 'words', words: 'x' };
    expect(paperPages(HEAD, [words, { kind: 'page-break' }, { kind: 'page-break' }, words])).toHaveLength(2);
  });

  it('moves a picture that does not fit whole to the next page', () => {
    const picture: PaperPiece = {
      kind: 'picture',
      height: 180,
      shapes: ([x, y], width) => [line('seen', [x, y], [x + width, y - 180])],
    };
    const pages = paperPages(HEAD, [picture, picture]);
    expect(pages).toHaveLength(2);
    for (const page of pages) {
      const [drawn] = resolved(page).shapes.flatMap((shape) =>
        shape.kind === 'line' && shape.layer === 'seen' ? [shape] : [],
      );
      expect(drawn?.to[1]).toBeGreaterThanOrEqual(12);
    }
  });
});
