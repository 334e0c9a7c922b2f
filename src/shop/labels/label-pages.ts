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
const PITCH = 1.45;

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
  const code = Math.min(height - 2 * PAD, LARGEST_CODE);
  const [left, top] = [x + PAD, y + height - PAD];
  const right = x + width - PAD - code - 1.5;
  const room = right - left;
  // Words grow with the label, within what reads well from an arm's length.
  const unit = Math.min(2.6, (height - 2 * PAD) / 13.5);
  const mark = unit * 3;
  const pictured = [room * 0.36, mark + unit * PITCH * 1.6] as const;
  const lines: readonly (readonly [string, number, boolean])[] = [
    [row.name, 1.15, false],
    [[panel.length, panel.width, panel.thickness].map((mm) => sizeText(mm, units)).join(' × '), 1.25, true],
    [`${row.materialName}${row.hand === null ? '' : `, ${row.hand} hand`}`, 0.9, false],
    [label.where, 0.9, false],
    [`${bandWords(label)} · face a up`, 0.9, false],
    [`${label.design} · ${label.revision}`, 0.8, false],
  ];
  let base = top - mark - unit * 0.5;
  const words = [text([left, base + unit * 0.5], label.mark, { height: mark, strong: true, within: room * 0.6 })];
  const besides = `${sheetWords(label)} · piece ${label.piece}/${label.pieces}`;
  base -= unit * PITCH * 0.8;
  words.push(
    text([left, base], fitted(besides, unit * 0.95, room * 0.62), { height: unit * 0.95, within: room * 0.62 }),
  );
  for (const [shown, size, strong] of lines) {
    base -= unit * size * 0.55 + unit * PITCH;
    words.push(
      text([left, base], fitted(shown, unit * size, room * 1.1), { height: unit * size, strong, within: room }),
    );
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
