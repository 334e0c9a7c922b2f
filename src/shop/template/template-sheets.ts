import { formatMillimetres, type LengthUnits, type Vec2 } from '../../base/index.ts';
import type { Block } from '../drawing/blocks.ts';
import { clipped, movedIn } from '../drawing/clip-strokes.ts';
import type { Drawing, Shape } from '../drawing/drawing.ts';
import { scaleText, sizeText, unitsText } from '../drawing/paper-words.ts';
import { offWords } from '../drawing/place-tags.ts';
import { line, onSheet, rectangle, TEXT_MM, text } from '../drawing/shapes.ts';
import { type Area, areaSize, type Cell, reductionFor } from '../drawing/sheet.ts';
import type { TableColumn } from '../drawing/table.ts';
import { centred, tableSheets } from '../drawing/table-sheet.ts';
import { type TitleFoot, titleFoot } from '../drawing/title-foot.ts';
import { writtenAreas } from '../drawing/written-areas.ts';
import type { TemplateFigure } from './template-figure.ts';
import { templateExtent, templateStrokes } from './template-shapes.ts';

export interface TemplateWords {
  readonly designTitle: string;
  readonly customer: string;
  readonly signed: string;
  readonly foot: TitleFoot;
  /** The carcass, and its letter. */
  readonly name: string;
  readonly letter: string;
  readonly units: LengthUnits;
}

const CAUTION =
  'Look and photograph below before any hole is drilled: tank, lines, harness, high voltage. Depth stop. Print at actual size and measure both check bars. The vehicle in hand overrules this paper; local codes and licensed practice decide.';

/** Upright pages: what a printer cannot reach, a strip at the foot for the bars and words, a strip at the left for the upright bar. */
const PAGE: Readonly<Record<LengthUnits, Vec2>> = { mm: [210, 297], in: [215.9, 279.4] };
const MARGIN = 9;
const FOOT_STRIP = 24;
const LEFT_STRIP = 12;
/** Neighbouring tiles both show this much. */
const OVERLAP = 10;
const BAR_MM = 100;
const AROUND_FIGURE = 5;
/** The sill is on the tiles where it is no farther from the foot than this. */
const SILL_NEAR = 150;

export interface Tile {
  /** `B3`: column B from the left, row 3 from the foot. */
  readonly name: string;
  /** What is on the tile, in the template; its neighbours begin half the overlap inside its edges. */
  readonly shown: Area;
  readonly blank: boolean;
}

const windowOf = (units: LengthUnits): Area => {
  const [width, height] = PAGE[units];
  return { from: [MARGIN + LEFT_STRIP, MARGIN + FOOT_STRIP], to: [width - MARGIN, height - MARGIN] };
};

const columnName = (i: number): string =>
  String.fromCharCode('A'.charCodeAt(0) + (i % 26)).repeat(1 + Math.floor(i / 26));

/** The tiles of a template, column by column from the left, row by row from the foot. */
export const tilesOf = (figure: TemplateFigure, units: LengthUnits): readonly Tile[] => {
  const [width, height] = areaSize(windowOf(units));
  const { from, to } = templateExtent(figure);
  const [low, high]: readonly [Vec2, Vec2] = [
    [from[0] - AROUND_FIGURE, (from[1] > 0 && from[1] < SILL_NEAR ? 0 : from[1]) - AROUND_FIGURE],
    [to[0] + AROUND_FIGURE, to[1] + AROUND_FIGURE],
  ];
  const pitch: Vec2 = [width - OVERLAP, height - OVERLAP];
  const count = (axis: 0 | 1): number => Math.max(1, Math.ceil((high[axis] - low[axis] - OVERLAP) / pitch[axis]));
  const [across, up] = [count(0), count(1)];
  // All tiles together lie in the middle of what they show.
  const start: Vec2 = [0, 1].map(
    (axis) => ((low[axis] ?? 0) + (high[axis] ?? 0) - (axis === 0 ? across : up) * (pitch[axis] ?? 0) - OVERLAP) / 2,
  ) as unknown as Vec2;
  const strokes = templateStrokes(figure, onSheet(1, [0, 0]), false).filter(({ layer }) => layer !== 'centre');
  return Array.from({ length: across * up }, (_, i) => {
    const [column, row] = [i % across, Math.floor(i / across)];
    const shownFrom: Vec2 = [start[0] + column * pitch[0], start[1] + row * pitch[1]];
    const shown: Area = { from: shownFrom, to: [shownFrom[0] + width, shownFrom[1] + height] };
    return { name: `${columnName(column)}${row + 1}`, shown, blank: clipped(strokes, shown).length === 0 };
  });
};

