import { describe, expect, test } from 'vitest';
import type { Design } from '../../../src/design/index.ts';
import { releaseHolds } from '../../../src/inspection/index.ts';
import { nameOfPart, sayFinding } from '../../../src/says/index.ts';
import { boxSurvey } from '../../envelope/surveys.ts';
import { designWith, findingsOf, inspectScene, linesOf, rules, vehicleWith } from '../fixture.ts';
import { edgeScene, offsets, panelUpTo, sectionsAt, withLastStarted } from '../scenes/survey.ts';

const said = (survey: Design['survey'], rule: string) => {
  const [finding] = findingsOf(inspectScene({ survey }), rule);
  if (!finding) throw new Error(`no ${rule}`);
  return sayFinding(finding, 'mm', nameOfPart(designWith({ survey }), null));
};

describe('a reading that the others contradict', () => {
  const survey = offsets({ value: 600 }, { value: 601 }, { value: 640 });

  test('is named, with what the others make it and how well they know it', () => {
    const inspection = inspectScene({ survey });
    // The other two make it (600 + 601) / 2 = 600.5; 640 is 39.5 off.
    expect(linesOf(inspection, 'survey-misread')).toEqual(['stop reading-3 39.5']);
    const facts = findingsOf(inspection, 'survey-misread')[0]?.facts;
    // A mean of two is known to sigma / sqrt 2, doubled for 95 %.
    expect(facts).toMatchObject({ others: 2, read: 640, readUnit: 'mm' });
    expect(facts?.made).toBeCloseTo(600.5, 6);
    expect(facts?.spread).toBeCloseTo((2 * rules.value('tape-sigma')) / Math.SQRT2, 6);
  });

  test('is said by its number and its words', () => {
    const { title, detail } = said(survey, 'survey-misread');
    expect(title).toBe('Reading 3, centre line to door post is likely misread');
    expect(detail).toMatch(/^The other 2 readings put it at 600\.5 mm ± [\d.]+ mm; 640 mm is written\./);
  });

  test('says so once', () => {
    expect(linesOf(inspectScene({ survey }), 'survey-closure-error')).toEqual([]);
  });
});

describe('readings that disagree', () => {
  test('two alone cannot tell which is wrong, and a third is asked for', () => {
    const survey = offsets({ value: 600 }, { value: 640 });
    const [finding, ...more] = findingsOf(inspectScene({ survey }), 'survey-closure-error');
    expect(more).toEqual([]);
    expect(finding?.severity).toBe('stop');
    expect([...(finding?.parts ?? [])].sort()).toEqual(['reading-1', 'reading-2']);
    // Each lies 20 from their mean, which shows half of the error: 20 / 0.5 = 40.
    expect(finding?.value).toBeCloseTo(40, 6);
    const { title, detail } = said(survey, 'survey-closure-error');
    expect(title).toBe('One of 2 readings is wrong, and the readings cannot tell which');
    expect(detail).toMatch(/To tell, take reading [12], centre line to door post once more, set up afresh\.$/);
  });

  test.each([
    // Two loosely known readings: each residual is half the difference, so chance alone may explain it.
    { second: 605, lines: [] },
    { second: 609, lines: ['caution reading-1 4.5', 'caution reading-2 4.5'] },
    { second: 614, lines: ['stop reading-1 7', 'stop reading-2 7'] },
  ])('600 and $second by a loose tape', ({ second, lines }) => {
    const survey = offsets({ value: 600, sigma: 4 }, { value: second, sigma: 4 });
    const inspection = inspectScene({ survey });
    expect([...linesOf(inspection, 'survey-closure-error')].sort()).toEqual(lines);
    expect(linesOf(inspection, 'survey-misread')).toEqual([]);
    const limits = new Set(findingsOf(inspection, 'survey-closure-error').map(({ limit }) => limit));
    expect([...limits]).toEqual(lines.length === 0 ? [] : [second === 614 ? 6 : 3]);
  });
});

