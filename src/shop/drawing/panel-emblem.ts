import { type Polygon, polygonHolds, type Vec2 } from '../../base/index.ts';
import type { Shape } from './drawing.ts';
import type { PlacedPanel } from './panel-annotations.ts';
import { panelOutline } from './panel-figure.ts';
import { crowding } from './place-tags.ts';
import { line, TEXT_MM, text } from './shapes.ts';
import type { Area } from './sheet.ts';
import { textWidth } from './text-width.ts';

interface Emblem {
  readonly textHeight: number;
  readonly arrow: number;
}
const LARGE: Emblem = { textHeight: 6, arrow: 24 };
const SMALL: Emblem = { textHeight: 3, arrow: 11 };
const ARROW_BARB = 1.6;
/** Shares of the length and width where the emblem may stand: every twentieth, from the middle outwards. */
const EMBLEM_GRID: readonly number[] = [0, 1, -1, 2, -2, 3, -3, 4, -4, 5, -5, 6, -6, 7, -7, 8, -8].map(
  (step) => 0.5 + step / 20,
);

const emblemSize = (emblem: Emblem, mark: string, grain: boolean): Vec2 => [
  Math.max(textWidth(mark, emblem.textHeight), grain ? emblem.arrow : 0) + 2,
  emblem.textHeight + (grain ? 2 * ARROW_BARB + TEXT_MM.note : 0) + 2,
];

export const around = (at: Vec2, size: Vec2): Area => ({
  from: [at[0] - size[0] / 2, at[1] - size[1] / 2],
  to: [at[0] + size[0] / 2, at[1] + size[1] / 2],
});

const cornersOf = ({ from, to }: Area): Polygon => [from, [to[0], from[1]], to, [from[0], to[1]]];

/** The place inside the part where the emblem covers least, nearest the middle among equals; null where none is inside. */
export const emblemPlace = (
  { panel, move }: Pick<PlacedPanel, 'panel' | 'move'>,
  size: Vec2,
  taken: readonly Area[],
): Area | null => {
  const outline = panelOutline(panel).map(move);
  const places = EMBLEM_GRID.flatMap((y) =>
    EMBLEM_GRID.map((x) => around(move([x * panel.length, y * panel.width]), size)),
  );
  const inside = places.filter((area) => cornersOf(area).every((corner) => polygonHolds(outline, corner)));
  return inside.reduce<Area | null>(
    (best, area) => (best === null || crowding(area, taken) < crowding(best, taken) ? area : best),
    null,
  );
};

/** The large emblem where it covers no cut, else the small one; over the middle where even that is larger than the part. */
const chosenEmblem = (placed: PlacedPanel, mark: string, taken: readonly Area[]): { emblem: Emblem; area: Area } => {
  const { panel, move } = placed;
  const sizeOf = (emblem: Emblem): Vec2 => emblemSize(emblem, mark, panel.grain === 'length');
  const large = emblemPlace(placed, sizeOf(LARGE), taken);
  if (large !== null && crowding(large, taken) === 0) return { emblem: LARGE, area: large };
  const small = emblemPlace(placed, sizeOf(SMALL), taken);
  return { emblem: SMALL, area: small ?? around(move([panel.length / 2, panel.width / 2]), sizeOf(SMALL)) };
};

const grainArrow = ([x, y]: Vec2, reach: number): readonly Shape[] => {
  const barbs = (tip: number, side: number): readonly Shape[] =>
    [ARROW_BARB / 2, -ARROW_BARB / 2].map((rise) => line('tick', [tip, y], [tip - side * ARROW_BARB, y + rise]));
  return [line('tick', [x - reach, y], [x + reach, y]), ...barbs(x + reach, 1), ...barbs(x - reach, -1)];
};

/** The mark large in the part, over an arrow along the grain where the grain matters; and where it stands. */
export const panelEmblem = (
  placed: PlacedPanel,
  mark: string,
  taken: readonly Area[],
): { readonly shapes: readonly Shape[]; readonly area: Area } => {
  const grain = placed.panel.grain === 'length';
  const { emblem, area } = chosenEmblem(placed, mark, taken);
  const middle = (area.from[0] + area.to[0]) / 2;
  const base = area.to[1] - 1 - emblem.textHeight;
  const arrowAt: Vec2 = [middle, area.from[1] + 1 + TEXT_MM.note + ARROW_BARB / 2];
  return {
    area,
    shapes: [
      text([middle, base], mark, { height: emblem.textHeight, align: 'middle', strong: true }),
      ...(grain ? grainArrow(arrowAt, emblem.arrow / 2) : []),
      ...(grain ? [text([middle, area.from[1] + 0.6], 'grain', { height: TEXT_MM.caption, align: 'middle' })] : []),
    ],
  };
};
