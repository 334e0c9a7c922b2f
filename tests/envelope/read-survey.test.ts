import { describe, expect, it } from 'vitest';
import { distance, seededRandom } from '../../src/base/index.ts';
import { loadSolids, shellIsClosed } from '../../src/bodies/index.ts';
import type { Reading, Survey } from '../../src/design/index.ts';
import {
  createCargoSpace,
  gapHalfWidth,
  networkProblems,
  readSurvey,
  startSurvey,
  surveyFacts,
  surveyHolds,
  surveyPlan,
} from '../../src/envelope/index.ts';
import { randomSurvey, rules } from './random-survey.ts';

const solids = await loadSolids();
const measured = randomSurvey(seededRandom(8), { kind: 'lift-hatch' });
const perfect = randomSurvey(seededRandom(9), { kind: 'lift-hatch', noise: 0 });

const withReadings = (survey: Survey, change: (reading: Reading, i: number) => Reading | null): Survey => ({
  ...survey,
  readings: survey.readings.flatMap((reading, i) => change(reading, i) ?? []),
});
const indexOf = (survey: Survey, note: string): number => survey.readings.findIndex((reading) => reading.note === note);
const codes = (survey: Survey): readonly string[] => networkProblems(survey, rules).map(({ code }) => code);

describe('readSurvey', () => {
  it('perfect readings give the vehicle back, and the sections follow their marks', () => {
    const read = readSurvey(perfect.survey, rules);
    for (const [mark, truth] of perfect.truth) {
      const found = read.points.get(mark);
      expect(found && distance(found, truth), mark).toBeLessThan(0.001);
    }
    const first = read.stations[0]?.left[1];
    expect(first?.standing).toBe('adjusted');
    expect(first?.at[0]).toBeCloseTo(perfect.truth.get('mark-rear-belt-left')?.[1] ?? 0, 3);
    expect(read.survey.stations[0]?.right[1]?.[0]).toBeCloseTo(
      -(perfect.truth.get('mark-rear-belt-right')?.[1] ?? 0),
      3,
    );
  });

  it('hinge and angle of the hatch follow their marks; the ends of the hinge stay', () => {
    const read = readSurvey(perfect.survey, rules);
    const [hinge, closed, open] = ['hinge', 'edge-closed', 'edge-open'].map((end) =>
      perfect.truth.get(`mark-hatch-${end}`),
    );
    const hatch = read.survey.closures[0];
    if (!hinge || !closed || !open || !hatch) throw new Error('no hatch');
    expect(hatch.hinge.from[0]).toBeCloseTo(hinge[0], 3);
    expect(hatch.hinge.from[2]).toBeCloseTo(hinge[2], 3);
    expect(hatch.hinge.from[1]).toBe(perfect.survey.closures[0]?.hinge.from[1]);
    // The angle between two lines of the side view, from their dot product.
    const [a, b] = [closed, open].map((end) => [end[0] - hinge[0], end[2] - hinge[2]] as const);
    const cosine =
      ((a?.[0] ?? 0) * (b?.[0] ?? 0) + (a?.[1] ?? 0) * (b?.[1] ?? 0)) /
      (Math.hypot(...(a ?? [])) * Math.hypot(...(b ?? [])));
    expect(hatch.opensDeg).toBeCloseTo((Math.acos(cosine) * 180) / Math.PI, 3);
  });

  it('makes a closed cargo space whose faces are known as the readings know them', () => {
    const made = createCargoSpace(measured.survey, rules, solids);
    if (!made.ok) throw new Error(JSON.stringify(made.error));
    const space = made.value;
    expect(shellIsClosed(space.skin)).toBe(true);
    expect(space.faceSigmaMm).toHaveLength(space.skin.triangles.length / 3);
    // Never better than the vehicle spread of 2 mm alone, and better than a single tape reading laid over it.
    for (const sigma of space.faceSigmaMm) {
      expect(sigma).toBeGreaterThan(2);
      expect(sigma).toBeLessThanOrEqual(Math.hypot(1.5, 2) * 1.0001);
    }
    const wall = gapHalfWidth(space, rules, { skinAt: [space.bounds.max[0] / 2, space.bounds.max[1], 300] });
    // 2 · √(σ² + 1²) with 2 < σ ≤ 2.5: between 4.47 and 5.39.
    expect(wall).toBeGreaterThan(4.47);
    expect(wall).toBeLessThan(5.39);
  });

  it('start values: nothing is measured, every face is loose, everything is held', () => {
    const start = startSurvey('mid-utility', 'lift-hatch');
    const made = createCargoSpace(start, rules, solids);
    if (!made.ok) throw new Error(JSON.stringify(made.error));
    expect(made.value.sigmaMm).toBeCloseTo(Math.hypot(40, 2), 9);
    const facts = surveyFacts(start, rules);
    // Three sections, two wheelhouses, one hatch.
    expect(facts.map(({ code }) => code)).toEqual(Array(6).fill('survey-start-value'));
    expect(surveyHolds(facts, 100, 500)).toHaveLength(6 - 1);
  });

  it('measured sections no longer hold; wheelhouses and hatch still do until someone measures them', () => {
    const facts = surveyFacts(measured.survey, rules).filter(({ code }) => code === 'survey-start-value');
    expect(facts.flatMap(({ parts }) => parts)).toEqual(['closure-1', 'obstacle-1', 'obstacle-2']);
  });

  it('says when a dimension hangs on a single reading', () => {
    // Of the belt mark at the rear left all but its offset and its height are left out.
    const kept = withReadings(measured.survey, (reading) => {
      const touches = [reading.from, reading.to].includes('mark-rear-belt-left' as Reading['from']);
      return !touches || reading.kind === 'offset' || reading.kind === 'height' ? reading : null;
    });
    const single = surveyFacts(kept, rules).filter(({ code }) => code === 'survey-single-reading');
    const notes = single.map(({ parts }) => kept.readings.find(({ id }) => id === parts[0])?.note);
    expect(notes).toEqual(['belt, centre line to left', 'height of the belt mark left']);
    // It shapes the room from the rear as far as the middle section.
    expect(single[0]).toMatchObject({ fromX: 0, toX: measured.survey.stations[1]?.xMm, holds: false });
  });

  it('names a planted misreading, holds the release where it counts, and no longer once it is left out', () => {
    const at = indexOf(measured.survey, 'width at the shoulder');
    const wrong = withReadings(measured.survey, (reading, i) =>
      i === at ? { ...reading, value: reading.value + 25 } : reading,
    );
    const [first] = surveyFacts(wrong, rules);
    expect(first).toMatchObject({ code: 'survey-misreading', parts: [wrong.readings[at]?.id], holds: true, fromX: 0 });
    expect(Math.abs((first?.valueMm ?? 0) - 25)).toBeLessThan(5);
    const mended = withReadings(wrong, (reading, i) =>
      i === at ? { ...reading, leftOut: { who: 'J. Orrin', why: 'misread' } } : reading,
    );
    expect(surveyFacts(mended, rules).filter(({ code }) => code === 'survey-misreading')).toEqual([]);
  });
});

