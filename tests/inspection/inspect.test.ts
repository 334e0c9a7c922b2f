import { describe, expect, test } from 'vitest';
import { gearListSchema } from '../../src/design/index.ts';
import { openStops, RULE_IDS } from '../../src/inspection/index.ts';
import { boxSurvey, HATCH } from '../envelope/surveys.ts';
import { type BodyRow, body, inspectScene, linesOf, vehicleWith } from './fixture.ts';

const POKING: BodyRow = { id: 'block', min: [300, -400, 0], max: [900, 610, 600] };
const NEAR: BodyRow = { id: 'bag', kind: 'gear', min: [300, -400, 20], max: [900, -300, 896] };

const scene = {
  survey: boxSurvey({ closures: [HATCH] }),
  design: {
    gear: gearListSchema.parse([{ id: 'gear-1', name: 'Bag', sizeMm: [1, 1, 1], massKg: 1, massFrom: 'measured' }]),
    vehicle: vehicleWith({ seats: [] }),
  },
  fitout: { bodies: [body(POKING), body(NEAR)] },
};

describe('inspect', () => {
  test('stops first, then cautions, then notes; the counts of what was looked at', () => {
    const inspection = inspectScene(scene);
    expect(inspection.findings.map(({ severity, rule }) => `${severity} ${rule}`).slice(0, 3)).toEqual([
      'stop body-in-space',
      'stop body-body',
      'caution body-in-space',
    ]);
    const severities = inspection.findings.map(({ severity }) => severity);
    expect(severities).toEqual(
      severities.toSorted((a, b) => ['stop', 'caution', 'note'].indexOf(a) - ['stop', 'caution', 'note'].indexOf(b)),
    );
    expect(inspection.checked).toMatchObject({ rules: RULE_IDS.length, bodies: 2, movers: 0, moverPairs: 0 });
  });

  test('an accepted finding stays with its severity, and no longer counts as open', () => {
    const entry = {
      rule: 'body-in-space',
      parts: ['carcass-1'],
      who: 'R. Alder',
      why: 'trim is cut back',
      on: '2026-03-01',
    };
    const open = inspectScene(scene);
    const accepted = inspectScene({ ...scene, design: { ...scene.design, accepted: [entry] } });
    expect(openStops(open).map(({ rule }) => rule)).toEqual(['body-in-space', 'body-body']);
    expect(openStops(accepted).map(({ rule }) => rule)).toEqual(['body-body']);
    expect(accepted.findings[0]).toMatchObject({
      severity: 'stop',
      accepted: { who: 'R. Alder', why: 'trim is cut back', on: '2026-03-01' },
    });
    expect(accepted.findings.map(({ rule }) => rule)).toEqual(open.findings.map(({ rule }) => rule));
  });

  test('a finding about other parts is not the one that was accepted', () => {
    const entry = { rule: 'body-in-space', parts: ['carcass-2'], who: 'A', why: 'b', on: '' };
    expect(openStops(inspectScene({ ...scene, design: { ...scene.design, accepted: [entry] } }))).toHaveLength(2);
  });

  test('same input, same bytes', () => {
    expect(JSON.stringify(inspectScene(scene))).toBe(JSON.stringify(inspectScene(scene)));
  });

  test('without a cargo space the inspection says that fit was not checked', () => {
    expect(linesOf(inspectScene({ survey: null, fitout: scene.fitout }), 'space-missing')).toEqual(['caution  0']);
    expect(linesOf(inspectScene({ survey: null }), 'space-missing')).toEqual(['note  0']);
    expect(linesOf(inspectScene({ survey: null, fitout: scene.fitout }), 'body-in-space')).toEqual([]);
  });

  test('start values are never silent', () => {
    // Both sections of the box hold start values.
    expect(linesOf(inspectScene({ survey: boxSurvey({ startValues: true }) }), 'start-values')).toEqual(['caution  2']);
    expect(linesOf(inspectScene({}), 'start-values')).toEqual([]);
  });
});
