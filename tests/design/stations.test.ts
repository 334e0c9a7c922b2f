import { describe, expect, it } from 'vitest';
import {
  addMarks,
  addSectionRow,
  addSurveyItem,
  changeSurvey,
  type Design,
  emptyDesign,
  isStartValue,
  mirrorSection,
  type NodeId,
  printDesign,
  readDesign,
  removeSectionRow,
  type Station,
  sayMeasured,
  sayOpeningMeasured,
  tieSectionPoint,
  tiesOf,
} from '../../src/design/index.ts';

const POINTS: Station['left'] = [
  [600, 0],
  [650, 400],
  [500, 900],
];

/** A station of three points a side, the middle one on the left tied to a mark. */
const tied = (): { readonly design: Design; readonly station: NodeId; readonly mark: NodeId } => {
  const marked = addMarks(emptyDesign('Marrow Hill', 'mm'), [
    { name: 'hip left', at: [0, 650, 400], fixed: [false, false, false] },
  ]);
  const mark = marked.design.survey.marks[0]?.id;
  if (!mark) throw new Error('no mark');
  const added = addSurveyItem(marked.design, 'stations', { xMm: 0, left: POINTS, right: POINTS });
  return { design: tieSectionPoint(added.design, added.id, 'left', 1, mark), station: added.id, mark };
};

const stationOf = (design: Design): Station => {
  const [station] = design.survey.stations;
  if (!station) throw new Error('no station');
  return station;
};

const sound = (design: Design): Design => {
  const read = readDesign(printDesign(design));
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  expect(read.value).toEqual(design);
  return design;
};

describe('points of a section and the marks that they follow', () => {
  it('ties one point of one side and no other', () => {
    const { design, mark } = tied();
    const station = stationOf(sound(design));
    expect(tiesOf(station, 'left')).toEqual([null, mark, null]);
    expect(tiesOf(station, 'right')).toEqual([null, null, null]);
  });

  it('keeps every point with its own mark when a row comes in before it', () => {
    const { design, station, mark } = tied();
    const more = addSectionRow(design, station, 0, (points) => points.toSpliced(1, 0, [620, 200]));
    expect(stationOf(sound(more)).left.map(([out]) => out)).toEqual([600, 620, 650, 500]);
    expect(tiesOf(stationOf(more), 'left')).toEqual([null, null, mark, null]);
  });

  it('takes a row out on both sides with what it followed', () => {
    const { design, station, mark } = tied();
    const less = stationOf(sound(removeSectionRow(design, station, 0)));
    expect(less.left).toEqual(POINTS.slice(1));
    expect(less.right).toEqual(POINTS.slice(1));
    expect(tiesOf(less, 'left')).toEqual([mark, null]);
    const none = stationOf(removeSectionRow(design, station, 1));
    expect(tiesOf(none, 'left')).toEqual([null, null]);
  });

  it('gives the right side the points of the left as typed ones', () => {
    const { design, station } = tied();
    const changed = { ...design, survey: { ...design.survey, stations: [{ ...stationOf(design), right: [] }] } };
    const mirrored = stationOf(mirrorSection(changed, station));
    expect(mirrored.right).toEqual(POINTS);
    expect(tiesOf(mirrored, 'right')).toEqual([null, null, null]);
  });

  it('throws on a point that the section does not have', () => {
    const { design, station, mark } = tied();
    expect(() => tieSectionPoint(design, station, 'right', 3, mark)).toThrow(RangeError);
  });
});

describe('start values', () => {
  it('are cleared item by item, the opening last, and nothing is taken for measured that was not said to be', () => {
    const { design, station } = tied();
    const second = addSurveyItem(changeSurvey(design, { startValues: true }), 'stations', {
      xMm: 500,
      left: POINTS,
      right: POINTS,
    });
    const standing = (of: Design): readonly boolean[] => of.survey.stations.map((own) => isStartValue(of.survey, own));
    expect(standing(second.design)).toEqual([true, true]);
    const one = sayMeasured(second.design, 'stations', station);
    expect(standing(one)).toEqual([false, true]);
    const opening = sound(sayOpeningMeasured(one));
    expect(opening.survey.startValues).toBe(false);
    expect(standing(opening)).toEqual([false, true]);
    expect(standing(sayMeasured(opening, 'stations', second.id))).toEqual([false, false]);
  });
});
