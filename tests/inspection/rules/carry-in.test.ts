import { describe, expect, it } from 'vitest';
import { type CarriedCarcass, inspect } from '../../../src/inspection/index.ts';
import { catalog, designWith, findingsOf, fitOut, rules } from '../fixture.ts';

const carried = (more: Partial<CarriedCarcass>): CarriedCarcass => ({
  carcass: 'carcass-1',
  path: { poses: [], leastGap: 14, nearest: 'striker' },
  comesOutAlone: true,
  alone: null,
  stuck: null,
  outMm: 900,
  middle: [0, 0, 0],
  massKg: 40,
  ...more,
});

const findings = (own: CarriedCarcass) =>
  findingsOf(
    inspect({
      design: designWith(),
      space: null,
      fitout: fitOut(),
      catalog,
      rules,
      carry: { wantedMm: 10, carcasses: [own], mounts: [] },
    }),
    'carry-in',
  );

describe('carry-in', () => {
  it('a way with 14 to spare says nothing, one with 4 is short of 10', () => {
    expect(findings(carried({}))).toEqual([]);
    const tight = carried({ path: { poses: [], leastGap: 4, nearest: 'striker' } });
    expect(findings(tight)).toMatchObject([
      { severity: 'caution', value: 4, limit: 10, facts: { what: 'tight', by: 'striker' } },
    ]);
  });

  it('no way found says how far it came and on what it stuck', () => {
    expect(findings(carried({ path: null, stuck: { mm: 120, by: 'strut' } }))).toMatchObject([
      { severity: 'caution', value: 120, limit: 900, facts: { what: 'not-found', by: 'strut' } },
    ]);
  });

  it('what is shut in by what comes after it is a note', () => {
    expect(findings(carried({ comesOutAlone: false }))).toMatchObject([
      { severity: 'note', facts: { what: 'shut-in' } },
    ]);
  });
});
