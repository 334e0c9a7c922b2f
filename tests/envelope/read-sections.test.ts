import { describe, expect, test } from 'vitest';
import { signedArea } from '../../src/base/index.ts';
import { readSections } from '../../src/envelope/index.ts';
import { boxSurvey, type Points, surveyOf, wall } from './surveys.ts';

const faults = (survey: ReturnType<typeof surveyOf>): readonly string[] => {
  const read = readSections(survey);
  return read.ok ? [] : read.error.map(({ at, code }) => `${at} ${code}`);
};
const sections = (survey: ReturnType<typeof surveyOf>) => {
  const read = readSections(survey);
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  return read.value;
};

describe('readSections', () => {
  test('a ring runs up the right side and down the left side: anticlockwise seen from the rear', () => {
    const [first] = sections(boxSurvey());
    expect(first?.ring).toEqual([
      [-600, 0],
      [-600, 450],
      [-600, 900],
      [600, 900],
      [600, 450],
      [600, 0],
    ]);
    // In [y, z] with y to the right of the paper the same ring runs clockwise: 1,200 × 900 = 1,080,000 mm², negative.
    expect(signedArea(first?.ring ?? [])).toBe(-1_080_000);
  });

  test('sections with other counts get points on their own lines; their area stays', () => {
    const bent: Points = [
      [400, 0],
      [400, 300],
      [600, 300],
      [600, 900],
    ];
    const read = sections(
      surveyOf([
        { xMm: 0, left: wall(600, 900) },
        { xMm: 700, left: bent },
        { xMm: 1500, left: wall(500, 800) },
      ]),
    );
    // Shares of the wall: 0, ½, 1; of the bent side, 300 + 200 + 600 = 1,100 long: 0, 3/11, 5/11, 1. Five in all.
    expect(read.map((section) => section.ring.length)).toEqual([10, 10, 10]);
    // 1,200 × 900; 1,200 × 900 less two boxes of 200 × 300; 1,000 × 800.
    expect(read.map((section) => -signedArea(section.ring))).toEqual([
      expect.closeTo(1_080_000, 6),
      expect.closeTo(960_000, 6),
      expect.closeTo(800_000, 6),
    ]);
    // Every measured corner is still there, untouched.
    for (const [out, up] of bent) expect(read[1]?.ring).toContainEqual([out, up]);
    for (const [out, up] of bent) expect(read[1]?.ring).toContainEqual([-out, up]);
  });

  test('left and right are matched apart', () => {
    const read = sections(
      surveyOf([
        { xMm: 0, left: wall(600, 900), right: [...wall(600, 900), [500, 900]] },
        { xMm: 1500, left: wall(600, 900) },
      ]),
    );
    // Right: shares 0, .45, .9, 1 and 0, .5, 1 make 0, .45, .5, .9, 1; left keeps its three.
    expect(read.map((section) => section.ring.length)).toEqual([8, 8]);
  });

  test('sides that meet on the centre line share that corner, and stations without it get it in the middle', () => {
    const domed: Points = [
      [600, 0],
      [600, 800],
      [0, 900],
    ];
    const read = sections(
      surveyOf([
        { xMm: 0, left: domed },
        { xMm: 1500, left: wall(600, 900) },
      ]),
    );
    // Shares of the domed side, 800 + √(600² + 100²) = 1,408.3 long: 0, 0.568, 1; of the wall with half the roof,
    // 450 + 450 + 600 = 1,500 long: 0, 0.3, 0.6, 1. Five in all on each side, one of them shared.
    expect(read.map((section) => section.ring.length)).toEqual([9, 9]);
    expect(read[1]?.ring).toContainEqual([0, 900]);
    expect(-signedArea(read[1]?.ring ?? [])).toBeCloseTo(1_080_000, 6);
  });

  test.each<[string, ReturnType<typeof surveyOf>, readonly string[]]>([
    ['no stations', surveyOf([]), ['survey.stations too-few-stations']],
    ['one station', surveyOf([{ xMm: 0, left: wall(600, 900) }]), ['survey.stations too-few-stations']],
    [
      'a station at the depth of the one before',
      surveyOf([
        { xMm: 0, left: wall(600, 900) },
        { xMm: 0, left: wall(600, 900) },
      ]),
      ['survey.stations[1].xMm out-of-order'],
    ],
    [
      'a station behind the one before',
      surveyOf([
        { xMm: 700, left: wall(600, 900) },
        { xMm: 300, left: wall(600, 900) },
      ]),
      ['survey.stations[1].xMm out-of-order'],
    ],
    [
      'two points on a side, a repeated one not counted',
      surveyOf([
        {
          xMm: 0,
          left: [
            [600, 0],
            [600, 900],
            [600, 900],
          ],
          right: wall(600, 900),
        },
        { xMm: 900, left: wall(600, 900) },
      ]),
      ['survey.stations[0].left too-few-points'],
    ],
    [
      'a side that crosses itself',
      surveyOf([
        { xMm: 0, left: wall(600, 900) },
        {
          xMm: 900,
          left: wall(600, 900),
          right: [
            [600, 0],
            [600, 500],
            [400, 200],
            [700, 200],
            [600, 900],
          ],
        },
      ]),
      ['survey.stations[1].right self-crossing'],
    ],
    [
      'a side that doubles back on itself',
      surveyOf([
        {
          xMm: 0,
          left: [
            [600, 0],
            [600, 700],
            [600, 500],
            [500, 900],
          ],
          right: wall(600, 900),
        },
        { xMm: 900, left: wall(600, 900) },
      ]),
      ['survey.stations[0].left self-crossing'],
    ],
    [
      'a side from the roof down',
      surveyOf([
        { xMm: 0, left: wall(600, 900).toReversed(), right: wall(600, 900) },
        { xMm: 900, left: wall(600, 900) },
      ]),
      ['survey.stations[0].left roof-below-floor'],
    ],
    [
      'sides that have changed places',
      surveyOf([
        { xMm: 0, left: wall(-600, 900) },
        { xMm: 900, left: wall(600, 900) },
      ]),
      ['survey.stations[0] sides-cross'],
    ],
    [
      'sides that cross each other',
      surveyOf([
        {
          xMm: 0,
          left: [
            [600, 0],
            [-300, 450],
            [600, 900],
          ],
          right: [
            [600, 0],
            [200, 450],
            [600, 900],
          ],
        },
        { xMm: 900, left: wall(600, 900) },
      ]),
      ['survey.stations[0] sides-cross'],
    ],
    [
      'a section without area',
      surveyOf([
        { xMm: 0, left: wall(0, 900) },
        { xMm: 900, left: wall(600, 900) },
      ]),
      ['survey.stations[0] no-area'],
    ],
  ])('refuses %s, with its place', (_, survey, expected) => {
    expect(faults(survey)).toEqual(expected);
  });

  test('several faults come together', () => {
    const survey = surveyOf([
      { xMm: 0, left: wall(600, 900), right: [] },
      { xMm: -5, left: wall(0, 900) },
    ]);
    expect(faults(survey)).toEqual([
      'survey.stations[1].xMm out-of-order',
      'survey.stations[0].right too-few-points',
      'survey.stations[1] no-area',
    ]);
  });
});
