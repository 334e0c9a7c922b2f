import type { Vec2 } from '../../base/index.ts';
import type { Shape } from './drawing.ts';
import { circle, line } from './shapes.ts';
import type { Cell } from './sheet.ts';

/** Where a view stands beside the one it is turned from: beside what it shows (third angle), or beyond it (first). */
export type Projection = 'third' | 'first';

/** The lowest row of a title block: how views are turned, what the last letters changed, and who signs. */
export interface TitleFoot {
  readonly projection: Projection;
  /** Newest first. */
  readonly revisions: readonly {
    readonly letter: string;
    readonly why: string;
    readonly who: string;
    readonly on: string;
  }[];
}

/** Letters that the block has room for; all are in the record of the design. */
const SHOWN = 2;

const byWhom = ({ who, on }: TitleFoot['revisions'][number]): string => (on === '' ? who : `${who}, ${on}`);

export const titleFoot = ({ projection, revisions }: TitleFoot): readonly Cell[] => {
  const shown = revisions.slice(0, SHOWN);
  const cell = (caption: string, share: number, value = ''): Cell => ({ caption, value, share });
  return [
    { caption: `${projection} angle`, value: '', share: 2, symbol: projection },
    ...(shown.length === 0
      ? [cell('changes by letter', 10, 'not released yet')]
      : shown.map((each) => cell(`letter ${each.letter}: ${byWhom(each)}`, 10 / shown.length, each.why))),
    cell('drawn', 2),
    cell('checked', 2),
    cell('approved', 2),
    cell('date', 2),
  ];
};

/** Sizes of the sign for the angle of projection, in its own height: a cone cut off, and its end as two circles. */
const CONE_LONG = 1.1;
const SMALL_END = 0.5;
const APART = 0.45;

/** The sign for the angle of projection (ISO 128) in the middle of a place, so high. */
export const projectionSign = (projection: Projection, [x, y]: Vec2, height: number): readonly Shape[] => {
  const [large, small] = [height / 2, (height * SMALL_END) / 2];
  const long = height * CONE_LONG;
  const whole = long + height * APART + height;
  // In third angle the end that is seen stands on its own side of the cone; in first angle beyond the cone.
  const ends = projection === 'third' ? x - whole / 2 + large : x + whole / 2 - large;
  const cone = projection === 'third' ? x + whole / 2 - long : x - whole / 2;
  const corners: readonly Vec2[] = [
    [cone, y - small],
    [cone + long, y - large],
    [cone + long, y + large],
    [cone, y + small],
  ];
  const [left, right] = [Math.min(ends - large, cone) - 1, Math.max(ends + large, cone + long) + 1];
  return [
    circle('tick', [ends, y], large),
    circle('tick', [ends, y], small),
    ...corners.map((from, i) => line('tick', from, corners[(i + 1) % corners.length] ?? from)),
    line('centre', [left, y], [right, y]),
    line('centre', [ends, y - large - 0.6], [ends, y + large + 0.6]),
  ];
};
