import {
  boxAround,
  boxCorners,
  type LengthUnits,
  ORIGIN,
  type Polygon,
  placed,
  sameLength,
  type Vec2,
  type Vec3,
} from '../../base/index.ts';
import { shapeBox } from '../../bodies/index.ts';
import type { CargoSpace } from '../../envelope/index.ts';
import type { FitOut, SolvedCarcass } from '../../fitout/index.ts';
import type { Marks } from '../marks.ts';
import type { Drawing, Shape } from './drawing.ts';
import { isBuilt } from './face-view.ts';
import { sizeText } from './paper-words.ts';
import { convexOutline, type Sight, seenAt, silhouetteOf } from './projection.ts';
import { line, type OnSheet, onSheet, ring, text } from './shapes.ts';
import type { TitleFoot } from './title-foot.ts';
import { dimension, type Surround, viewSheet } from './view-sheet.ts';
import { visibleEdges } from './visible-edges.ts';

export type GeneralViewName = 'plan' | 'side';

/** Vehicle axes: x forward, y left, z up. On the plan the hatch is at the foot; the side is seen from the vehicle's right. */
const SIGHTS: Readonly<Record<GeneralViewName, Sight & { readonly seen: string }>> = {
  plan: { origin: ORIGIN, right: [0, -1, 0], up: [1, 0, 0], away: [0, 0, -1], seen: 'from above, hatch at the foot' },
  side: { origin: ORIGIN, right: [1, 0, 0], up: [0, 0, 1], away: [0, 1, 0], seen: 'from the right, hatch at the left' },
};

const SURROUND: Surround = { left: 20, right: 20, bottom: 20, top: 8 };
const OVERALL_OFF = 14;
const CARCASS_OFF = 7;
const LETTER_MM = 5;

export interface GeneralViewInput {
  readonly fitout: FitOut;
  readonly space: CargoSpace | null;
  readonly marks: Marks;
  readonly designTitle: string;
  readonly customer: string;
  /** Letter, hash and who approved it. */
  readonly signed: string;
  readonly foot: TitleFoot;
  readonly units: LengthUnits;
}

const carcassOutline = ({ pose, size }: SolvedCarcass, sight: Sight): Polygon =>
  convexOutline(boxCorners({ min: ORIGIN, max: size }).map((corner) => seenAt(sight, placed(pose, corner))));

/** The cargo space as seen: its widest outline on the plan, floor line and roof line from the side. */
const spaceOutline = ({ sections }: CargoSpace, name: GeneralViewName): Polygon => {
  const axis = name === 'plan' ? 0 : 1;
  const [first, second] = [
    sections.map(({ x, ring: points }): Vec2 => [x, Math.max(...points.map((point) => point[axis]))]),
    sections.map(({ x, ring: points }): Vec2 => [x, Math.min(...points.map((point) => point[axis]))]).reverse(),
  ];
  const both = [...first, ...second];
  return name === 'plan' ? both.map(([x, y]): Vec2 => [-y, x]) : both;
};

const extent = (points: readonly Vec2[]): { readonly low: Vec2; readonly high: Vec2 } => {
  const box = boxAround(points.map(([x, y]): Vec3 => [x, y, 0]));
  return { low: [box.min[0], box.min[1]], high: [box.max[0], box.max[1]] };
};

/** The letter of each carcass in its middle; carcasses that stand behind each other share one place. */
const letterShapes = (input: GeneralViewInput, sight: Sight, move: OnSheet): readonly Shape[] => {
  const letters = input.fitout.carcasses.map((carcass) => {
    const { low, high } = extent(carcassOutline(carcass, sight));
    const [from, to] = [move(low), move(high)];
    const at: Vec2 = [(from[0] + to[0]) / 2, (from[1] + to[1] - LETTER_MM) / 2];
    return { at, letter: input.marks.letterOf.get(carcass.id) ?? '' };
  });
  return letters.flatMap(({ at }, i): readonly Shape[] => {
    const near = letters.filter((other) => Math.hypot(other.at[0] - at[0], other.at[1] - at[1]) < LETTER_MM);
    if (letters.findIndex((other) => near.includes(other)) !== i) return [];
    const words = near.map(({ letter }) => letter).join(', ');
    return [text(at, words, { height: LETTER_MM, align: 'middle', strong: true })];
  });
};

type Span = readonly [number, number];

