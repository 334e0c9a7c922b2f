import type { Vec2 } from '../../base/index.ts';
import { spreadApart } from './dimensions.ts';
import type { Shape } from './drawing.ts';
import { circle, line, TEXT_MM, text } from './shapes.ts';
import type { Area } from './sheet.ts';

/** A point on paper that wants a name beside the picture. */
export interface Pointed {
  readonly words: string;
  readonly at: Vec2;
}

const DOT_MM = 0.45;
const OFF_MM = 4;
const FROM_TEXT = 0.8;

const columnOf = (points: readonly Pointed[], side: -1 | 1, { from, to }: Area): readonly Shape[] => {
  const height = TEXT_MM.value;
  const sorted = points.toSorted((a, b) => a.at[1] - b.at[1] || a.at[0] - b.at[0]);
  const room = Math.min(height * 1.5, (to[1] - from[1]) / Math.max(1, sorted.length));
  const heights = spreadApart(
    sorted.map(({ at }) => at[1]),
    room,
  );
  const x = side < 0 ? from[0] - OFF_MM : to[0] + OFF_MM;
  return sorted.flatMap(({ words, at }, i): readonly Shape[] => {
    const y = heights[i] ?? at[1];
    return [
      circle('dimension', at, DOT_MM),
      line('dimension', at, [x - side * FROM_TEXT, y]),
      text([x, y - height / 2], words, { height, align: side < 0 ? 'right' : 'left', strong: true }),
    ];
  });
};

/** Names in a column at either side of a picture, in the order of the points they lead to, so that no leaders cross much. */
export const leaders = (points: readonly Pointed[], picture: Area): readonly Shape[] => {
  const middle = (picture.from[0] + picture.to[0]) / 2;
  return [
    ...columnOf(
      points.filter(({ at }) => at[0] < middle),
      -1,
      picture,
    ),
    ...columnOf(
      points.filter(({ at }) => at[0] >= middle),
      1,
      picture,
    ),
  ];
};