describe('networkProblems', () => {
  const sane = measured.survey;
  const broken = (i: number, change: Partial<Reading>): Survey =>
    withReadings(sane, (reading, k) => (k === i ? { ...reading, ...change } : reading));
  const tape = sane.readings.findIndex(({ kind }) => kind === 'distance');

  it('has nothing to say of a sound survey', () => {
    expect(networkProblems(sane, rules)).toEqual([]);
  });

  it.each<readonly [string, Partial<Reading>, string]>([
    ['a negative tape reading', { value: -640 }, 'negative'],
    ['a zero', { value: 0 }, 'zero'],
    ['a reading that is no number', { value: Number.NaN }, 'not-a-number'],
    ['a mark that is not there', { to: 'mark-9' as Reading['from'] }, 'no-such-mark'],
    ['no second mark', { to: null }, 'missing'],
  ])('%s', (_, change, code) => {
    const [problem] = networkProblems(broken(tape, change), rules);
    expect(problem).toMatchObject({ code });
    expect(problem?.at).toMatch(`survey.readings[${tape}]`);
    expect(problem?.expected).toBeTruthy();
  });

  it('the same mark at both ends', () => {
    const { from } = sane.readings[tape] ?? {};
    expect(codes(broken(tape, { to: from ?? null }))).toEqual(['same-mark']);
  });

  it('a row pasted twice counts once; with a note it is a second reading', () => {
    const copy = sane.readings[tape];
    if (!copy) throw new Error('no reading');
    const twice: Survey = { ...sane, readings: [...sane.readings, { ...copy, id: 'reading-900' as Reading['id'] }] };
    expect(codes(twice)).toEqual(['duplicate']);
    expect(readSurvey(twice, rules).verdict?.adjustment.readings).toHaveLength(sane.readings.length);
    const again: Survey = {
      ...sane,
      readings: [...sane.readings, { ...copy, id: 'reading-900' as Reading['id'], note: 'second time' }],
    };
    expect(codes(again)).toEqual([]);
  });

  it('feet and inches swapped are told by what they do to the reading', () => {
    const at = indexOf(sane, 'width at the belt');
    const feet = Math.floor((sane.readings[at]?.value ?? 0) / 304.8);
    const rest = (sane.readings[at]?.value ?? 0) - feet * 304.8;
    const inches = Math.floor(rest / 25.4);
    // 5 ft 2.x in written as 2 ft 5.x in.
    const swapped = inches * 304.8 + feet * 25.4 + (rest - inches * 25.4);
    const problems = networkProblems(broken(at, { value: swapped }), rules);
    expect(problems.map(({ code }) => code)).toEqual(['feet-inches-swapped']);
    expect(problems[0]?.expected).toMatch(/^about \d+ mm; read it again$/);
  });

  it('marks that hang nowhere', () => {
    const ids = ['mark-801', 'mark-802'] as Reading['from'][];
    const marks = ids.map((id, i) => ({
      id,
      name: '',
      at: [100 * i, 0, 900] as const,
      fixed: [false, false, false] as const,
    }));
    const between: Reading = {
      ...(sane.readings[tape] as Reading),
      id: 'reading-801' as Reading['id'],
      from: ids[0] as Reading['from'],
      to: ids[1] as Reading['from'],
    };
    const adrift: Survey = { ...sane, marks: [...sane.marks, ...marks], readings: [...sane.readings, between] };
    const problems = networkProblems(adrift, rules);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatchObject({ code: 'disconnected', got: 'mark-801, mark-802' });
    expect(readSurvey(adrift, rules).points.size).toBe(readSurvey(sane, rules).points.size);
  });

  it('a coordinate that nothing holds: what to measure', () => {
    const kept = withReadings(sane, (reading) => {
      const touches = [reading.from, reading.to].includes('mark-rear-roof-left' as Reading['from']);
      return !touches || reading.kind === 'offset' || reading.kind === 'across' ? reading : null;
    });
    const problems = networkProblems(kept, rules);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatchObject({ code: 'not-held', got: 'rear roof left, up' });
    expect(problems[0]?.expected).toContain('a height');
    // The section keeps its start value there, and says so.
    const point = readSurvey(kept, rules).stations[0]?.left.at(-1);
    expect(point?.standing).toBe('start');
  });

  it('a net without a frame gives as a whole', () => {
    const free: Survey = {
      ...sane,
      marks: sane.marks.map((mark) => ({ ...mark, fixed: [false, false, false] as const })),
    };
    const only = withReadings(free, (reading) => (reading.kind === 'distance' ? reading : null));
    expect(codes(only)).toContain('net-gives');
  });
});

