import fc from 'fast-check';
import { parseCsv } from 'hucre/csv';
import { describe, expect, it } from 'vitest';
import { ROUNDING_KG } from '../../src/base/index.ts';
import { houseRules } from '../../src/catalog/index.ts';
import type { FitOut } from '../../src/fitout/index.ts';
import { type CutListRow, cutList } from '../../src/shop/cut-list.ts';
import { cutListCsv } from '../../src/shop/cut-list-csv.ts';
import { markParts } from '../../src/shop/marks.ts';
import { catalog, fitOutOf, node, opening, panel, rules, twoColumns } from './fixture.ts';
import { anyFitOut } from './random-fit-out.ts';

const rowsOf = (fitout: FitOut, use = rules): readonly CutListRow[] =>
  cutList({ fitout, marks: markParts(fitout), catalog, rules: use });
const rowOf = (fitout: FitOut, mark: string): CutListRow => {
  const row = rowsOf(fitout).find((each) => each.mark === mark);
  if (!row) throw new Error(`no row ${mark}`);
  return row;
};

describe('cut list', () => {
  it('counts like parts together and says where each goes', () => {
    const row = rowOf(twoColumns(), 'A3');
    expect(row).toMatchObject({ quantity: 2, name: 'top, bottom', where: 'Main cabinet ×2', grain: 'length' });
    // 876.6 × 600 × 17.7 mm at 695 kg/m³ = 6.4701 kg, twice.
    expect(row.massEachKg).toBeCloseTo(6.4701, 3);
    expect(row.massTotalKg).toBeCloseTo(12.9403, 3);
  });

  it('names the opening that a part goes into', () => {
    expect(rowOf(twoColumns(), 'A6').where).toBe('Main cabinet, Bags');
    const unnamed = fitOutOf([panel('p', { origin: node('opening-7') })], {
      openings: [opening('opening-1'), opening('opening-7', { parent: node('opening-1') })],
    });
    expect(rowOf(unnamed, 'A1').where).toBe('Main cabinet, opening-7');
  });

  it('stacks by material, thick before thin, large before small', () => {
    expect(rowsOf(twoColumns()).map(({ mark }) => mark)).toEqual(['A3', 'A1', 'A2', 'A5', 'A6', 'A4']);
  });

  it('takes bands off the size to saw, and adds what is milled off before banding', () => {
    const bands = { l1: 'band-1', l2: 'band-1', w1: 'band-1', w2: null };
    const fitout = fitOutOf([panel('p', { bands })]);
    // Band 1 mm: length 700 − 1, width 600 − 1 − 1.
    expect(rowOf(fitout, 'A1')).toMatchObject({ finishedLength: 700, cutLength: 699, cutWidth: 598 });
    const milled = houseRules(catalog, [{ rule: 'edge-premill', value: 0.5, who: 'M', why: 'edge machine' }]);
    // 700 − 1 + 0.5 and 600 − 2 + 2 · 0.5.
    expect(rowsOf(fitout, milled)[0]).toMatchObject({ cutLength: 699.5, cutWidth: 599 });
  });

  it('says so when a band has no thickness, and takes nothing off for it', () => {
    const row = rowOf(
      fitOutOf([panel('p', { bands: { l1: 'band-unsized', l2: 'no-such', w1: null, w2: null } })]),
      'A1',
    );
    expect(row.cutWidth).toBe(600);
    expect(row.note).toContain('band band-unsized has no thickness');
    expect(row.note).toContain('band no-such has no thickness');
  });

  it('lists the work in the order of the bench', () => {
    expect(rowOf(twoColumns(), 'A1').operations).toEqual([
      { kind: 'dado', count: 2 },
      { kind: 'groove', count: 1 },
      { kind: 'drill', count: 6 },
    ]);
  });
});

describe('laws of the cut list', () => {
  it('quantities are the panels, masses are their masses, each size is positive and no larger than finished', () => {
    fc.assert(
      fc.property(anyFitOut, (fitout) => {
        const rows = rowsOf(fitout);
        const marks = markParts(fitout);
        expect(rows.reduce((sum, { quantity }) => sum + quantity, 0)).toBe(fitout.panels.length);
        expect([...marks.markOf.keys()].sort()).toEqual(fitout.panels.map(({ id }) => id).sort());
        expect(new Set(rows.map(({ mark }) => mark)).size).toBe(rows.length);
        const masses = (of: readonly number[]): number => of.reduce((sum, kg) => sum + kg, 0);
        expect(
          Math.abs(masses(rows.map((r) => r.massTotalKg)) - masses(fitout.panels.map((p) => p.massKg))),
        ).toBeLessThan(fitout.panels.length * ROUNDING_KG + ROUNDING_KG);
        for (const row of rows) {
          expect(row.cutLength).toBeGreaterThan(0);
          expect(row.cutWidth).toBeGreaterThan(0);
          expect(row.cutLength).toBeLessThanOrEqual(row.finishedLength);
          expect(row.cutWidth).toBeLessThanOrEqual(row.finishedWidth);
          const banded = Object.values(row.bands).some((band) => band !== null);
          if (!banded) expect([row.cutLength, row.cutWidth]).toEqual([row.finishedLength, row.finishedWidth]);
        }
      }),
      { seed: 8_141_502, numRuns: 60 },
    );
  });
});

describe('cut list file', () => {
  it('keeps its header for each unit', () => {
    const header = (units: 'in' | 'mm'): readonly string[] => parseCsv(cutListCsv([], units))[0]?.map(String) ?? [];
    expect(header('mm').slice(0, 11)).toEqual([
      'mark',
      'qty',
      'part',
      'where',
      'material',
      'thickness mm',
      'finished length mm',
      'finished width mm',
      'cut length mm',
      'cut width mm',
      'grain',
    ]);
    expect(header('in').filter((title) => title.endsWith(' in'))).toHaveLength(5);
    expect(header('in').filter((title) => !title.endsWith(' in'))).toEqual(header('mm'));
  });

  it('writes a tenth of a millimetre, and inches to 1/32 beside it', () => {
    const [header = [], ...rows] = parseCsv(cutListCsv(rowsOf(twoColumns()), 'in'));
    const top = rows.find(([mark]) => mark === 'A3') ?? [];
    const cell = (title: string): unknown => top[header.indexOf(title)];
    expect(cell('finished length mm')).toBe('876.6');
    // 876.6 / 25.4 = 34.5118 = 34 and 16.38/32, so 34 1/2.
    expect(cell('finished length in')).toBe('34 1/2');
    expect(cell('thickness mm')).toBe('17.7');
    // The band takes 1 mm off the width: 599.
    expect(cell('cut width mm')).toBe('599');
    expect(cell('operations')).toBe('dado 1, groove 1');
  });

  it('makes no formula of a hostile name', () => {
    const text = cutListCsv(rowsOf(fitOutOf([panel('p', { name: '=HYPERLINK("http://x")' })])), 'mm');
    expect(text).toContain(`"'=HYPERLINK(""http://x"")"`);
  });
});
