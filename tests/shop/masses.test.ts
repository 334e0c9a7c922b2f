import fc from 'fast-check';
import { parseCsv } from 'hucre/csv';
import { describe, expect, it } from 'vitest';
import { ROUNDING_KG } from '../../src/base/index.ts';
import type { MassItem } from '../../src/fitout/index.ts';
import { markParts } from '../../src/shop/marks.ts';
import { massesCsv, massTable } from '../../src/shop/masses.ts';
import { emptyFitOut, fitOutOf, node, panel } from './fixture.ts';
import { anyFitOut } from './random-fit-out.ts';

const mass = (id: string, massKg: number, at: MassItem['at'], changes: Partial<MassItem> = {}): MassItem => ({
  id,
  origin: node('carcass-1'),
  carcass: node('carcass-1'),
  kind: 'gear',
  name: id,
  massKg,
  sigmaKg: 0.3,
  at,
  mover: null,
  ...changes,
});

describe('mass table', () => {
  it('finds the centre of all masses and adds spreads as independent', () => {
    const masses = [
      mass('pack', 3, [100, 0, 0]),
      mass('lamp', 1, [300, 40, 8], { sigmaKg: 0.4, kind: 'device', carcass: null }),
    ];
    const { total, carcasses, kinds } = massTable({ ...emptyFitOut, masses }, markParts(emptyFitOut));
    // (3 · 100 + 1 · 300) / 4 = 150; 40 / 4 = 10; 8 / 4 = 2; √(0.3² + 0.4²) = 0.5.
    expect(total.massKg).toBe(4);
    expect(total.at).toEqual([150, 10, 2]);
    expect(total.sigmaKg).toBeCloseTo(0.5, 12);
    expect(carcasses.map(({ name, massKg }) => [name, massKg])).toEqual([
      ['carcass-1', 3],
      ['outside the cabinet', 1],
    ]);
    expect(kinds.map(({ name, massKg }) => [name, massKg])).toEqual([
      ['gear', 3],
      ['device', 1],
    ]);
  });

  it('gives no centre where nothing weighs anything', () => {
    expect(massTable(emptyFitOut, markParts(emptyFitOut)).total).toEqual({
      name: 'total',
      massKg: 0,
      sigmaKg: 0,
      at: null,
    });
  });

  it('gives cut parts their mark, and keeps negative places as figures', () => {
    const fitout = fitOutOf([panel('p', { name: '@shelf' })]);
    const moved = { ...fitout, masses: fitout.masses.map((item) => ({ ...item, at: [-12.34, -5, 7] as const })) };
    const [header = [], line = []] = parseCsv(massesCsv(massTable(moved, markParts(moved))));
    const cell = (title: string): unknown => line[header.indexOf(title)];
    expect([cell('mark'), cell('name'), cell('x forward mm')]).toEqual(['A1', "'@shelf", '-12.3']);
  });

  it('adds up to the masses of the fit-out, by row, by kind and by carcass', () => {
    fc.assert(
      fc.property(anyFitOut, (fitout) => {
        const table = massTable(fitout, markParts(fitout));
        const whole = fitout.masses.reduce((sum, { massKg }) => sum + massKg, 0);
        for (const part of [table.rows, table.kinds, table.carcasses]) {
          const sum = part.reduce((all, { massKg }) => all + massKg, 0);
          expect(Math.abs(sum - whole)).toBeLessThanOrEqual(ROUNDING_KG * (1 + fitout.masses.length));
        }
      }),
      { seed: 1_618_034, numRuns: 40 },
    );
  });
});
