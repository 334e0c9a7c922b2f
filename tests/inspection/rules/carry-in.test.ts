import { describe, expect, it } from 'vitest';
import { type CarriedCarcass, type CarryPath, inspect } from '../../../src/inspection/index.ts';
import { catalog, designWith, findingsOf, fitOut, rules } from '../fixture.ts';

/** A way of one leg past the striker, known to ± 2. */
const way = (leastGap: number): CarryPath => {
  const leg = {
    leastGap,
    nearest: 'striker',
    uncertainty: 2,
    at: [
      [0, 0, 0],
      [leastGap, 0, 0],
    ] as const,
  } as const;
  return { poses: [], leastGap, nearest: 'striker', uncertainty: 2, legs: [leg] };
};

const carried = (more: Partial<CarriedCarcass>): CarriedCarcass => ({
  carcass: 'carcass-1',
  path: way(14),
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
    const tight = carried({ path: way(4) });
    expect(findings(tight)).toMatchObject([
      {
        severity: 'caution',
        value: 4,
        limit: 10,
        uncertainty: 2,
        at: [
          [0, 0, 0],
          [4, 0, 0],
        ],
        facts: { what: 'tight', by: 'striker' },
      },
    ]);
  });

  it('says what the survey cannot tell: 11 of 10 known to ± 2, and not 12', () => {
    expect(findings(carried({ path: way(11) }))).toMatchObject([{ severity: 'caution', value: 11, uncertainty: 2 }]);
    expect(findings(carried({ path: way(12) }))).toEqual([]);
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
