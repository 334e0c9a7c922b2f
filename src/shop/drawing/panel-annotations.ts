import { type LengthUnits, type Polygon, polygonHolds, type Vec2 } from '../../base/index.ts';
import type { Panel } from '../../fitout/index.ts';
import type { Dimension, Running, Shape } from './drawing.ts';
import { panelOutline } from './panel-figure.ts';
import { holesOf, type Note, recessesOf } from './panel-notes.ts';
import { sizeText } from './paper-words.ts';
import { crowding, placeTags } from './place-tags.ts';
import { runsUp } from './recess-sections.ts';
import { circle, line, type OnSheet, TEXT_MM, text } from './shapes.ts';
import type { Area } from './sheet.ts';
import { textWidth } from './text-width.ts';

/** A part on paper: where its points lie, and how much it was reduced. */
export interface PlacedPanel {
  readonly panel: Panel;
  readonly move: OnSheet;
  readonly scale: number;
  readonly units: LengthUnits;
}

/** Room that dimensions need beside the part, with running dimensions and without. */
const RUNNING_LINE = 4;
const OVERALL_AFTER_RUNNING = 21;
const OVERALL_ALONE = 8;
const OUTSIDE_OVERALL = 5;

interface Edges {
  readonly x: readonly number[];
  readonly y: readonly number[];
}

const distinct = (values: readonly number[], except: readonly number[]): readonly number[] =>
  [...new Set(values)].filter((value) => !except.includes(value)).sort((a, b) => a - b);

/** Both edges of every recess, on the axis that it runs across. */
const recessEdges = (panel: Panel): Edges => {
  const recesses = recessesOf(panel);
  return {
    x: distinct(
      recesses.filter(runsUp).flatMap(({ from, to }) => [from[0], to[0]]),
      [0, panel.length],
    ),
    y: distinct(
      recesses.filter((r) => !runsUp(r)).flatMap(({ from, to }) => [from[1], to[1]]),
      [0, panel.width],
    ),
  };
};

const cornerEdges = (panel: Panel): Edges => ({
  x: distinct(
    (panel.outline ?? []).map(([x]) => x),
    [0, panel.length],
  ),
  y: distinct(
    (panel.outline ?? []).map(([, y]) => y),
    [0, panel.width],
  ),
});

export interface DimensionRoom {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
}

const overallOff = (running: readonly number[]): number => (running.length > 0 ? OVERALL_AFTER_RUNNING : OVERALL_ALONE);

/** How much paper the dimensions of a part take on each side of it. */
export const dimensionRoom = (panel: Panel): DimensionRoom => {
  const recess = recessEdges(panel);
  const corner = cornerEdges(panel);
  return {
    left: overallOff(recess.y) + OUTSIDE_OVERALL,
    bottom: overallOff(recess.x) + OUTSIDE_OVERALL,
    right: corner.y.length > 0 ? OVERALL_AFTER_RUNNING : OUTSIDE_OVERALL,
    top: corner.x.length > 0 ? OVERALL_AFTER_RUNNING : OUTSIDE_OVERALL,
  };
};

const overall = (axis: Dimension['axis'], from: Vec2, to: Vec2, lineAt: number, label: string): Dimension => ({
  kind: 'dimension',
  layer: 'dimension',
  axis,
  from,
  to,
  lineAt,
  label,
  textHeight: TEXT_MM.value,
});

/** Overall size below and at the left, recesses as running dimensions from the datum, corners above and at the right. */
export const panelDimensions = ({ panel, move, units }: PlacedPanel): readonly Shape[] => {
  const { length, width } = panel;
  const recess = recessEdges(panel);
  const corner = cornerEdges(panel);
  const [low, high] = [move([0, 0]), move([length, width])];
  const running = (axis: Running['axis'], side: -1 | 1, values: readonly number[]): readonly Shape[] => {
    if (values.length === 0) return [];
    const edge = side < 0 ? 0 : axis === 'across' ? width : length;
    const at = (value: number): Vec2 => move(axis === 'across' ? [value, edge] : [edge, value]);
    const border = (side < 0 ? low : high)[axis === 'across' ? 1 : 0];
    const stops = values.map((value) => ({ at: at(value), label: sizeText(value, units) }));
    const lineAt = border + side * RUNNING_LINE;
    return [
      { kind: 'running', layer: 'dimension', axis, origin: at(0), stops, lineAt, side, textHeight: TEXT_MM.note },
    ];
  };
  return [
    overall('across', low, [high[0], low[1]], low[1] - overallOff(recess.x), sizeText(length, units)),
    overall('up', low, [low[0], high[1]], low[0] - overallOff(recess.y), sizeText(width, units)),
    ...running('across', -1, recess.x),
    ...running('up', -1, recess.y),
    ...running('across', 1, corner.x),
    ...running('up', 1, corner.y),
  ];
};