/** Two bars to measure, and what the tile is. */
const stripShapes = (tile: Tile, words: TemplateWords, page: string): readonly Shape[] => {
  const [width] = PAGE[words.units];
  const left = MARGIN + LEFT_STRIP;
  const barY = MARGIN + 8;
  const barX = MARGIN + 5;
  const barFrom = MARGIN + FOOT_STRIP;
  const ends = (at: Vec2, way: Vec2): readonly Shape[] =>
    [0, BAR_MM].map((mm) => {
      const [x, y] = [at[0] + way[0] * mm, at[1] + way[1] * mm];
      return line('outline', [x - way[1] * 2, y - way[0] * 2], [x + way[1] * 2, y + way[0] * 2]);
    });
  const bar = `check: ${BAR_MM} mm${words.units === 'in' ? ' = 3 15/16 in' : ''}`;
  return [
    line('outline', [left, barY], [left + BAR_MM, barY]),
    ...ends([left, barY], [1, 0]),
    text([left + BAR_MM / 2, barY + 1.2], bar, { height: TEXT_MM.note, align: 'middle' }),
    line('outline', [barX, barFrom], [barX, barFrom + BAR_MM]),
    ...ends([barX, barFrom], [0, 1]),
    text([barX - 1.2, barFrom + BAR_MM / 2], bar, { height: TEXT_MM.note, align: 'middle', turnRad: Math.PI / 2 }),
    text([left + BAR_MM + 8, barY + 1], `${words.letter} ${tile.name}`, { height: 6, strong: true }),
    text([left + BAR_MM + 30, barY + 5], `${words.name}: anchor template`, {
      height: TEXT_MM.note,
      within: width - MARGIN - left - BAR_MM - 30,
    }),
    text([left + BAR_MM + 30, barY + 1], `${words.designTitle}, ${words.signed}`, {
      height: TEXT_MM.note,
      within: width - MARGIN - left - BAR_MM - 30,
    }),
    text([left + BAR_MM + 8, barY + 9], 'forward ↑', { height: TEXT_MM.note }),
    text([width - MARGIN, barY - 4.5], page, { height: TEXT_MM.note, align: 'right' }),
    text([left, barY - 4.5], CAUTION, { height: TEXT_MM.caption, within: width - MARGIN - left - 20 }),
  ];
};

/** Where neighbours begin: crosses in the corners and a line along each edge that is glued to one. */
const joinShapes = (tile: Tile, tiles: readonly Tile[], window: Area, written: readonly Area[]): readonly Shape[] => {
  const half = OVERLAP / 2;
  const [left, right] = [window.from[0] + half, window.to[0] - half];
  const [low, high] = [window.from[1] + half, window.to[1] - half];
  const corners: readonly Vec2[] = [
    [left, low],
    [right, low],
    [right, high],
    [left, high],
  ];
  const [width, height] = areaSize(tile.shown);
  const beside = (dx: number, dy: number): Tile | undefined =>
    tiles.find(
      ({ shown }) =>
        Math.abs(shown.from[0] - tile.shown.from[0] - dx * (width - OVERLAP)) < 1 &&
        Math.abs(shown.from[1] - tile.shown.from[1] - dy * (height - OVERLAP)) < 1,
    );
  const edge = (next: Tile | undefined, from: Vec2, to: Vec2, turnRad: number): readonly Shape[] => {
    if (!next) return [];
    const words = `${next.name}${next.blank ? ' (blank, not printed)' : ''}`;
    const named = (share: number) =>
      text([from[0] + (to[0] - from[0]) * share + 1, from[1] + (to[1] - from[1]) * share + 1], words, {
        height: TEXT_MM.note,
        turnRad,
      });
    return [line('behind', from, to), offWords([named(0.5), named(0.4), named(0.6), named(0.3)], written)];
  };
  return [
    ...corners.flatMap(([x, y]) => [line('tick', [x - 3, y], [x + 3, y]), line('tick', [x, y - 3], [x, y + 3])]),
    ...edge(beside(-1, 0), [left, low], [left, high], Math.PI / 2),
    ...edge(beside(1, 0), [right, low], [right, high], Math.PI / 2),
    ...edge(beside(0, -1), [left, low], [right, low], 0),
    ...edge(beside(0, 1), [left, high], [right, high], 0),
  ];
};

