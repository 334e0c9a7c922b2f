import type { LengthUnits, Vec2 } from '../../base/index.ts';
import type { Dimension, Drawing, Shape } from './drawing.ts';
import { PAPER_CAUTION, scaleText, unitsText } from './paper-words.ts';
import { TEXT_MM } from './shapes.ts';
import { type Area, areaSize, reductionFor, sheetFor, sheetShapes } from './sheet.ts';
import { type TitleFoot, titleFoot } from './title-foot.ts';

/** What the title block of a view says. */
export interface ViewWords {
  readonly designTitle: string;
  readonly customer: string;
  /** Letter, hash and who approved it. */
  readonly signed: string;
  readonly foot: TitleFoot;
  readonly view: string;
  readonly seen: string;
  readonly mark: string;
  /** What its figures are; of openings and outsides where left out. */
  readonly sizes?: string;
  /** Drawn as large as it fits, since nothing of it is measured. */
  readonly unmeasured?: boolean;
  /** Which sheet of how many; the only one where left out. */
  readonly sheet?: readonly [number, number];
}

/** Room on paper that dimensions take round a view. */
export interface Surround {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

const PAD = 3;
const VIEW_ROWS = 4;

/** Lays a picture of the given true size on a sheet; the shapes are made when scale and place are known. */
export const viewSheet = (
  words: ViewWords,
  size: Vec2,
  surround: Surround,
  units: LengthUnits,
  shapes: (scale: number, at: Vec2) => readonly Shape[],
): Drawing => {
  const sheet = sheetFor(units, VIEW_ROWS);
  const room: Area = {
    from: [sheet.room.from[0] + PAD + surround.left, sheet.room.from[1] + PAD + surround.bottom],
    to: [sheet.room.to[0] - PAD - surround.right, sheet.room.to[1] - PAD - surround.top],
  };
  const free = areaSize(room);
  const reduction = words.unmeasured ? Math.max(size[0] / free[0], size[1] / free[1]) : reductionFor(size, free, units);
  const at: Vec2 = [
    room.from[0] + (free[0] - size[0] / reduction) / 2,
    room.from[1] + (free[1] - size[1] / reduction) / 2,
  ];
  const cell = (caption: string, share: number, value: string) => ({ caption, share, value });
  const block = {
    mark: words.mark,
    sheet: `sheet ${words.sheet?.[0] ?? 1} of ${words.sheet?.[1] ?? 1}`,
    rows: [
      [
        cell('design', 5, words.designTitle),
        cell('customer', 3.5, words.customer),
        cell('revision', 4.5, words.signed),
      ],
      [cell('view', 6, words.view), cell('seen', 5, words.seen)],
      [
        cell('scale', 2, words.unmeasured ? 'not to scale' : scaleText(reduction)),
        cell('units', 2, unitsText(units)),
        cell('sizes', 4, words.sizes ?? 'clear sizes of openings, outside sizes overall'),
      ],
      titleFoot(words.foot),
    ],
    caution: PAPER_CAUTION,
  };
  return {
    title: `${words.designTitle}: ${words.view}`,
    size: sheet.size,
    scale: 1 / reduction,
    shapes: [...sheetShapes(sheet, block), ...shapes(1 / reduction, at)],
  };
};

export const dimension = (axis: Dimension['axis'], from: Vec2, to: Vec2, lineAt: number, label: string): Dimension => ({
  kind: 'dimension',
  layer: 'dimension',
  axis,
  from,
  to,
  lineAt,
  label,
  textHeight: TEXT_MM.note,
});