describe('the lowest edge of a closure above ground', () => {
  test('that does not fit hinge, trim and angle is a caution, and holds no packet', () => {
    // Hinge 900 above the floor, open to the level, the floor 800 above ground: 1700. 25 is allowed.
    expect(linesOf(edgeScene(1720), 'survey-closure-error')).toEqual([]);
    const inspection = edgeScene(1760);
    expect(linesOf(inspection, 'survey-closure-error')).toEqual(['caution hatch 60']);
    expect(releaseHolds(inspection)).toEqual([]);
    const [finding] = findingsOf(inspection, 'survey-closure-error');
    if (!finding) throw new Error('no finding');
    const { title, detail } = sayFinding(finding, 'mm', () => 'hatch');
    expect(title).toBe('The lowest edge of the hatch does not fit its hinge, trim and angle');
    expect(detail).toContain('1700 mm above ground; 1760 mm was taped');
  });
});

describe('readings that nothing checks', () => {
  test('are one note', () => {
    expect(linesOf(inspectScene({ survey: offsets({ value: 600 }) }), 'survey-single-reading')).toEqual([
      'note reading-1 1',
    ]);
    expect(said(offsets({ value: 600 }), 'survey-single-reading').title).toBe('One reading is checked by no other');
  });

  test('a second one checks the first', () => {
    const inspection = inspectScene({ survey: offsets({ value: 600 }, { value: 601 }) });
    expect(linesOf(inspection, 'survey-single-reading')).toEqual([]);
  });
});

describe('start values', () => {
  const ids = (survey: Design['survey']) =>
    findingsOf(inspectScene({ survey }), 'start-values').map((finding) => finding.parts);

  test('of a whole survey are said once', () => {
    expect(ids(boxSurvey({ startValues: true }))).toEqual([[]]);
  });

  test('left in a measured survey are named', () => {
    const box = boxSurvey();
    const stations = box.stations.map((station, i) => (i === 0 ? { ...station, startValues: true } : station));
    expect(ids(box)).toEqual([]);
    expect(ids({ ...box, stations })).toEqual([['station-1']]);
  });
});

describe('what a panel rests on', () => {
  const survey = sectionsAt([0, 700, 1500]);
  const started = withLastStarted(survey);

  test.each([
    { depth: 690, says: ['caution station-3 1'], holds: [] },
    { depth: 710, says: ['stop station-3 1'], holds: ['start-values'] },
  ])('start values forward of 700 and a panel up to $depth', ({ depth, says, holds }) => {
    const inspection = panelUpTo(depth, started);
    expect(linesOf(inspection, 'start-values')).toEqual(says);
    expect(releaseHolds(inspection).map(({ rule }) => rule)).toEqual(holds);
  });

  test('nothing holds the release of a measured vehicle', () => {
    expect(releaseHolds(panelUpTo(710, survey))).toEqual([]);
  });

  test('the words of a stop say that it is not for cutting', () => {
    const [finding] = findingsOf(panelUpTo(710, started), 'start-values');
    if (!finding) throw new Error('no finding');
    const { title, detail } = sayFinding(finding, 'mm', nameOfPart(designWith({ survey: started }), null));
    expect(title).toBe('Start values of a vehicle class are left: station 3');
    expect(detail).toContain('not for cutting');
  });
});

describe('ratings and slip', () => {
  const linesFor = (parts: Record<string, unknown>) =>
    linesOf(inspectScene({ design: { vehicle: vehicleWith(parts) } }), 'ratings-contradict');

  test('axles must carry what the vehicle may weigh', () => {
    // 1,500 + 1,600 = 3,100 of 3,200.
    expect(linesFor({ ratings: { grossKg: 3200, frontAxleKg: 1500, rearAxleKg: 1600 } })).toEqual([
      'stop vehicle.ratings.grossKg 3200',
    ]);
    expect(linesFor({ ratings: { grossKg: 3100, frontAxleKg: 1500, rearAxleKg: 1600 } })).toEqual([]);
  });

  test('what is only unknown is left to the figures that are missing', () => {
    const vehicle = vehicleWith({ seats: [], fuel: null, slip: { frontKg: 1200, rearKg: 1000 } });
    const inspection = inspectScene({ design: { vehicle } });
    expect(linesOf(inspection, 'ratings-contradict')).toEqual([]);
    expect(findingsOf(inspection, 'figures-missing').map(({ facts }) => facts.figure)).toContain('seats');
  });

  test('a slip of one side only is a caution', () => {
    expect(linesFor({ slip: { frontKg: 1200, rearKg: 1000, leftKg: 1100 } })).toEqual(['caution vehicle.slip 1']);
  });
});