const tileDrawing = (
  figure: TemplateFigure,
  tile: Tile,
  tiles: readonly Tile[],
  words: TemplateWords,
  page: string,
): Drawing => {
  const window = windowOf(words.units);
  const move = onSheet(1, [window.from[0] - tile.shown.from[0], window.from[1] - tile.shown.from[1]]);
  const strokes = clipped(templateStrokes(figure, move, false), window).map((stroke) => movedIn(stroke, window));
  return {
    title: `${words.designTitle}: anchor template of ${words.name}, tile ${tile.name}`,
    size: PAGE[words.units],
    scale: 1,
    shapes: [
      rectangle('rule', window.from, window.to),
      ...strokes,
      ...joinShapes(tile, tiles, window, writtenAreas(strokes)),
      ...stripShapes(tile, words, page),
    ],
  };
};

const column = (title: string, width: number, align: TableColumn['align'] = 'right'): TableColumn => ({
  title,
  width,
  align,
});

const sideways = (mm: number, units: LengthUnits): string =>
  `${sizeText(Math.abs(mm), units)}${mm > 0 ? ' R' : mm < 0 ? ' L' : ''}`;

const blocksOf = ({ holes, walls }: TemplateFigure, { units }: TemplateWords): readonly Block[] => {
  const inserts = holes.flatMap(({ insert, tag }) => (insert === null ? [] : [`${tag}: ${insert}`]));
  return [
    {
      kind: 'table',
      title: 'Holes in the floor, from the middle of the hatch sill',
      columns: [
        column('tag', 6, 'left'),
        column('forward', 14),
        column('aside', 14),
        column('Ø', 8),
        column('plate', 10),
        column('torque N·m', 14),
        column('below', 10),
      ],
      rows: holes.map(({ tag, at, diameter, plateMm, breakingNm }) => [
        tag,
        sizeText(at[1], units),
        sideways(at[0], units),
        formatMillimetres(diameter),
        plateMm === null ? '' : `${formatMillimetres(plateMm)} mm`,
        breakingNm === null ? '' : `under ${formatMillimetres(breakingNm)}`,
        '☐',
      ]),
    },
    {
      kind: 'table',
      title: 'No hole nearer than the drill wanders',
      columns: [column('tag', 6, 'left'), column('to the zone', 18), column('zone', 52, 'left')],
      rows: holes.flatMap(({ tag, clearMm, zone }) =>
        clearMm === null ? [] : [[tag, clearMm < 0 ? 'INSIDE IT' : sizeText(clearMm, units), zone]],
      ),
    },
    {
      kind: 'table',
      title: 'Bolts and inserts; an insert takes the bore its maker says',
      columns: [column('', 76, 'left')],
      rows: [...new Set([...holes.map(({ bolt }) => bolt), ...inserts])].map((words) => [words]),
    },
    {
      kind: 'table',
      title: 'Anchors in walls, from the middle of the sill and the floor',
      columns: [
        column('tag', 6, 'left'),
        column('wall', 9, 'left'),
        column('forward', 13),
        column('aside', 13),
        column('up', 13),
        column('Ø', 6),
        column('bracket', 16, 'left'),
      ],
      rows: walls.map((each) => [
        each.tag,
        each.side,
        sizeText(each.forwardMm, units),
        sideways(-each.leftMm, units),
        sizeText(each.upMm, units),
        formatMillimetres(each.diameter),
        each.bracket,
      ]),
    },
  ].filter(({ rows }) => rows.length > 0) as readonly Block[];
};

