import { describe, expect, it } from 'vitest';
import { addGear, emptyDesign } from '../../../../src/design/index.ts';
import type { Finding } from '../../../../src/inspection/index.ts';
import { countByStep, stepFacts } from '../../../../src/views/editor/frame/step-facts.ts';
import { STEPS } from '../../../../src/views/editor/state/store.ts';
import type { Judgement } from '../../../../src/views/editor/worker/api.ts';
import { NO_FIT_OUT } from '../solve-nothing.ts';

const finding = (severity: Finding['severity'], parts: readonly string[], accepted = false): Finding => ({
  rule: 'gear-in-room',
  severity,
  parts,
  value: 0,
  limit: 0,
  unit: 'mm',
  uncertainty: 0,
  at: null,
  source: '',
  status: '',
  margin: null,
  facts: {},
  waysOut: [],
  accepted: accepted ? { who: 'a', why: 'b', on: '' } : null,
});

const judgementOf = (findings: readonly Finding[]): Judgement => ({
  edit: 0,
  ms: 0,
  order: { rows: [], gear: [] },
  space: { ok: false, error: [] },
  inspection: {
    findings,
    measured: [],
    consulted: {},
    cases: [],
    weighed: null,
    checked: { rules: 0, bodies: 0, pairs: 0, movers: 0, moverPairs: 0 },
  },
});

const empty = emptyDesign('any', 'in');
const { design } = addGear(empty, [
  {
    name: 'rope bag',
    kind: null,
    sizeMm: [300, 200, 100],
    massKg: 3,
    massFrom: 'measured',
    massSigmaKg: 0,
    needs: [],
    firstDue: false,
    user: '',
    note: '',
    place: null,
  },
]);

const facts = (findings: readonly Finding[]) =>
  new Map(
    stepFacts(STEPS, design, NO_FIT_OUT, judgementOf(findings), countByStep(findings, design)).map((fact) => [
      fact.step,
      fact,
    ]),
  );

describe('what stands against a step', () => {
  it('counts a finding at the step of what it is about first, and at the inspection', () => {
    const of = facts([finding('stop', ['gear-1/body', 'opening-1'])]);
    expect([of.get('gear')?.against.stop, of.get('inspect')?.against.stop, of.get('cabinet')?.against.stop]).toEqual([
      1, 1, 0,
    ]);
  });

  it('counts a finding without a part at the inspection alone', () => {
    const of = facts([finding('caution', [])]);
    expect(STEPS.filter((step) => (of.get(step)?.against.caution ?? 0) > 0)).toEqual(['inspect']);
  });

  it('no longer counts what somebody accepted', () => {
    expect(facts([finding('stop', ['gear-1'], true)]).get('inspect')?.against.stop).toBe(0);
  });

  it('says what is done, and what to do first in an empty design', () => {
    expect(facts([]).get('gear')?.says).toBe('0 of 1 stowed');
    expect(stepFacts(STEPS, empty, NO_FIT_OUT, null, countByStep([], empty)).map((fact) => fact.says)).toEqual([
      'not measured yet',
      'no gear yet',
      'nothing built yet',
      'nothing to check yet',
      'nothing to cut yet',
      'draft, not sent',
    ]);
  });
});
