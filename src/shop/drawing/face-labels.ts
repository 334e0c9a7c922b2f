import { type LengthUnits, type Polygon, polygonHolds, type Vec2 } from '../../base/index.ts';
import type { Body, SolvedCarcass, SolvedOpening } from '../../fitout/index.ts';
import type { Marks } from '../marks.ts';
import type { Shape } from './drawing.ts';
import { sizeText } from './paper-words.ts';
import { crowding } from './place-tags.ts';
import type { Silhouette } from './projection.ts';
import { type OnSheet, TEXT_MM, text } from './shapes.ts';
import type { Area } from './sheet.ts';
import { textWidth } from './text-width.ts';
import { lengthInside, type Segment, standsBefore } from './visible-edges.ts';
import { writtenAreas } from './written-areas.ts';

/** The face of a carcass on paper. */
export interface FaceOnPaper {
  readonly carcass: SolvedCarcass;
  readonly move: OnSheet;
  readonly scale: number;
  readonly units: LengthUnits;
}

const boxOf = ({ ring }: Silhouette<Body>, move: OnSheet): Area => {
  const points = ring.map(move);
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return { from: [Math.min(...xs), Math.min(...ys)], to: [Math.max(...xs), Math.max(...ys)] };
};

/** Heights in an opening where its words may stand: the middle first. */
const WORD_PLACES = [0.5, 0.68, 0.32, 0.84, 0.16] as const;
/** The same where another opening stands before this one or behind it: room for the words of both. */
const SHARED_PLACES = [0.74, 0.26, ...WORD_PLACES] as const;
const WORDS_HIGH = 8;

const sharesFace = (a: SolvedOpening, b: SolvedOpening): boolean =>
  a !== b &&
  ([0, 2] as const).every(
    (axis) =>
      Math.min(a.from[axis] + a.size[axis], b.from[axis] + b.size[axis]) - Math.max(a.from[axis], b.from[axis]) >
      Math.min(a.size[axis], b.size[axis]) / 2,
  );

/** A millimetre of words over words is as bad as so many of words over lines. */
const WORDS_WEIGH = 20;

/**
 * Name and clear size (across × up × deep) in each opening that is not divided and does not move, off the boards and off
 * what is written there already: one opening may stand behind another.
 */
export const openingWords = (
  openings: readonly SolvedOpening[],
  lines: readonly Segment[],
  { move, scale, units }: FaceOnPaper,
  written: readonly Area[],
): readonly Shape[] => {
  const taken: Area[] = [...written];
  const named = openings.filter(({ mover, content }) => mover === null && content !== 'divided');
  return named.flatMap((opening): readonly Shape[] => {
    const { from, size: clear, name } = opening;
    const within = clear[0] * scale - 2;
    const words = `${sizeText(clear[0], units)} × ${sizeText(clear[2], units)} × ${sizeText(clear[1], units)}`;
    const sized = textWidth(words, TEXT_MM.note) <= within && clear[2] * scale > 3 * TEXT_MM.value;
    const half = Math.min(within, Math.max(textWidth(name, TEXT_MM.value), textWidth(words, TEXT_MM.note))) / 2;
    const places = named.some((other) => sharesFace(opening, other)) ? SHARED_PLACES : WORD_PLACES;
    const blocks = places.map((share): Area => {
      const [px, py] = move([from[0] + clear[0] / 2, from[2] + clear[2] * share]);
      return { from: [px - half, py - WORDS_HIGH / 2], to: [px + half, py + WORDS_HIGH / 2] };
    });
    const block = clearest(blocks, lines, taken);
    if (block === null) return [];
    const [x, y] = middleOf(block);
    const style = { align: 'middle', within } as const;
    const size = text([x, y - 3], words, { ...style, height: TEXT_MM.note });
    // The sizes stand along the edges as well: they give way to what is written already, the name does not.
    const free = sized && writtenAreas([size]).every((area) => crowding(area, taken) === 0);
    const shapes = [
      ...(name === '' ? [] : [text([x, y + (sized ? 0.8 : -1)], name, { ...style, strong: true })]),
      ...(free ? [size] : []),
    ];
    taken.push(...writtenAreas(shapes));
    return shapes;
  });
};

