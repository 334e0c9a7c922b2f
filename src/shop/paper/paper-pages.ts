import type { LengthUnits, Vec2 } from '../../base/index.ts';
import type { Drawing, Shape } from '../drawing/drawing.ts';
import { line, text } from '../drawing/shapes.ts';
import { fitted, textWidth } from '../drawing/text-width.ts';
import type { PaperHead, PaperPiece } from './paper.ts';
import { headRow, type LaidRow, laidColumns, laidRow, rowShapes } from './paper-table.ts';
import { wrapWords } from './wrap-words.ts';

/** Short and long side of the sheets that an office printer takes: ISO 216 A4, and Letter where inches are used. */
const SHEETS: Readonly<Record<LengthUnits, Vec2>> = { mm: [210, 297], in: [215.9, 279.4] };

const MARGIN = 12;
const HEAD_MM = 16;
const FOOT_MM = 9;
const GAP = 2.5;
const HEADING = { height: 3, before: 4, after: 2.5 } as const;
const WORDS = { height: 2.1, pitch: 3.7 } as const;
const BLANK_MM = 9;
const TITLE_HEIGHT = 4.2;
const SMALL = 1.7;

export const pageSize = (units: LengthUnits, lies: 'upright' | 'across'): Vec2 => {
  const [short, long] = SHEETS[units];
  return lies === 'across' ? [long, short] : [short, long];
};

/** What stands between the margins of an upright page. */
export const paperWidth = (units: LengthUnits): number => pageSize(units, 'upright')[0] - 2 * MARGIN;

/** A piece cut so small that it needs no further splitting: a line, a row, a picture. */
interface Slice {
  readonly height: number;
  /** Room above it, which falls away at the head of a page. */
  readonly before: number;
  /** Kept on one page with the slice after it. */
  readonly keep: boolean;
  readonly shapes: (topLeft: Vec2) => readonly Shape[];
  /** What is said again at the head of a page that begins with this slice. */
  readonly again: Slice | null;
}

const slice = (height: number, shapes: Slice['shapes'], more: Partial<Slice> = {}): Slice => ({
  height,
  shapes,
  before: 0,
  keep: false,
  again: null,
  ...more,
});

const wordSlices = (piece: Extract<PaperPiece, { kind: 'words' }>, width: number): readonly Slice[] => {
  const indent = piece.indent ?? 0;
  return wrapWords(piece.words, WORDS.height, width - indent).map((words, i) =>
    slice(
      WORDS.pitch,
      ([x, y]) => [
        text([x + indent, y - WORDS.height], words, { height: WORDS.height, strong: piece.strong ?? false }),
      ],
      { before: i === 0 ? GAP : 0 },
    ),
  );
};

const tableSlices = (piece: Extract<PaperPiece, { kind: 'table' }>, width: number): readonly Slice[] => {
  const columns = laidColumns(piece.columns, width);
  const rowSlice = (row: LaidRow, head: boolean, more: Partial<Slice>): Slice =>
    slice(row.height, (at) => rowShapes(row, columns, at, head), more);
  const head = rowSlice(headRow(columns), true, { before: GAP, keep: true });
  return [
    head,
    ...piece.rows.map((cells) => rowSlice(laidRow(cells, columns, piece.rowMm ?? 0), false, { again: head })),
  ];
};

const blankSlices = (piece: Extract<PaperPiece, { kind: 'blanks' }>, width: number): readonly Slice[] => {
  const each = width / piece.across;
  const rows = Array.from({ length: Math.ceil(piece.captions.length / piece.across) }, (_, i) =>
    piece.captions.slice(i * piece.across, (i + 1) * piece.across),
  );
  return rows.map((captions) =>
    slice(BLANK_MM, ([left, top]) =>
      captions.flatMap((caption, i) => {
        const [x, y] = [left + i * each, top - BLANK_MM + 1.5];
        const from = x + Math.min(textWidth(caption, WORDS.height) + 1.5, each / 2);
        return [
          text([x, y], caption, { height: WORDS.height, within: each / 2 }),
          line('rule', [from, y - 0.5], [x + each - 3, y - 0.5]),
        ];
      }),
    ),
  );
};