describe('a station out of a scan', () => {
  it('is known as well as a scan knows, not as the tape does', () => {
    const loose = measured.survey.stations.map(({ leftMarks: _left, rightMarks: _right, ...own }) => ({
      ...own,
      startValues: false,
      source: 'scan' as const,
    }));
    const point = readSurvey({ ...measured.survey, sigmaMm: 9, stations: loose }, rules).stations[0]?.left[0];
    expect(point?.standing).toBe('scan');
    expect(point?.covariance[0]).toBe(4); // scan-sigma of 2 mm, squared
  });
});

describe('surveyPlan', () => {
  it.each(['lift-hatch', 'hatch-glass', 'barn-door', 'tailgate', 'cap-door', 'side-door'] as const)(
    '%s: every reading is between its marks, numbered, drawn, and braced',
    (kind) => {
      for (const vehicle of ['large-utility', 'mid-utility', 'pickup-cap', 'van'] as const) {
        const plan = surveyPlan(kind, vehicle);
        const marks = new Set(plan.marks.map(({ id }) => id));
        expect(marks.size).toBe(plan.marks.length);
        expect(plan.steps.map(({ number }) => number)).toEqual(plan.steps.map((_, i) => i + 1));
        for (const step of plan.steps) {
          expect(step.why.length).toBeGreaterThan(5);
          if (!step.reading) continue;
          for (const end of [step.reading.from, step.reading.to, step.reading.at])
            if (end) expect(marks.has(end)).toBe(true);
          const figure = plan.figures.find(({ id }) => id === step.figure);
          expect(figure?.labels.some(({ text }) => text === String(step.number))).toBe(true);
        }
      }
    },
  );

  it('without its checks a plan still holds every mark; with them every reading is checked', () => {
    const survey = randomSurvey(seededRandom(5), { kind: 'barn-door', noise: 0 });
    const checks = new Set(
      surveyPlan('barn-door', 'van')
        .steps.filter(({ must }) => !must)
        .map(({ name }) => name),
    );
    const bare = withReadings(survey.survey, (reading) => (checks.has(reading.note) ? null : reading));
    expect(networkProblems(bare, rules)).toEqual([]);
    expect(readSurvey(survey.survey, rules).verdict?.unchecked).toEqual([]);
  });
});