/** Each span once, in the order of the picture. */
const distinctSpans = (spans: readonly Span[]): readonly Span[] =>
  spans
    .filter(
      ([low, high], i) => spans.findIndex((other) => sameLength(other[0], low) && sameLength(other[1], high)) === i,
    )
    .toSorted(([a], [b]) => a - b);

/** Spans on as few lines as they take, so that no two on one line overlap; the line nearest the view first. */
const linesOf = (spans: readonly Span[]): readonly (readonly Span[])[] => {
  const lines: Span[][] = [];
  for (const span of spans) {
    const free = lines.find((own) => own.every(([, high]) => high <= span[0] || sameLength(high, span[0])));
    if (free) free.push(span);
    else lines.push([span]);
  }
  return lines;
};

/** The carcasses along the foot of a view, line by line; none where the size overall says it all. */
const carcassLines = ({ fitout }: GeneralViewInput, sight: Sight): readonly (readonly Span[])[] => {
  const outlines = fitout.carcasses.map((carcass) => extent(carcassOutline(carcass, sight)));
  const spans = distinctSpans(outlines.map((each): Span => [each.low[0], each.high[0]]));
  return spans.length > 1 ? linesOf(spans) : [];
};

const dimensionShapes = (
  input: GeneralViewInput,
  sight: Sight,
  move: OnSheet,
  all: ReturnType<typeof extent>,
): readonly Shape[] => {
  const { units } = input;
  const outlines = input.fitout.carcasses.map((carcass) => extent(carcassOutline(carcass, sight)));
  if (outlines.length === 0) return [];
  const cabinet = extent(outlines.flatMap(({ low, high }) => [low, high]));
  const [low, high] = [move(all.low), move(all.high)];
  const [foot, left, right] = [low[1], low[0], high[0]];
  const across = (from: number, to: number, off: number): Shape =>
    dimension(
      'across',
      move([from, cabinet.low[1]]),
      move([to, cabinet.low[1]]),
      foot - off,
      sizeText(to - from, units),
    );
  const up = (from: number, to: number, lineAt: number, edge: number): Shape =>
    dimension('up', move([edge, from]), move([edge, to]), lineAt, sizeText(to - from, units));
  const lines = carcassLines(input, sight);
  return [
    across(cabinet.low[0], cabinet.high[0], CARCASS_OFF * (1 + lines.length)),
    up(cabinet.low[1], cabinet.high[1], left - OVERALL_OFF, cabinet.low[0]),
    ...lines.flatMap((spans, i) => spans.map(([from, to]) => across(from, to, CARCASS_OFF * (1 + i)))),
    // From the sill or the floor to the cabinet, where there is a distance to give.
    ...(cabinet.low[1] > 0 ? [up(0, cabinet.low[1], right + CARCASS_OFF, cabinet.high[0])] : []),
  ];
};

/** All carcasses together, from above or from the side, in the outline of the cargo space. */
export const generalView = (name: GeneralViewName, input: GeneralViewInput): Drawing => {
  const sight = SIGHTS[name];
  const built = input.fitout.bodies.filter((body) => body.carcass !== null && isBuilt(body));
  const silhouettes = built.map((body) => silhouetteOf(body, body.shape, sight));
  const vehicle = input.space === null ? [] : spaceOutline(input.space, name);
  const corners = built.flatMap((body) => boxCorners(shapeBox(body.shape)).map((corner) => seenAt(sight, corner)));
  const all = extent([...vehicle, ...corners, ...(vehicle.length + corners.length === 0 ? [[0, 0] as const] : [])]);
  const size: Vec2 = [all.high[0] - all.low[0], all.high[1] - all.low[1]];
  const words = {
    designTitle: input.designTitle,
    customer: input.customer,
    signed: input.signed,
    foot: input.foot,
    view: name,
    seen: sight.seen,
    mark: name,
  };
  const more = Math.max(0, carcassLines(input, sight).length - 1) * CARCASS_OFF;
  const surround = { ...SURROUND, bottom: SURROUND.bottom + more };
  return viewSheet(words, size, surround, input.units, (scale, at) => {
    const move = onSheet(scale, [at[0] - all.low[0] * scale, at[1] - all.low[1] * scale]);
    return [
      ...(vehicle.length === 0 ? [] : [ring('behind', vehicle.map(move))]),
      ...visibleEdges(silhouettes).map(({ from, to }) => line('seen', move(from), move(to))),
      ...dimensionShapes(input, sight, move, all),
      ...letterShapes(input, sight, move),
    ];
  });
};
