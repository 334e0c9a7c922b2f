import type { Design } from '../design.ts';
import type { NodeId } from '../parts.ts';
import type { Station, Survey } from '../survey.ts';
import { itemOf } from './change.ts';
import { changeSurvey, changeSurveyItem } from './survey.ts';

type Side = 'left' | 'right';
type Point = Station['left'][number];
type Ties = readonly (NodeId | null)[];

const MARKS = { left: 'leftMarks', right: 'rightMarks' } as const satisfies Readonly<Record<Side, keyof Station>>;

/** The marks that the points of a side follow, one a point, null for a typed one. */
export const tiesOf = (station: Station, side: Side): Ties => {
  const ties = station[MARKS[side]];
  return ties?.length === station[side].length ? ties : station[side].map(() => null);
};

const withSides = (
  design: Design,
  station: Station,
  change: (points: readonly Point[], ties: Ties) => { readonly points: readonly Point[]; readonly ties: Ties },
): Design => {
  const [left, right] = [
    change(station.left, tiesOf(station, 'left')),
    change(station.right, tiesOf(station, 'right')),
  ];
  return changeSurveyItem(design, 'stations', station.id, {
    left: left.points,
    right: right.points,
    leftMarks: left.ties,
    rightMarks: right.ties,
  });
};

/** Puts a point after another on both sides; `made` gives it from the points there. It follows no mark. */
export const addSectionRow = (
  design: Design,
  id: NodeId,
  after: number,
  made: (points: readonly Point[]) => readonly Point[],
): Design =>
  withSides(design, itemOf(design.survey.stations, id, 'station'), (points, ties) => {
    const next = made(points);
    return { points: next, ties: next.length === ties.length ? ties : ties.toSpliced(after + 1, 0, null) };
  });

/** Takes the point of a row out on both sides, with what it followed. */
export const removeSectionRow = (design: Design, id: NodeId, row: number): Design =>
  withSides(design, itemOf(design.survey.stations, id, 'station'), (points, ties) => ({
    points: points.filter((_, i) => i !== row),
    ties: ties.filter((_, i) => i !== row),
  }));

/** Ties one point to a mark, or lets it stand as typed. Throws on a row that the section does not have. */
export const tieSectionPoint = (design: Design, id: NodeId, side: Side, row: number, mark: NodeId | null): Design => {
  const station = itemOf(design.survey.stations, id, 'station');
  if (!station[side][row]) throw new RangeError(`tieSectionPoint: ${id} has no point ${row} on the ${side}`);
  return changeSurveyItem(design, 'stations', id, {
    [MARKS[side]]: tiesOf(station, side).map((own, i) => (i === row ? mark : own)),
  });
};

/** The right side takes the points of the left, as typed ones: a mark on the left says nothing of the right. */
export const mirrorSection = (design: Design, id: NodeId): Design => {
  const station = itemOf(design.survey.stations, id, 'station');
  return changeSurveyItem(design, 'stations', id, { right: station.left, rightMarks: [] });
};

/** The lists whose items may hold start values of a vehicle class. */
export type StartList = 'stations' | 'obstacles' | 'closures';

/** True while the figures that were typed for an item are start values of a vehicle class. */
export const isStartValue = ({ startValues }: Survey, item: { readonly startValues?: boolean | undefined }): boolean =>
  item.startValues ?? startValues;

/** A person says that the typed figures of an item are now those of the vehicle. */
export const sayMeasured = (design: Design, list: StartList, id: NodeId): Design =>
  changeSurveyItem(design, list, id, { startValues: false });

/**
 * A person says that the clear opening, too, is measured: the survey as a whole is then no start any more. Items that
 * still hold start values keep saying so of themselves.
 */
export const sayOpeningMeasured = (design: Design): Design => {
  const { survey } = design;
  const own = <T extends { readonly startValues?: boolean | undefined }>(items: readonly T[]): T[] =>
    items.map((item) => ({ ...item, startValues: isStartValue(survey, item) }));
  return changeSurvey(design, {
    startValues: false,
    stations: own(survey.stations),
    obstacles: own(survey.obstacles),
    closures: own(survey.closures),
  });
};
