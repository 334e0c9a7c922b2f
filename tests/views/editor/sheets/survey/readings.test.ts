import { describe, expect, it } from 'vitest';
import { houseRules, standardCatalog } from '../../../../../src/catalog/index.ts';
import { readSurvey, surveyPlan } from '../../../../../src/envelope/index.ts';
import { planProgress } from '../../../../../src/views/editor/sheets/survey/plan-progress.ts';
import {
  readingRows,
  readingsSummary,
  withoutSuspects,
} from '../../../../../src/views/editor/sheets/survey/readings-rows.ts';
import { sayDoubt } from '../../../../../src/views/editor/sheets/survey/readings-said.ts';
import { placeLabels, readingViews } from '../../../../../src/views/editor/sheets/survey/readings-views.ts';
import { boxSurvey } from '../../../../envelope/surveys.ts';

const rules = houseRules(standardCatalog(), []);

/** One mark of which only the way from the centre line is open, read several times. */
const offsets = (...values: readonly number[]) =>
  boxSurvey({
    marks: [{ id: 'post', name: 'door post', at: [300, 600, 0], fixed: [true, false, true] }],
    readings: values.map((value, i) => ({ id: `reading-${i + 1}`, kind: 'offset', from: 'post', value, note: `${i}` })),
  });

const look = (...values: readonly number[]) => {
  const survey = offsets(...values);
  const read = readSurvey(survey, rules);
  return { survey, read, rows: readingRows(survey, read) };
};

describe('the rows of the table', () => {
  it('show how far each lies off in tolerances', () => {
    const { rows, read } = look(600, 603);
    // Each lies 1.5 from the mean of 601.5; a tape is good to 1.5.
    expect(rows.map(({ tolerances }) => Math.round(tolerances * 1000) / 1000)).toEqual([-1, 1]);
    expect(rows.map(({ adjusted }) => adjusted)).toEqual([expect.closeTo(601.5, 6), expect.closeTo(601.5, 6)]);
    expect(readingsSummary(rows, read)).toBe('2 taken · 1 to spare · all agree');
  });

  it('show a misread one against the others, and those without it', () => {
    const survey = offsets(600, 603, 640);
    const read = readSurvey(survey, rules);
    const rest = withoutSuspects(survey, read);
    const rows = readingRows(survey, read, rest && readSurvey(rest, rules));
    // The others make it 601.5: 38.5 / 1.5 = 25.67 tolerances off; they lie 1 tolerance to each side.
    expect(rows.map(({ adjusted }) => Math.round((adjusted ?? 0) * 1000) / 1000)).toEqual([601.5, 601.5, 601.5]);
    expect(rows.map(({ tolerances }) => Math.round(tolerances * 100) / 100)).toEqual([-1, 1, 25.67]);
    expect(rows.map(({ suspect }) => suspect)).toEqual([null, null, 'named']);
  });

  it('leave a reading that is put aside out of it', () => {
    const survey = offsets(600, 603, 640);
    const readings = survey.readings.map((reading, i) =>
      i === 2 ? { ...reading, leftOut: { who: 'R. Vale', why: 'tape slipped' } } : reading,
    );
    const read = readSurvey({ ...survey, readings }, rules);
    const rows = readingRows({ ...survey, readings }, read);
    expect(rows[2]).toMatchObject({ adjusted: null, suspect: null });
    expect(readingsSummary(rows, read)).toBe('3 taken · 1 left out · 1 to spare · all agree');
  });
});

describe('what is said of readings that do not agree', () => {
  it('names the one that the others contradict', () => {
    const { rows, read, survey } = look(600, 601, 640);
    const said = sayDoubt(rows, read, survey, 'mm');
    expect(said?.kind).toBe('named');
    expect(said?.title).toBe('Reading 3, centre line to door post, is likely misread.');
    // 2 · 1.5 / √2 = 2.1 mm.
    expect(said?.detail).toMatch(/^The other 2 readings put it at 600\.5 mm ± 2\.1 mm; you wrote 640 mm\./);
    expect(readingsSummary(rows, read)).toContain('one likely misread');
  });

  it('asks for a further one where they cannot tell', () => {
    const { rows, read, survey } = look(600, 640);
    const said = sayDoubt(rows, read, survey, 'mm');
    expect(said?.kind).toBe('doubt');
    expect(said?.title).toBe('One of readings 1 and 2 is wrong.');
    expect(said?.detail).toContain('To tell, take reading');
  });

  it('says nothing while all agree', () => {
    const { rows, read, survey } = look(600, 601);
    expect(sayDoubt(rows, read, survey, 'mm')).toBeNull();
  });
});

describe('the drawing', () => {
  it('shows the floor from above, each depth from the rear, the rest from the side', () => {
    const at = (id: string, x: number, y: number, z: number) => ({
      id,
      name: id,
      at: [x, y, z],
      fixed: [true, true, true],
    });
    const survey = boxSurvey({
      marks: [at('a', 0, 600, 0), at('b', 1500, -600, 0), at('c', 0, 600, 900), at('d', 1500, 600, 900)],
      readings: [
        { id: 'diagonal', kind: 'distance', from: 'a', to: 'b', value: 1921 },
        { id: 'post', kind: 'height', from: 'a', to: 'c', value: 900 },
        { id: 'roof', kind: 'along', from: 'c', to: 'd', value: 1500 },
      ],
    });
    const points = new Map(survey.marks.map(({ id, at: place }) => [id as string, place]));
    const views = readingViews(readingRows(survey, readSurvey(survey, rules)), points);
    expect(views.map(({ key, rows }) => [key, rows.map(({ reading }) => reading.id)])).toEqual([
      ['plan', ['diagonal']],
      ['depth-1', ['post']],
      ['side', ['roof']],
    ]);
  });

  it('puts no figure on another, and leaves off one that has no room', () => {
    const line = (id: string) => ({ id, text: '1234567890', from: [0, 0] as const, to: [100, 0] as const });
    // Ten letters of 5 are 50 wide: of the spots 60, 35, 75, 22 and 50 along 100 only the first two stand clear by 50 from none.
    expect(placeLabels([line('a'), line('b')], 10, 5).map(({ id }) => id)).toEqual(['a']);
    // Of 3 wide letters, 30 wide in all: 60 and 22 are 38 apart.
    expect(placeLabels([line('a'), line('b')], 10, 3).map(({ at }) => at[0])).toEqual([60, 22]);
  });
});

describe('the plan of what to measure', () => {
  it('counts what is taken, whatever class it was taken for', () => {
    const plan = surveyPlan('lift-hatch', 'van');
    const [first, second] = plan.steps.filter(({ reading }) => reading !== null);
    const empty = planProgress(plan, boxSurvey());
    expect(empty.taken).toBe(0);
    expect(empty.all).toBe(plan.steps.filter(({ reading }) => reading !== null).length);
    const readings = [first, second].flatMap((step, i) =>
      step?.reading ? [{ id: `reading-${i + 1}`, ...step.reading, value: 1 }] : [],
    );
    const progress = planProgress(plan, boxSurvey({ readings }));
    expect(progress.taken).toBe(2);
    const must = [first, second].filter((step) => step?.must).length;
    expect(progress.mustLeft).toBe(empty.mustLeft - must);
  });
});
