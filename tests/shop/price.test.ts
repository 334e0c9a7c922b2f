import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { houseRules } from '../../src/catalog/index.ts';
import type { FitOut, HardwareUse } from '../../src/fitout/index.ts';
import { cutList } from '../../src/shop/cut-list.ts';
import { hardwareList } from '../../src/shop/hardware-list.ts';
import { markParts } from '../../src/shop/marks.ts';
import { type Price, priceCsv, priceOf } from '../../src/shop/price/index.ts';
import { sheetJobs } from '../../src/shop/sheet-jobs.ts';
import { layoutSheets } from '../../src/shop/sheet-layouts.ts';
import { catalog, design, fitOutOf, node, panel, rules, twoColumns } from './fixture.ts';
import { readCsvFile } from './python-readers.ts';
import { anyFitOut } from './random-fit-out.ts';

const use = (item: string, quantity: number): HardwareUse => ({
  id: `use-${item}`,
  origin: node('carcass-1'),
  carcass: node('carcass-1'),
  from: 'hardware',
  item,
  name: item,
  quantity,
  lengthMm: null,
  at: null,
  mover: null,
});

const priced = (fitout: FitOut, changes: Parameters<typeof houseRules>[1] = []): Price => {
  const held = houseRules(catalog, changes);
  const rows = cutList({ fitout, marks: markParts(fitout), catalog, rules: held });
  const layouts = layoutSheets(sheetJobs(rows, catalog, held, []), { seed: 1, steps: 20 });
  return priceOf({
    design: design(),
    fitout,
    catalog,
    rules: held,
    layouts,
    hardware: hardwareList({ fitout, catalog, rules: held }),
  });
};

const change = (rule: string, value: number) => ({ rule, value, who: 'R. Mapp', why: 'test' });
const amount = (price: Price, what: string): number | undefined =>
  price.lines.find((line) => line.what === what || line.from.includes(what))?.amount;

describe('price', () => {
  it('of two boards, twenty screws and a latch, line by line', () => {
    const fitout = fitOutOf(
      [panel('a'), panel('b', { width: 500, bands: { l1: 'band-1', l2: null, w1: null, w2: null } })],
      {
        hardware: [use('screw-4x40', 20), use('latch-paddle', 1)],
      },
    );
    const price = priced(fitout);
    // One sheet at 100; 20 screws and one spare (5 % of 20) at 0.06; a latch at 18.
    expect(amount(price, 'Birch plywood 18 mm, 2440 × 1220')).toBe(100);
    expect(amount(price, 'catalog screw-4x40')).toBe(1.26);
    expect(amount(price, 'catalog latch-paddle')).toBe(18);
    // 10 % of 100 + 1.26 + 18 = 11.926.
    expect(amount(price, 'house rule markup-share')).toBe(11.93);
    // Shop hours at 60: handling 0.25; two parts sawn 0.2; 0.7 m banded 0.035; both faces of 0.42 and 0.35 m², 1.54 m²
    // shown and counted as 1.5, 0.375; two parts assembled 0.3; one carcass carried in 2; weighed once 0.5.
    expect(amount(price, 'hours-sheet-handling,')).toBe(15);
    expect(amount(price, 'hours-cut-part,')).toBe(12);
    expect(amount(price, 'hours-band-metre,')).toBe(2.1);
    expect(amount(price, 'hours-finish-m2,')).toBe(22.5);
    expect(amount(price, 'hours-assemble-part,')).toBe(18);
    expect(amount(price, 'hours-install,')).toBe(120);
    expect(amount(price, 'hours-weigh,')).toBe(30);
    // Office hours at 50: interview 1, survey 2, layout 8, one review 1.
    expect(price.groups.find(({ group }) => group === 'office hours')).toEqual({
      group: 'office hours',
      hours: 12,
      amount: 600,
    });
    // 100 + 19.26 + 11.93 + (15 + 12 + 2.1 + 22.5 + 18 + 120 + 30 = 219.6) + 600.
    expect(price.total).toBe(950.79);
    // 15 % of it.
    expect(price.sigma).toBe(142.62);
  });

  it('says what moves it, and means it', () => {
    const fitout = twoColumns();
    const price = priced(fitout);
    for (const [id, rule, by] of [
      ['rate-labour', 'rate-labour', 66],
      ['rate-design', 'rate-design', 55],
      ['markup-share', 'markup-share', 0.11],
    ] as const) {
      const told = price.movers.find((mover) => mover.id === id)?.delta ?? Number.NaN;
      // Each line is rounded to its cent.
      expect(Math.abs(priced(fitout, [change(rule, by)]).total - price.total - told)).toBeLessThan(0.1);
    }
    expect(price.movers.map(({ delta }) => delta)).toEqual(
      price.movers.map(({ delta }) => delta).toSorted((a, b) => b - a),
    );
  });

  it('names what it does not hold: records without a price, parts on no sheet, rates below zero', () => {
    const fitout = fitOutOf([panel('a'), panel('long', { length: 3000 })], { hardware: [use('no-such-screw', 4)] });
    const price = priced(fitout, [change('rate-labour', -60)]);
    expect(price.missing).toEqual([
      'Not in the catalog and without a price: no-such-screw.',
      '1 part lies on no sheet: its material is not in the price.',
      'rate-labour (house rule rate-labour) is below zero and was counted as nothing.',
    ]);
    for (const line of price.lines) expect(line.amount).toBeGreaterThanOrEqual(0);
  });

  it('adds up as printed, for any fit-out', () => {
    fc.assert(
      fc.property(anyFitOut, (fitout) => {
        const price = priced(fitout);
        const cents = (values: readonly { readonly amount: number }[]): number =>
          values.reduce((sum, each) => sum + Math.round(each.amount * 100), 0);
        expect(cents(price.lines)).toBe(Math.round(price.total * 100));
        expect(cents(price.groups)).toBe(Math.round(price.total * 100));
        const rows = readCsvFile(priceCsv(price));
        const column = rows[0]?.indexOf('amount') ?? -1;
        const of = (test: (group: string) => boolean): number =>
          rows
            .slice(1)
            .reduce((sum, row) => (test(row[0] ?? '') ? sum + Math.round(Number(row[column]) * 100) : sum), 0);
        expect(of((group) => group !== 'sum of group' && group !== 'total')).toBe(of((group) => group === 'total'));
        // Count times price of each, to half a cent, and hours times their rate.
        for (const { count, hours, each, amount: shown } of price.lines)
          expect(Math.abs((hours ?? count) * each - shown)).toBeLessThanOrEqual(0.005 + 1e-9);
      }),
      { seed: 271_828, numRuns: 20 },
    );
  });

  it('takes the shop’s own rates', () => {
    expect(rules.value('rate-labour')).toBe(60);
    const [usual, dear] = [priced(twoColumns()), priced(twoColumns(), [change('rate-labour', 120)])];
    const work = ({ groups }: Price): number => groups.find(({ group }) => group === 'shop hours')?.amount ?? 0;
    expect(work(dear)).toBeCloseTo(2 * work(usual), 1);
  });
});