const slicesOf = (piece: PaperPiece, width: number): readonly (Slice | 'page-break')[] => {
  switch (piece.kind) {
    case 'heading':
      return [
        slice(
          HEADING.height + HEADING.after,
          ([x, y]) => [
            text([x, y - HEADING.height], piece.words, { height: HEADING.height, strong: true, within: width }),
          ],
          { before: HEADING.before, keep: true },
        ),
      ];
    case 'words':
      return wordSlices(piece, width);
    case 'table':
      return tableSlices(piece, width);
    case 'blanks':
      return blankSlices(piece, width);
    case 'picture':
      return [slice(piece.height, (at) => piece.shapes(at, width), { before: GAP })];
    case 'page-break':
      return ['page-break'];
  }
};

/** Heights that must stay together: this slice and those that it is kept with. */
const heldHeight = (slices: readonly (Slice | 'page-break')[], from: number): number => {
  let height = 0;
  for (let i = from; ; i++) {
    const each = slices[i];
    if (each === undefined || each === 'page-break') return height;
    height += each.before + each.height;
    if (!each.keep) return height;
  }
};

/** Slices into pages: each page a list of shapes. */
const paginated = (slices: readonly (Slice | 'page-break')[], topLeft: Vec2, foot: number): readonly Shape[][] => {
  let page: Shape[] = [];
  const pages: Shape[][] = [page];
  let top = topLeft[1];
  const turn = (): void => {
    page = [];
    pages.push(page);
    top = topLeft[1];
  };
  const put = (each: Slice): void => {
    if (top < topLeft[1]) top -= each.before;
    page.push(...each.shapes([topLeft[0], top]));
    top -= each.height;
  };
  slices.forEach((each, i) => {
    if (each === 'page-break') {
      if (top < topLeft[1]) turn();
      return;
    }
    if (top < topLeft[1] && top - heldHeight(slices, i) < foot) {
      turn();
      if (each.again !== null) put(each.again);
    }
    put(each);
  });
  return pages;
};

const headAndFoot = (head: PaperHead, [width, height]: Vec2, page: number, pages: number): readonly Shape[] => {
  const [left, right, top, foot] = [MARGIN, width - MARGIN, height - MARGIN, MARGIN];
  const half = (right - left) / 2 - 2;
  const about = [head.designTitle, head.customer].filter((words) => words !== '').join(', ');
  const small = { height: SMALL, within: half } as const;
  return [
    text([left, top - TITLE_HEIGHT], head.title, { height: TITLE_HEIGHT, strong: true, within: half }),
    text([right, top - 2.1], fitted(about, 2.1, half * 1.2), { height: 2.1, align: 'right', within: half }),
    text([right, top - 6], head.revision, { ...small, align: 'right' }),
    line('frame', [left, top - HEAD_MM + 7], [right, top - HEAD_MM + 7]),
    line('rule', [left, foot + FOOT_MM - 3.5], [right, foot + FOOT_MM - 3.5]),
    text([left, foot + 1.5], head.caution, { height: SMALL, within: right - left - 26 }),
    text([right, foot + 1.5], `page ${page} of ${pages}`, { height: SMALL, align: 'right' }),
  ];
};

/**
 * A paper of running text and tables on as many pages as it takes, as drawings that every writer takes. Table heads
 * stand again on each page; a heading is not left alone at the foot.
 */
export const paperPages = (head: PaperHead, pieces: readonly PaperPiece[]): readonly Drawing[] => {
  const size = pageSize(head.units, head.lies ?? 'upright');
  const width = size[0] - 2 * MARGIN;
  const slices = pieces.flatMap((piece) => slicesOf(piece, width));
  const pages = paginated(slices, [MARGIN, size[1] - MARGIN - HEAD_MM + 4], MARGIN + FOOT_MM);
  return pages.map((shapes, i) => ({
    title: head.title,
    size,
    scale: 1,
    shapes: [...headAndFoot(head, size, i + 1, pages.length), ...shapes],
  }));
};