const DATUM_RADIUS = 1.3;
const CENTRE_BEYOND = 0.7;
const BAND_OFF = 1.2;
const BAND_TEXT_IN = 1.2;

const cross = ([x, y]: Vec2, half: number): readonly Shape[] => [
  line('centre', [x - half, y], [x + half, y]),
  line('centre', [x, y - half], [x, y + half]),
];

/** Crosses on the holes, and the corner that everything is measured from. */
export const panelMarks = ({ panel, move, scale }: PlacedPanel): readonly Shape[] => [
  ...holesOf(panel).flatMap(({ at, diameter }) => cross(move(at), (diameter / 2) * scale + CENTRE_BEYOND)),
  circle('tick', move([0, 0]), DATUM_RADIUS),
];

/** A heavy line beside each banded edge, and the edge's name inside it. */
export const panelBands = ({ panel, move }: PlacedPanel): readonly Shape[] => {
  const [low, high] = [move([0, 0]), move([panel.length, panel.width])];
  const middle: Vec2 = [(low[0] + high[0]) / 2, (low[1] + high[1]) / 2];
  const style = { height: TEXT_MM.note, align: 'middle' } as const;
  const upright = { ...style, turnRad: Math.PI / 2 };
  const along = (y: number, baseline: number, name: string): readonly Shape[] => [
    line('band', [low[0], y], [high[0], y]),
    text([middle[0], baseline], name, style),
  ];
  const across = (x: number, baseline: number, name: string): readonly Shape[] => [
    line('band', [x, low[1]], [x, high[1]]),
    text([baseline, middle[1]], name, upright),
  ];
  return [
    ...(panel.bands.l1 === null ? [] : along(low[1] - BAND_OFF, low[1] + BAND_TEXT_IN, 'L1')),
    ...(panel.bands.l2 === null ? [] : along(high[1] + BAND_OFF, high[1] - BAND_TEXT_IN - TEXT_MM.note, 'L2')),
    ...(panel.bands.w1 === null ? [] : across(low[0] - BAND_OFF, low[0] + BAND_TEXT_IN + TEXT_MM.note, 'W1')),
    ...(panel.bands.w2 === null ? [] : across(high[0] + BAND_OFF, high[0] - BAND_TEXT_IN, 'W2')),
  ];
};

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

const around = (at: Vec2, size: Vec2): Area => ({
  from: [at[0] - size[0] / 2, at[1] - size[1] / 2],
  to: [at[0] + size[0] / 2, at[1] + size[1] / 2],
});

const cornersOf = ({ from, to }: Area): Polygon => [from, [to[0], from[1]], to, [from[0], to[1]]];

/** The place inside the part where the emblem covers least, nearest the middle among equals; null where none is inside. */
const emblemPlace = ({ panel, move }: PlacedPanel, size: Vec2, taken: readonly Area[]): Area | null => {
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

/** Where the cuts lie on paper. */
export const noteAreas = (notes: readonly Note[], { move, scale }: PlacedPanel): readonly Area[] =>
  notes.map(({ at, half }) => around(move(at), [half[0] * 2 * scale, half[1] * 2 * scale]));

const OUTSIDE = 30;

/** Strips round the part, so that tags keep inside it while there is room. */
const outside = ({ panel, move }: PlacedPanel): readonly Area[] => {
  const [low, high] = [move([0, 0]), move([panel.length, panel.width])];
  return [
    { from: [low[0] - OUTSIDE, low[1] - OUTSIDE], to: [low[0], high[1] + OUTSIDE] },
    { from: [high[0], low[1] - OUTSIDE], to: [high[0] + OUTSIDE, high[1] + OUTSIDE] },
    { from: [low[0], low[1] - OUTSIDE], to: [high[0], low[1]] },
    { from: [low[0], high[1]], to: [high[0], high[1] + OUTSIDE] },
  ];
};

/** Where along a long recess its tag may stand. */
const ALONG_RECESS = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8] as const;

/** The tag of every cut beside it. A long recess carries its tag somewhere along it. */
export const panelTags = (notes: readonly Note[], placed: PlacedPanel, taken: readonly Area[]): readonly Shape[] => {
  const tagged = notes.map(({ tag, at, half, kind }) => {
    const [hx, hy] = [half[0] * placed.scale, half[1] * placed.scale];
    if (kind !== 'recess') return { tag, anchors: [placed.move(at)], half: [hx, hy] as const };
    const up = hy > hx;
    const anchors = ALONG_RECESS.map((share) =>
      placed.move(up ? [at[0], at[1] + half[1] * (2 * share - 1)] : [at[0] + half[0] * (2 * share - 1), at[1]]),
    );
    return { tag, anchors, half: up ? ([hx, 0] as const) : ([0, hy] as const) };
  });
  return placeTags(tagged, [...outside(placed), ...noteAreas(notes, placed), ...taken]).map(({ tag, at }) =>
    text(at, tag, { height: TEXT_MM.note, layer: 'text' }),
  );
};
