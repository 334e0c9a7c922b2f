import type { Station } from '../../../../design/index.ts';

export type Side = 'left' | 'right';
type Points = Station['left'];
type Point = Points[number];

const between = (a: Point, b: Point): Point => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];

const roundMm = (point: Point): Point => [Math.round(point[0]), Math.round(point[1])];

/** A point halfway to the next one; after the last, as far on again; into an empty list, a start value. */
export const withPointInserted = (points: Points, after: number): Points => {
  const here = points[after];
  if (!here) return points.length === 0 ? [[600, 0]] : points;
  const next = points[after + 1];
  const before = points[after - 1];
  const onward: Point = before ? [2 * here[0] - before[0], 2 * here[1] - before[1]] : [here[0], here[1] + 100];
  return points.toSpliced(after + 1, 0, roundMm(next ? between(here, next) : onward));
};

/** One coordinate of one point changed: 0 is out from the centre line, 1 is up from the floor. */
export const withCoordinate = (points: Points, row: number, axis: 0 | 1, mm: number): Points =>
  points.map((point, i) => (i === row ? (axis === 0 ? [mm, point[1]] : [point[0], mm]) : point));

/** A start section of a plain box, for the first station of a survey. */
export const startSection = (): Pick<Station, Side> => {
  const points: Points = [
    [600, 0],
    [660, 300],
    [660, 600],
    [560, 900],
  ];
  return { left: points, right: points };
};

/** A station halfway to the next one, or as far again behind the last, with its points drawn halfway too. */
export const stationAfter = (stations: readonly Station[], index: number): Omit<Station, 'id'> => {
  const here = stations[index];
  if (!here) return { xMm: 0, ...startSection() };
  const next = stations[index + 1];
  if (!next) {
    const before = stations[index - 1];
    return { xMm: here.xMm + (before ? here.xMm - before.xMm : 300), left: here.left, right: here.right };
  }
  const halfway = (a: Points, b: Points): Points =>
    a.length === b.length ? a.map((point, i) => roundMm(between(point, b[i] ?? point))) : a;
  return {
    xMm: Math.round((here.xMm + next.xMm) / 2),
    left: halfway(here.left, next.left),
    right: halfway(here.right, next.right),
  };
};
