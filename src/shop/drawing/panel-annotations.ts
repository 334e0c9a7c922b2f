import type { LengthUnits, Vec2 } from '../../base/index.ts';
import type { Panel } from '../../fitout/index.ts';
import type { Dimension, Running, Shape } from './drawing.ts';
import { around } from './panel-emblem.ts';
import { holesOf, type Note, recessesOf } from './panel-notes.ts';
import { sizeText } from './paper-words.ts';
import { offWords, placeTags } from './place-tags.ts';
import { runsUp } from './recess-sections.ts';
import { circle, line, type OnSheet, TEXT_MM, text } from './shapes.ts';
import type { Area } from './sheet.ts';

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

/** Where along a banded edge its name may stand. */
const ALONG_EDGE = [0.42, 0.58, 0.34, 0.66, 0.26, 0.74, 0.18, 0.82] as const;

/** A heavy line beside each banded edge, and the edge's name inside it, off the cuts where there is room. */
export const panelBands = ({ panel, move }: PlacedPanel, cuts: readonly Area[]): readonly Shape[] => {
  const [low, high] = [move([0, 0]), move([panel.length, panel.width])];
  const style = { height: TEXT_MM.note, align: 'middle' } as const;
  const upright = { ...style, turnRad: Math.PI / 2 };
  /** The name at the first place along the edge where it covers no cut, else where it covers least. */
  const named = (at: (share: number) => Shape): Shape =>
    offWords([at(0.5), ...ALONG_EDGE.map((share) => at(share))], cuts);
  const along = (y: number, baseline: number, name: string): readonly Shape[] => [
    line('band', [low[0], y], [high[0], y]),
    named((share) => text([low[0] + (high[0] - low[0]) * share, baseline], name, style)),
  ];
  const across = (x: number, baseline: number, name: string): readonly Shape[] => [
    line('band', [x, low[1]], [x, high[1]]),
    named((share) => text([baseline, low[1] + (high[1] - low[1]) * share], name, upright)),
  ];
  return [
    ...(panel.bands.l1 === null ? [] : along(low[1] - BAND_OFF, low[1] + BAND_TEXT_IN, 'L1')),
    ...(panel.bands.l2 === null ? [] : along(high[1] + BAND_OFF, high[1] - BAND_TEXT_IN - TEXT_MM.note, 'L2')),
    ...(panel.bands.w1 === null ? [] : across(low[0] - BAND_OFF, low[0] + BAND_TEXT_IN + TEXT_MM.note, 'W1')),
    ...(panel.bands.w2 === null ? [] : across(high[0] + BAND_OFF, high[0] - BAND_TEXT_IN, 'W2')),
  ];
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

/** The tag of every cut beside it, off the words that are written. A long recess carries its tag somewhere along it. */
export const panelTags = (notes: readonly Note[], placed: PlacedPanel, written: readonly Area[]): readonly Shape[] => {
  const tagged = notes.map(({ tag, at, half, kind }) => {
    const [hx, hy] = [half[0] * placed.scale, half[1] * placed.scale];
    if (kind !== 'recess') return { tag, anchors: [placed.move(at)], half: [hx, hy] as const };
    const up = hy > hx;
    const anchors = ALONG_RECESS.map((share) =>
      placed.move(up ? [at[0], at[1] + half[1] * (2 * share - 1)] : [at[0] + half[0] * (2 * share - 1), at[1]]),
    );
    return { tag, anchors, half: up ? ([hx, 0] as const) : ([0, hy] as const) };
  });
  return placeTags(tagged, [...outside(placed), ...noteAreas(notes, placed)], written).flatMap(
    ({ tag, at, leader }): readonly Shape[] => [
      ...(leader === null ? [] : [line('dimension', ...leader)]),
      text(at, tag, { height: TEXT_MM.note, layer: 'text' }),
    ],
  );
};
