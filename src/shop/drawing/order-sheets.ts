import { add, dot, type LengthUnits, ORIGIN, scale, subtract, unit, type Vec2, type Vec3 } from '../../base/index.ts';
import type { FitOut, SolvedCarcass } from '../../fitout/index.ts';
import { wrapWords } from '../paper/wrap-words.ts';
import type { Drawing, Shape } from './drawing.ts';
import { drawnPanel, middleOfPanel } from './drawn-panel.ts';
import { obliqueSight } from './oblique.ts';
import { PAPER_CAUTION, unitsText } from './paper-words.ts';
import { seenAt } from './projection.ts';
import { line, text } from './shapes.ts';
import { type Area, areaSize, type Cell, sheetFor, sheetShapes } from './sheet.ts';
import { type SpacePicture, seenExtent, spaceShapes } from './space-picture.ts';
import { titleFoot } from './title-foot.ts';
import type { ViewWords } from './view-sheet.ts';

type Panel = FitOut['panels'][number];

/** One numbered step on paper: what it says, and what stands and what comes in its picture; no picture where none come. */
export interface OrderStep {
  readonly title: string;
  readonly lines: readonly string[];
  readonly carcass: SolvedCarcass | null;
  readonly there: readonly Panel[];
  readonly coming: readonly Panel[];
  /** The way that what comes travels, or null. */
  readonly into: Vec3 | null;
  /** Names beside what comes. */
  readonly names: ReadonlyMap<string, string>;
}

export interface OrderWords extends Pick<ViewWords, 'designTitle' | 'customer' | 'signed' | 'foot'> {
  readonly units: LengthUnits;
}

const TITLE_ROWS = 4;
const ACROSS = 3;
const DOWN = 2;
const WORDS_MM = 1.9;
const LINE_MM = 3;
const TITLE_SIZE = 2.6;
const LEADER_MM = 13;
/** How far off what comes is drawn, as a share of what stands. */
const OFF = 0.45;

const arrow = (from: Vec2, to: Vec2): readonly Shape[] => {
  const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (long < 3) return [];
  const [ux, uy] = [(to[0] - from[0]) / long, (to[1] - from[1]) / long];
  const barb = (side: number): Shape =>
    line('tick', to, [to[0] - ux * 2.2 + uy * side * 0.9, to[1] - uy * 2.2 - ux * side * 0.9]);
  return [line('tick', from, to), barb(1), barb(-1)];
};

/** How large everything is together along a way. */
const extentAlong = (panels: readonly Panel[], way: Vec3): number => {
  const along = panels.flatMap((panel) =>
    drawnPanel(panel, ORIGIN).flatMap(({ shape }) => shape.vertices.map((vertex) => dot(vertex, way))),
  );
  return along.length === 0 ? 0 : Math.max(...along) - Math.min(...along);
};

const pictureShapes = (step: OrderStep, carcass: SolvedCarcass, room: Area): readonly Shape[] => {
  const { there, coming, into, names } = step;
  const away =
    into === null || there.length === 0 ? ORIGIN : scale(into, -OFF * extentAlong([...there, ...coming], into));
  const sight = obliqueSight(carcass);
  const picture: SpacePicture = {
    solids: [
      ...there.flatMap((panel) => drawnPanel(panel, ORIGIN)),
      ...coming.flatMap((panel) => drawnPanel(panel, away)),
    ],
    sight,
    heavy: new Set(there.length === 0 ? [] : coming.map(({ id }) => id)),
    names,
  };
  const extent = seenExtent(picture);
  const size = areaSize(extent);
  const [width, height] = areaSize(room);
  const reduced = Math.min((width - 2 * LEADER_MM) / Math.max(1, size[0]), (height - 6) / Math.max(1, size[1]));
  const at: Vec2 = [room.from[0] + (width - size[0] * reduced) / 2, room.from[1] + (height - size[1] * reduced) / 2];
  const onPaper = (point: Vec3): Vec2 => {
    const [x, y] = seenAt(sight, point);
    return [at[0] + (x - extent.from[0]) * reduced, at[1] + (y - extent.from[1]) * reduced];
  };
  const middle = scale(
    coming.map(middleOfPanel).reduce((sum, each) => add(sum, each), ORIGIN),
    1 / Math.max(1, coming.length),
  );
  const way = subtract(ORIGIN, away);
  const from = add(middle, away);
  const arrows =
    dot(way, way) > 0 ? arrow(onPaper(from), onPaper(add(from, scale(unit(way), 0.6 * Math.hypot(...way))))) : [];
  return [...spaceShapes(picture, reduced, at), ...arrows];
};

