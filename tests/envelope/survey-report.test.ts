import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../src/base/index.ts';
import { loadSolids } from '../../src/bodies/index.ts';
import { type Design, emptyDesign, type Reading } from '../../src/design/index.ts';
import { createCargoSpace, surveyReport } from '../../src/envelope/index.ts';
import reference from '../reference/tape-networks.json' with { type: 'json' };
import { randomSurvey, rules } from './random-survey.ts';
import { boxSurvey } from './surveys.ts';

const solids = await loadSolids();

/** A reference network as marks and readings of a design: A at the origin, B on the x axis, all on the floor. */
const designOf = (index: number): Design => {
  const empty = emptyDesign('Reference', 'mm');
  const start: Readonly<Record<string, readonly [number, number]>> = {
    A: [0, 0],
    B: [1200, 0],
    C: [1200, 1000],
    D: [0, 1000],
    E: [0, 500],
    F: [1200, 500],
  };
  const id = (name: string) => `mark-${name.toLowerCase()}` as Reading['from'];
  const readings = reference.cases[index]?.readings ?? [];
  const names = Object.keys(start).filter((name) => readings.some(({ from, to }) => from === name || to === name));
  return {
    ...empty,
    survey: {
      ...empty.survey,
      marks: names.map((name) => ({
        id: id(name),
        name,
        at: [start[name]?.[0] ?? 0, start[name]?.[1] ?? 0, 0],
        fixed: [name === 'A', name === 'A' || name === 'B', true],
      })),
      readings: readings.map(({ id: own, from, to, mm, sigma }) => ({
        id: own.toLowerCase() as Reading['id'],
        kind: 'distance',
        from: id(from),
        to: id(to),
        at: null,
        value: mm,
        instrument: 'tape',
        sigma,
        note: '',
        leftOut: null,
      })),
    },
  };
};

describe('surveyReport', () => {
  it.each([0, 1, 2])('reference network %d comes out of a design to the stated tolerance', (index) => {
    const report = surveyReport(designOf(index), rules, null);
    const wanted = reference.cases[index]?.expect;
    if (!wanted) throw new Error('no such network');
    expect(report.redundancy).toBe(wanted.redundancy);
    wanted.readings.forEach((row, i) => {
      const got = report.readings[i];
      expect(got?.id).toBe(row.id.toLowerCase());
      expect(Math.abs((got?.adjustedMm ?? Number.NaN) - row.adjusted)).toBeLessThan(reference.tolerance.mm);
      expect(Math.abs((got?.residualMm ?? Number.NaN) - row.residual)).toBeLessThan(reference.tolerance.mm);
      expect(Math.abs((got?.redundancy ?? Number.NaN) - row.redundancy)).toBeLessThan(reference.tolerance.w);
      expect(Math.abs((got?.w ?? Number.NaN) - row.w)).toBeLessThan(reference.tolerance.w);
    });
  });

  it('names BD in the third network, nobody in the first, and says what would tell there', () => {
    const suspects = (index: number) =>
      surveyReport(designOf(index), rules, null).readings.filter(({ suspect }) => suspect !== false);
    expect(suspects(1)).toEqual([]);
    expect(suspects(2).map(({ id, suspect }) => [id, suspect])).toEqual([['bd', 'named']]);
    expect(suspects(0).every(({ suspect }) => suspect === 'doubt')).toBe(true);
    const first = surveyReport(designOf(0), rules, null);
    expect(first.consistent).toBe(false);
    // All six distances between four marks are read: only one of them once more can tell.
    expect(first.facts[0]).toMatchObject({ code: 'survey-undecided', holds: true });
    expect(first.facts[0]?.wouldTell?.repeats).not.toBeNull();
  });

  it('gives floor, volume, angles in degrees', () => {
    const { survey } = randomSurvey(seededRandom(8), { kind: 'lift-hatch' });
    const report = surveyReport({ ...emptyDesign('Marrow Hill', 'mm'), survey }, rules, null);
    const angle = report.readings.find(({ unit }) => unit === 'deg');
    expect(survey.readings.find(({ id }) => id === angle?.id)?.value).toBeCloseTo(angle?.readMm ?? 0, 9);
    expect(report.floor?.widthsMm).toHaveLength(3);
    expect(report.freeVolumeM3).toBeNull();
    const box = boxSurvey();
    const space = createCargoSpace(box, rules, solids);
    const plain = surveyReport(
      { ...emptyDesign('Marrow Hill', 'mm'), survey: box },
      rules,
      space.ok ? space.value : null,
    );
    // 1.2 × 0.9 × 1.5 = 1.62 m³; no readings to adjust.
    expect(plain.freeVolumeM3).toBeCloseTo(1.62, 9);
    expect(plain.floor).toMatchObject({ depthMm: 1500, widthsMm: [1200, 1200], slopeDeg: 0, rollDeg: 0 });
    expect(plain.readings).toEqual([]);
  });
});
