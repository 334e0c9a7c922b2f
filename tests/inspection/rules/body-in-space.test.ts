import { describe, expect, test } from 'vitest';
import type { Vec3 } from '../../../src/base/index.ts';
import { boxSurvey, HATCH, surveyOf } from '../../envelope/surveys.ts';
import { type BodyRow, body, findingsOf, inspectScene, linesOf } from '../fixture.ts';
import { inspectBoxes } from '../scenes/vehicle.ts';

// Half width at 95 %: 2 √(1.5² + 2² + 1²) = 5.385 mm. Gap to trim 6 mm.
const UNCERTAINTY = 2 * Math.sqrt(1.5 ** 2 + 2 ** 2 + 1 ** 2);

const carcassTo = (max: Vec3, min: Vec3 = [300, -400, 0]): BodyRow => ({ id: 'block', min, max });

describe('body-in-space', () => {
  test('a carcass that stands clear on the floor is fine, and its least gap is measured', () => {
    const inspection = inspectBoxes([carcassTo([900, 400, 600])]);
    expect(linesOf(inspection, 'body-in-space')).toEqual([]);
    // Walls at ±600, body at ±400: 200 on both sides; roof 300 above; the floor bears.
    const [taken] = inspection.measured.filter(({ rule }) => rule === 'body-in-space');
    expect(taken).toMatchObject({ margin: 'gap', parts: ['carcass-1'], limit: 6 });
    expect(taken?.value).toBeCloseTo(200, 9);
    expect(taken?.slack).toBeCloseTo(194, 9);
  });

  test.each<[string, number, readonly string[]]>([
    ['11.5 mm: 5.5 over the limit, more than the uncertainty', 588.5, []],
    ['11 mm: 5 over the limit, within the uncertainty', 589, ['caution carcass-1 11']],
    ['1 mm: 5 under the limit, within the uncertainty', 599, ['caution carcass-1 1']],
    ['0.5 mm: 5.5 under the limit, beyond the uncertainty', 599.5, ['stop carcass-1 0.5']],
    ['touching', 600, ['stop carcass-1 0']],
    ['poking out by 10', 610, ['stop carcass-1 -10']],
  ])('%s', (_, left, expected) => {
    const inspection = inspectBoxes([carcassTo([900, left, 600])]);
    expect(linesOf(inspection, 'body-in-space')).toEqual(expected);
    for (const finding of findingsOf(inspection, 'body-in-space')) {
      expect(finding.uncertainty).toBeCloseTo(UNCERTAINTY, 9);
      expect(finding).toMatchObject({ limit: 6, unit: 'mm', source: 'shop judgement', status: 'shop habit' });
      // The feeler runs across to the left wall.
      expect(finding.at?.map((point) => point[1])).toEqual([expect.closeTo(left, 9), expect.closeTo(600, 9)]);
    }
  });

  test('the floor bears, but a carcass let into it is stopped', () => {
    expect(linesOf(inspectBoxes([carcassTo([900, 400, 600], [300, -400, -4])]), 'body-in-space')).toEqual([
      'stop carcass-1 -4',
    ]);
  });

  test('a wheelhouse of the sections bears a carcass that stands on it and stops one beside it', () => {
    const stepped = [
      [450, 0],
      [450, 250],
      [600, 250],
      [600, 900],
    ] as const;
    const survey = surveyOf([
      { xMm: 0, left: stepped },
      { xMm: 1500, left: stepped },
    ]);
    expect(linesOf(inspectBoxes([carcassTo([900, 560, 600], [300, 0, 250])], survey), 'body-in-space')).toEqual([]);
    expect(linesOf(inspectBoxes([carcassTo([900, 447, 600], [300, 0, 0])], survey), 'body-in-space')).toEqual([
      'caution carcass-1 3',
    ]);
  });

  test('the worst panel speaks for its carcass; gear and plug rooms speak for themselves', () => {
    const inspection = inspectBoxes([
      { id: 'carcass-1/left', min: [300, 400, 0], max: [900, 597, 600] },
      { id: 'carcass-1/top', min: [300, -400, 600], max: [900, 595, 618] },
      { id: 'gear-1', kind: 'gear', min: [400, 0, 18], max: [600, 200, 899] },
      { id: 'radio-1/plugs', kind: 'plug-room', min: [900, 0, 300], max: [1501, 50, 350], origin: 'radio-1' as never },
    ]);
    expect(linesOf(inspection, 'body-in-space')).toEqual([
      'stop radio-1 -1',
      'caution gear-1 1',
      'caution carcass-1 3',
    ]);
    expect(findingsOf(inspection, 'body-in-space')[2]?.facts).toMatchObject({ body: 'carcass-1/left' });
  });

  test('behind an opening closure there is no trim; past the last measured section there is nothing known', () => {
    const withHatch = boxSurvey({ closures: [HATCH] });
    const flush = carcassTo([900, 400, 600], [0, -400, 0]);
    expect(linesOf(inspectBoxes([flush]), 'body-in-space')).toEqual(['stop carcass-1 0']);
    expect(linesOf(inspectBoxes([flush], withHatch), 'body-in-space')).toEqual([]);
    const out = carcassTo([900, 400, 600], [-12, -400, 0]);
    expect(linesOf(inspectBoxes([out], withHatch), 'body-in-space')).toEqual(['stop carcass-1 -12']);
  });

  test('what hangs on a closure or on the trim is left out', () => {
    const survey = boxSurvey({ closures: [HATCH] });
    const rows: readonly BodyRow[] = [
      { id: 'speaker', kind: 'device', carcass: null, mover: 'hatch', min: [-20, 0, 500], max: [40, 100, 600] },
      { id: 'lamp', kind: 'device', carcass: null, min: [400, 0, 880], max: [500, 100, 910] },
    ];
    expect(inspectBoxes(rows, survey).measured.filter(({ rule }) => rule === 'body-in-space')).toEqual([]);
  });

  test('a changed house rule is the limit, and its finding says who changed it', () => {
    const inspection = inspectScene({
      design: { houseRules: [{ rule: 'gap-trim', value: 20, who: 'R. Alder', why: 'soft trim' }] },
      fitout: { bodies: [body(carcassTo([900, 585, 600]))] },
    });
    expect(findingsOf(inspection, 'body-in-space')).toMatchObject([
      { severity: 'caution', value: expect.closeTo(15, 9), limit: 20, status: 'shop habit, changed by R. Alder' },
    ]);
  });
});