const cellShapes = (step: OrderStep, number: number, cell: Area): readonly Shape[] => {
  const [width, height] = areaSize(cell);
  const lines = step.lines.flatMap((words) => wrapWords(words, WORDS_MM, width - 4));
  const top = cell.to[1] - 2 - TITLE_SIZE;
  const wordsHigh = lines.length * LINE_MM + 2;
  const picture: Area = {
    from: [cell.from[0] + 2, cell.from[1] + wordsHigh + 1],
    to: [cell.to[0] - 2, top - 2],
  };
  const drawn =
    step.carcass !== null && step.coming.length > 0 && picture.to[1] - picture.from[1] > height * 0.2
      ? pictureShapes(step, step.carcass, picture)
      : [];
  const begin = drawn.length === 0 ? top - 4 : cell.from[1] + wordsHigh - LINE_MM + 0.5;
  return [
    line('rule', [cell.from[0], cell.from[1]], [cell.to[0], cell.from[1]]),
    line('rule', [cell.to[0], cell.from[1]], [cell.to[0], cell.to[1]]),
    text([cell.from[0] + 2, top], `${number}  ${step.title}`, { height: TITLE_SIZE, strong: true, within: width - 4 }),
    ...drawn,
    ...lines.map((words, i) =>
      text([cell.from[0] + 2, begin - i * LINE_MM], words, { height: WORDS_MM, within: width - 4 }),
    ),
  ];
};

/** The steps six to a sheet, each with its picture: what stands thin, what comes heavy, an arrow along its way. Tells each step before it is drawn. */
export const orderSheets = (
  steps: readonly OrderStep[],
  words: OrderWords,
  tell: (step: number, of: number) => void = () => undefined,
): readonly Drawing[] => {
  const sheet = sheetFor(words.units, TITLE_ROWS);
  const room: Area = {
    from: [sheet.room.from[0], sheet.room.from[1]],
    to: [sheet.room.to[0], sheet.room.to[1]],
  };
  const [width, height] = [(room.to[0] - room.from[0]) / ACROSS, (room.to[1] - room.from[1]) / DOWN];
  const each = ACROSS * DOWN;
  const count = Math.ceil(steps.length / each);
  const cell = (caption: string, share: number, value: string): Cell => ({ caption, share, value });
  return Array.from({ length: count }, (_, page): Drawing => {
    const shown = steps.slice(page * each, (page + 1) * each);
    const block = {
      mark: 'order',
      sheet: `sheet ${page + 1} of ${count}`,
      rows: [
        [
          cell('design', 5, words.designTitle),
          cell('customer', 3.5, words.customer),
          cell('revision', 4.5, words.signed),
        ],
        [cell('paper', 6, 'assembly order'), cell('seen', 5, 'from before the open face, above its left side')],
        [
          cell('scale', 2, 'not to scale'),
          cell('units', 2, unitsText(words.units)),
          cell('in pictures', 7, 'heavy: what comes now; thin: what stands; arrow: the way in'),
        ],
        titleFoot(words.foot),
      ],
      caution: PAPER_CAUTION,
    };
    return {
      title: `${words.designTitle}: assembly order`,
      size: sheet.size,
      scale: 1,
      shapes: [
        ...sheetShapes(sheet, block),
        ...shown.flatMap((step, i) => {
          tell(page * each + i + 1, steps.length);
          const [column, row] = [i % ACROSS, Math.floor(i / ACROSS)];
          const from: Vec2 = [room.from[0] + column * width, room.to[1] - (row + 1) * height];
          return cellShapes(step, page * each + i + 1, { from, to: [from[0] + width, from[1] + height] });
        }),
      ],
    };
  });
};
