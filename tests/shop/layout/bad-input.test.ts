import { describe, expect, test } from 'vitest';
import { createImprover, type LayoutJob, sayLayout, validateLayout } from '../../../src/shop/layout/index.ts';
import { part, plainJob } from './jobs.ts';

const text = (mm: number): string => `${mm} mm`;

const solve = (job: LayoutJob, turns = 50) => {
  const improver = createImprover(job, 1);
  improver.step(turns);
  return improver.best();
};

const good = part('good', 600, 400, 2);

describe('bad input is named, the rest still comes', () => {
  const cases: readonly [string, LayoutJob, string, string][] = [
    [
      'a part larger than any sheet',
      plainJob([good, part('big', 3000, 400)]),
      'larger-than-every-sheet',
      '1 of big (3000 mm × 400 mm) is missing: it is larger than every sheet; the largest offers 2440 mm × 1220 mm after trimming.',
    ],
    [
      'a grain-locked part that fits only turned',
      plainJob([good, part('tall', 1000, 2000, 1, { grain: 'length' })]),
      'fits-only-turned',
      '1 of tall (1000 mm × 2000 mm) is missing: it fits only turned, and its grain forbids that; the largest sheet offers 2440 mm × 1220 mm after trimming.',
    ],
    [
      'a material without sheets',
      plainJob([good, part('steel', 300, 200, 3, { material: 'steel' })]),
      'no-stock-of-material',
      '3 of steel (300 mm × 200 mm) are missing: no sheet of steel is in the stock list.',
    ],
    [
      'a size that is none',
      plainJob([good, part('none', Number.NaN, 200)]),
      'bad-size',
      '1 of none (NaN mm × 200 mm) is missing: its length, width or quantity is not a number above zero.',
    ],
  ];
  test.each(cases)('%s', (_, job, reason, sentence) => {
    const layout = solve(job);
    expect(layout.unplaced.map((one) => one.reason)).toEqual([reason]);
    expect(sayLayout(layout, text)).toContain(sentence);
    expect(layout.sheets.flatMap((sheet) => sheet.parts.map(({ mark }) => mark))).toEqual(['good', 'good']);
  });

  test('zero stock: nothing laid out, everything named', () => {
    const job = plainJob([good], { stock: [{ name: 's', length: 2440, width: 1220, quantity: 0, price: 1 }] });
    const layout = solve(job);
    expect(layout.sheets).toEqual([]);
    expect(layout.unplaced.map(({ reason, count }) => [reason, count])).toEqual([['stock-used-up', 2]]);
    // A row that is used up is as it should be: what is missing for it has been said.
    expect(layout.notes).toEqual([]);
  });

  test('short stock: one sheet filled, what is missing is counted', () => {
    // a sheet of 1000 × 1000 takes four of 500 × 500; five were asked for
    const job = plainJob([part('q', 500, 500, 5)], {
      stock: [{ name: 's', length: 1000, width: 1000, quantity: 1, price: 1 }],
    });
    const layout = solve(job);
    expect(validateLayout(job, layout)).toEqual([]);
    expect(layout.sheets[0]?.parts).toHaveLength(4);
    expect(layout.unplaced.map(({ mark, count, reason }) => [mark, count, reason])).toEqual([
      ['q', 1, 'stock-used-up'],
    ]);
  });

  test('negative kerf is not used, and said so', () => {
    const layout = solve(plainJob([good], { kerf: -3 }));
    expect(sayLayout(layout, text)).toContain('The setting kerf is not a length of zero or more and was not used.');
    expect(layout.sheets[0]?.parts).toHaveLength(2);
  });

  test('nothing to cut', () => {
    expect(solve(plainJob([])).sheets).toEqual([]);
  });

  test('5,000 parts come out clean', () => {
    const parts = Array.from({ length: 100 }, (_, i) => part(`p${i}`, 200 + 7 * i, 100 + 3 * i, 50));
    const job = plainJob(parts, { kerf: 3 });
    const layout = solve(job, 5);
    expect(layout.sheets.reduce((sum, sheet) => sum + sheet.parts.length, 0)).toBe(5000);
    expect(layout.unplaced).toEqual([]);
  }, 60_000);
});

describe('the same seed and steps give the same layout', () => {
  const job = plainJob(
    Array.from({ length: 12 }, (_, i) => part(`p${i}`, 300 + 67 * i, 200 + 31 * i, 3)),
    { kerf: 3 },
  );
  test('in one go or in pieces', () => {
    const once = createImprover(job, 9);
    once.step(1200);
    const pieces = createImprover(job, 9);
    for (let i = 0; i < 12; i++) pieces.step(100);
    expect(JSON.stringify(pieces.best())).toBe(JSON.stringify(once.best()));
  });

  test('stopping keeps the best: price never rises', () => {
    const improver = createImprover(job, 4);
    let price = improver.best().price;
    for (let i = 0; i < 20; i++) {
      improver.step(50);
      const now = improver.best().price;
      expect(now).toBeLessThanOrEqual(price);
      price = now;
    }
    expect(validateLayout(job, improver.best())).toEqual([]);
  });
});

describe('offcuts in hand', () => {
  test('are used before a sheet is bought', () => {
    const job = plainJob([part('a', 700, 500)], {
      stock: [
        { name: 'board', length: 2440, width: 1220, quantity: null, price: 80 },
        { name: 'left', length: 800, width: 600, quantity: 1, price: 0, offcut: true },
      ],
    });
    const layout = solve(job);
    expect(layout.sheets.map(({ stock }) => stock)).toEqual(['left']);
    expect(layout.price).toBe(0);
  });
});

describe('a router', () => {
  test('is not bound to full cuts, and has small parts inside', () => {
    // 60 + 10 + 20 + 10 + 60 = 160 along: the small part stands between the large ones
    const job = plainJob(
      [part('large', 60, 100, 2, { grain: 'length' }), part('small', 20, 100, 1, { grain: 'length' })],
      {
        stock: [{ name: 's', length: 160, width: 100, quantity: null, price: 1 }],
        cut: 'router',
        kerf: 10,
      },
    );
    const layout = solve(job);
    expect(validateLayout(job, layout)).toEqual([]);
    const [sheet] = layout.sheets;
    expect(sheet?.tree).toBeNull();
    expect([...(sheet?.parts ?? [])].sort((a, b) => a.x - b.x).map(({ mark, x }) => [mark, x])).toEqual([
      ['large', 0],
      ['small', 70],
      ['large', 100],
    ]);
  });

  test('a shear takes nothing away, whatever the kerf says', () => {
    const job = plainJob([part('half', 500, 1000, 2, { grain: 'length' })], {
      stock: [{ name: 's', length: 1000, width: 1000, quantity: null, price: 1 }],
      cut: 'shear',
      kerf: 3,
    });
    expect(solve(job).sheets).toHaveLength(1);
  });
});