const titleRows = (words: TemplateWords, tiles: number, reduction: number): readonly (readonly Cell[])[] => {
  const cell = (caption: string, share: number, value: string): Cell => ({ caption, share, value });
  return [
    [cell('design', 5, words.designTitle), cell('customer', 3.5, words.customer), cell('revision', 4.5, words.signed)],
    [
      cell('anchor template', 6, words.name),
      cell('seen', 5, 'from above, hatch at the foot'),
      cell('tiles to print', 2, String(tiles)),
    ],
    [
      cell('scale of this sheet', 2, scaleText(reduction)),
      cell('scale of the tiles', 2, scaleText(1)),
      cell('units', 2, `${unitsText(words.units)}, bores in mm`),
      cell('looked and photographed below by', 5, ''),
    ],
    titleFoot(words.foot),
  ];
};

/** An overview with all figures, then the template at its true size on tiles that are glued together at their crosses. */
export const templateSheets = (figure: TemplateFigure, words: TemplateWords): readonly Drawing[] => {
  if (figure.holes.length + figure.walls.length === 0) return [];
  const tiles = figure.holes.length === 0 ? [] : tilesOf(figure, words.units);
  const printed = tiles.filter(({ blank }) => !blank);
  const extent = templateExtent(figure);
  const whole: Area = {
    from: [
      Math.min(extent.from[0], ...tiles.map(({ shown }) => shown.from[0]), 0),
      Math.min(extent.from[1], ...tiles.map(({ shown }) => shown.from[1]), 0),
    ],
    to: [
      Math.max(extent.to[0], ...tiles.map(({ shown }) => shown.to[0]), 0),
      Math.max(extent.to[1], ...tiles.map(({ shown }) => shown.to[1])),
    ],
  };
  const overview = tableSheets({
    title: `${words.designTitle}: anchor template of ${words.name}`,
    mark: words.letter,
    units: words.units,
    surround: { left: 4, right: 4, bottom: 4, top: 4 },
    blocks: blocksOf(figure, words),
    caution: CAUTION,
    more: printed.length,
    figure: (room) => {
      const size = areaSize(whole);
      const reduction = reductionFor(size, areaSize(room), words.units);
      const low = centred(room, [size[0] / reduction, size[1] / reduction]);
      const move = onSheet(1 / reduction, [low[0] - whole.from[0] / reduction, low[1] - whole.from[1] / reduction]);
      const window: Area = { from: move(whole.from), to: move(whole.to) };
      const strokes = clipped(templateStrokes(figure, move, true), window);
      const written = writtenAreas(strokes);
      return {
        reduction,
        rows: (each) => titleRows(words, printed.length, each),
        shapes: [
          ...strokes,
          ...tiles.flatMap(({ name, shown, blank }) => {
            const [[left, low], [, high]] = [move(shown.from), move(shown.to)];
            const named = (y: number) =>
              text([left + 1, y], blank ? `${name} blank` : name, { height: TEXT_MM.caption });
            const places = [low + 1, high - 1 - TEXT_MM.caption, (low + high) / 2] as const;
            return [
              rectangle('rule', move(shown.from), move(shown.to)),
              offWords([named(places[0]), named(places[1]), named(places[2])], written),
            ];
          }),
        ],
      };
    },
  });
  const count = overview.length + printed.length;
  return [
    ...overview,
    ...printed.map((tile, i) =>
      tileDrawing(figure, tile, tiles, words, `sheet ${overview.length + i + 1} of ${count}`),
    ),
  ];
};
