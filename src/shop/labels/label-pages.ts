import type { LengthUnits, Vec2 } from '../../base/index.ts';
import type { Drawing, Shape } from '../drawing/drawing.ts';
import { sizeText } from '../drawing/paper-words.ts';
import { line, rectangle, text } from '../drawing/shapes.ts';
import { fitted } from '../drawing/text-width.ts';
import { LABEL_SHEETS, type LabelSheetId, labelCorner } from './label-sheets.ts';
import type { PartLabel } from './part-labels.ts';
import { qrPatch } from './qr-patch.ts';

const PAD = 2.5;
/** Beyond this a code is easy to read, and words need the room. */
const LARGEST_CODE = 28;
/** From base line to base line, over the height of the lower line's capitals. */
const PITCH = 1.5;
/** Heights of capitals over the unit of a label; the mark stands above all. */
const MARK = 3;
const HEIGHTS = { besides: 0.95, name: 1.15, size: 1.25, more: 0.9, design: 0.8 } as const;
const LINES = HEIGHTS.besides + HEIGHTS.name + HEIGHTS.size + 3 * HEIGHTS.more + HEIGHTS.design;
/** Below the last base line, for what hangs under it. */
const HANGS = 0.3;
const LARGEST_UNIT = 2.6;

/** The part lying face a up, small: bands as strong edges, the arrow along the grain. */
const outline = ({ row, panel }: PartLabel, from: Vec2, to: Vec2): readonly Shape[] => {
  const [wide, high] = [to[0] - from[0] - 2, to[1] - from[1] - 2];
  const scale = Math.min(wide / panel.length, high / panel.width);
  // A lath would be a line: drawn no thinner than this, it still shows which edge is banded.
  const [w, h] = [Math.max(panel.length * scale, 4), Math.max(panel.width * scale, 2.5)];
  const [x0, y0] = [from[0] + 1 + (wide - w) / 2, from[1] + 1 + (high - h) / 2];
  const [x1, y1] = [x0 + w, y0 + h];
  const off = 0.8;
  const edges = [
    row.bands.l1 === null ? null : line('band', [x0, y0 - off], [x1, y0 - off]),
    row.bands.l2 === null ? null : line('band', [x0, y1 + off], [x1, y1 + off]),
    row.bands.w1 === null ? null : line('band', [x0 - off, y0], [x0 - off, y1]),
    row.bands.w2 === null ? null : line('band', [x1 + off, y0], [x1 + off, y1]),
  ].filter((edge) => edge !== null);
  const [middle, reach, barb] = [(y0 + y1) / 2, w * 0.32, Math.min(0.9, h * 0.3)];
  const [a, b] = [(x0 + x1) / 2 - reach, (x0 + x1) / 2 + reach];
  const arrow =
    row.grain === 'length'
      ? [
          line('tick', [a, middle], [b, middle]),
          line('tick', [b - barb, middle + barb], [b, middle]),
          line('tick', [b - barb, middle - barb], [b, middle]),
          line('tick', [a + barb, middle + barb], [a, middle]),
          line('tick', [a + barb, middle - barb], [a, middle]),
        ]
      : [];
  return [rectangle('rule', [x0, y0], [x1, y1]), ...edges, ...arrow];
};

const bandWords = ({ row }: PartLabel): string => {
  const banded = (['l1', 'l2', 'w1', 'w2'] as const).filter((edge) => row.bands[edge] !== null);
  return banded.length === 0 ? 'no band' : `band ${banded.map((edge) => edge.toUpperCase()).join(' ')}`;
};

const sheetWords = ({ sheet }: PartLabel): string =>
  sheet === null ? 'on no sheet' : `sheet ${sheet.number}/${sheet.of}`;

/** One label with its lower left corner at a place of the page. */
const labelShapes = (label: PartLabel, [x, y]: Vec2, [width, height]: Vec2, units: LengthUnits): readonly Shape[] => {
  const { row, panel } = label;
  const sizes = [panel.length, panel.width, panel.thickness];
  const code = Math.min(height - 2 * PAD, LARGEST_CODE);
  const [left, top] = [x + PAD, y + height - PAD];
  const right = x + width - PAD - code - 1.5;
  const room = right - left;
  // Words grow with the label, within what reads well from an arm's length.
  const unit = Math.min(LARGEST_UNIT, (height - 2 * PAD) / (MARK + PITCH * LINES + HANGS));
  const mark = unit * MARK;
  const pictured = [room * 0.36, mark + unit * HEIGHTS.besides * PITCH] as const;
  const lines: readonly (readonly [shown: string, height: number, within: number])[] = [
    [`${sheetWords(label)} · piece ${label.piece}/${label.pieces}`, HEIGHTS.besides, room * 0.62],
    [label.name, HEIGHTS.name, room],
    [`${sizes.map((mm) => sizeText(mm, units)).join(' × ')} ${units}`, HEIGHTS.size, room],
    [`${row.materialName}${row.hand === null ? '' : `, ${row.hand} hand`}`, HEIGHTS.more, room],
    [label.where, HEIGHTS.more, room],
    [`${bandWords(label)} · face a up`, HEIGHTS.more, room],
    [`${label.design} · ${label.revision}`, HEIGHTS.design, room],
  ];
  let base = top - mark;
  const words = [text([left, base], label.mark, { height: mark, strong: true, within: room * 0.6 })];
  for (const [shown, size, within] of lines) {
    const tall = unit * size;
    base -= tall * PITCH;
    // A tenth more than the estimate still fits, squeezed, before anything is left out.
    const style = { height: tall, strong: size === HEIGHTS.size, within };
    words.push(text([left, base], fitted(shown, tall, within * 1.1), style));
  }
  return [
    ...words,
    ...outline(label, [right - pictured[0], top - pictured[1]], [right, top]),
    qrPatch(label.code, [x + width - PAD - code, top - code], code),
  ];
};

/** The labels on as many sheets as they take, the first on the given label of a sheet that has been begun (from 1). */
export const labelPages = (
  labels: readonly PartLabel[],
  sheetId: LabelSheetId,
  first: number,
  units: LengthUnits,
): readonly Drawing[] => {
  const sheet = LABEL_SHEETS[sheetId];
  const each = sheet.columns * sheet.rows;
  const skipped = Math.min(Math.max(1, Math.floor(first)), each) - 1;
  const pages = labels.length === 0 ? 0 : Math.ceil((skipped + labels.length) / each);
  return Array.from({ length: pages }, (_, page) => ({
    title: `Labels, sheet ${page + 1} of ${pages}`,
    size: sheet.page,
    scale: 1,
    shapes: labels
      .slice(Math.max(0, page * each - skipped), (page + 1) * each - skipped)
      .flatMap((label, i) => labelShapes(label, labelCorner(sheet, page === 0 ? skipped + i : i), sheet.size, units)),
  }));
};
