import { describe, expect, it } from 'vitest';
import type { Finding, Inspection, Measured } from '../../../../src/inspection/index.ts';
import { marginFacts, tapePlace } from '../../../../src/views/editor/frame/margin-facts.ts';

const measured = (part: Partial<Measured>): Measured => ({
  rule: 'body-in-space',
  margin: 'gap',
  parts: [],
  value: 10,
  limit: 6,
  slack: 4,
  unit: 'mm',
  uncertainty: 0,
  source: 'shop judgement',
  status: 'shop habit',
  at: null,
  ...part,
});

const finding = (part: Partial<Finding>): Finding => ({
  rule: 'body-in-space',
  severity: 'stop',
  parts: [],
  value: 0,
  limit: 6,
  unit: 'mm',
  uncertainty: 0,
  at: null,
  source: '',
  status: '',
  margin: 'gap',
  facts: {},
  waysOut: [],
  accepted: null,
  ...part,
});

const inspection = (findings: readonly Finding[], all: readonly Measured[]): Inspection => ({
  findings,
  measured: all,
  consulted: {},
  cases: [],
  weighed: null,
  checked: { rules: 0, bodies: 0, pairs: 0, movers: 0, moverPairs: 0 },
});

const fact = (of: Inspection | null, margin: string) => marginFacts(of).find((one) => one.margin === margin);

describe('the worst of each margin', () => {
  it('has nine, and those without a check say so', () => {
    expect(marginFacts(null)).toHaveLength(9);
    expect(fact(null, 'power')).toMatchObject({ worst: null, severity: 'good', finding: null, checks: 0 });
  });

  it('is the one with least to spare as a part of its limit', () => {
    // 4 of 6 against 4 of 40: the second has less to spare.
    const tight = measured({ rule: 'carcass-gap', limit: 40, value: 44, slack: 4 });
    const shown = fact(inspection([], [measured({}), tight]), 'gap');
    expect(shown?.worst).toBe(tight);
    expect(shown).toMatchObject({ severity: 'good', checks: 2 });
  });

  it('counts the uncertainty of a value against it', () => {
    // 4 of 6 to spare, surely; 5 of 6, but known to ± 3 only.
    const loose = measured({ parts: ['b'], value: 11, slack: 5, uncertainty: 3 });
    expect(fact(inspection([], [measured({ parts: ['a'] }), loose]), 'gap')?.worst).toBe(loose);
  });

  it('puts a stop before a caution that has less to spare', () => {
    const stopped = measured({ parts: ['a'], value: 5, slack: -1 });
    const cautioned = measured({ parts: ['b'], value: 0, slack: -6 });
    const of = inspection(
      [finding({ severity: 'caution', parts: ['b'] }), finding({ severity: 'stop', parts: ['a'] })],
      [cautioned, stopped],
    );
    expect(fact(of, 'gap')).toMatchObject({ worst: stopped, severity: 'stop', finding: 1 });
  });
});

describe('a piece of tape', () => {
  it('puts a value at its limit on the long tick', () => {
    const { limit, value } = tapePlace(measured({ value: 6, limit: 6, slack: 0 }));
    expect(value).toBeCloseTo(limit, 12);
  });

  it('has the good side on the right for at least, on the left for at most', () => {
    const atLeast = tapePlace(measured({ value: 10, limit: 6, slack: 4 }));
    expect(atLeast.goodSide).toBe('right');
    expect(atLeast.value).toBeGreaterThan(atLeast.limit);
    const atMost = tapePlace(measured({ value: 90, limit: 100, slack: 10 }));
    expect(atMost.goodSide).toBe('left');
    expect(atMost.value).toBeLessThan(atMost.limit);
  });

  it('stays on the tape however far off the value is', () => {
    for (const slack of [1e6, -1e6]) {
      const { value } = tapePlace(measured({ value: 6 + slack, limit: 6, slack }));
      expect(value).toBeGreaterThan(0);
      expect(value).toBeLessThan(1);
    }
  });
});