/** Boards this narrow on paper carry their mark along the edge. */
const MARK_EDGE_MOST = 8;
const MARK_IN = 1.2;
const MARK_MM = TEXT_MM.caption;

const narrowSide = ({ from, to }: Area): number => Math.min(to[0] - from[0], to[1] - from[1]);

const middleOf = ({ from, to }: Area): Vec2 => [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
const cornersOf = ({ from, to }: Area): Polygon => [from, [to[0], from[1]], to, [from[0], to[1]]];

/** The area that words and drawn lines cross least; the first of equals. */
const clearest = (areas: readonly Area[], lines: readonly Segment[], written: readonly Area[] = []): Area | null => {
  const costs = areas.map((area) => lengthInside(lines, cornersOf(area)) + WORDS_WEIGH * crowding(area, written));
  return areas[costs.indexOf(Math.min(...costs))] ?? null;
};

interface PlacedMark {
  readonly area: Area;
  readonly shape: Shape;
}

/** Where along a narrow edge its mark may stand. */
const ALONG_EDGE = [0.5, 0.35, 0.65, 0.2, 0.8] as const;

/** The mark on a board that shows a narrow edge, along the edge, where fewest lines cross it. */
const edgeMark = (mark: string, box: Area, lines: readonly Segment[], written: readonly Area[]): PlacedMark | null => {
  const size = MARK_MM;
  const half = textWidth(mark, size) / 2;
  const [width, height] = [box.to[0] - box.from[0], box.to[1] - box.from[1]];
  const upright = height > width;
  const areas = ALONG_EDGE.map((share): Area => {
    const [x, y] = [box.from[0] + width * (upright ? 0.5 : share), box.from[1] + height * (upright ? share : 0.5)];
    const [dx, dy] = upright ? [size / 2, half] : [half, size / 2];
    return { from: [x - dx, y - dy], to: [x + dx, y + dy] };
  });
  const area = clearest(areas, lines, written);
  if (area === null) return null;
  const [x, y] = [(area.from[0] + area.to[0]) / 2, (area.from[1] + area.to[1]) / 2];
  const at: Vec2 = upright ? [x + size / 2, y] : [x, y - size / 2];
  return { area, shape: text(at, mark, { height: size, align: 'middle', turnRad: upright ? Math.PI / 2 : 0 }) };
};

interface SeenBoard {
  readonly seen: Silhouette<Body>;
  readonly box: Area;
  readonly mark: string;
}

/** The mark of one board, or null where the board shows no place for it. */
const boardMark = (board: SeenBoard, lines: readonly Segment[], written: readonly Area[]): PlacedMark | null => {
  const { seen, box, mark } = board;
  if (narrowSide(box) < MARK_MM + 0.4) return null;
  if (narrowSide(box) <= MARK_EDGE_MOST) return edgeMark(mark, box, lines, written);
  if (seen.item.mover === null) return null;
  const [x, y] = [box.to[0] - MARK_IN, box.from[1] + MARK_IN];
  const area: Area = { from: [x - textWidth(mark, MARK_MM), y], to: [x, y + MARK_MM] };
  return { area, shape: text([x, y], mark, { height: MARK_MM, align: 'right' }) };
};

/** Marks of the boards that show a narrow edge, and of fronts that move, low right on them; none that is covered. */
export const boardMarks = (
  silhouettes: readonly Silhouette<Body>[],
  marks: Marks,
  lines: readonly Segment[],
  { move }: FaceOnPaper,
  words: readonly Area[],
): readonly Shape[] => {
  const boards = silhouettes.flatMap((seen): readonly SeenBoard[] => {
    const mark = marks.markOf.get(seen.item.id);
    return mark === undefined ? [] : [{ seen, box: boxOf(seen, move), mark }];
  });
  const written: Area[] = [...words];
  return boards.flatMap((board): readonly Shape[] => {
    const placed = boardMark(board, lines, written);
    if (placed === null || crowding(placed.area, written) > 0) return [];
    const nearer = silhouettes.filter((other) => standsBefore(other, board.seen));
    if (nearer.some(({ ring }) => polygonHolds(ring.map(move), middleOf(placed.area)))) return [];
    written.push(placed.area);
    return [placed.shape];
  });
};
