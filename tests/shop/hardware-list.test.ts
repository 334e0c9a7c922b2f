import { parseCsv } from 'hucre/csv';
import { describe, expect, it } from 'vitest';
import type { HardwareUse } from '../../src/fitout/index.ts';
import { hardwareCsv, hardwareList } from '../../src/shop/hardware-list.ts';
import { catalog, emptyFitOut, fitOutOf, node, opening, rules } from './fixture.ts';

const use = (id: string, changes: Partial<HardwareUse>): HardwareUse => ({
  id,
  origin: node('opening-2'),
  carcass: node('carcass-1'),
  from: 'hardware',
  item: 'latch-paddle',
  name: 'Paddle latch',
  quantity: 1,
  lengthMm: null,
  at: null,
  mover: null,
  ...changes,
});
const listOf = (hardware: readonly HardwareUse[]) =>
  hardwareList({
    fitout: fitOutOf([], {
      hardware,
      openings: [opening('opening-1'), opening('opening-2', { parent: node('opening-1'), name: 'Bags' })],
    }),
    catalog,
    rules,
  });

describe('hardware list', () => {
  it('is empty for an empty cabinet', () => {
    expect(hardwareList({ fitout: emptyFitOut, catalog, rules })).toEqual([]);
  });

  it('adds like pieces up and says where they go', () => {
    const [row] = listOf([use('a', {}), use('b', {}), use('c', { origin: node('opening-1') })]);
    expect(row).toMatchObject({ quantity: 3, spares: 0, fetch: 3, where: 'Main cabinet, Bags ×2; Main cabinet' });
    // 3 · 0.31 kg and 3 · 18.
    expect(row?.massKg).toBeCloseTo(0.93, 9);
    expect(row?.price).toBe(54);
  });

  it('keeps plates of different loads apart, and says what is engraved', () => {
    const plates = listOf([use('a', { safeLoadKg: 38 }), use('b', { safeLoadKg: 102 }), use('c', { safeLoadKg: 38 })]);
    expect(plates.map(({ quantity, note }) => [quantity, note])).toEqual([
      [2, 'engrave: Safe load 38 kg (83 lb), spread evenly. Lock it shut before driving.'],
      [1, 'engrave: Safe load 102 kg (224 lb), spread evenly. Lock it shut before driving.'],
    ]);
  });

  it('adds spares to small fixings only, and buys them too', () => {
    const [row] = listOf([use('a', { item: 'screw-4x40', quantity: 41 })]);
    // 5 % of 41 = 2.05, so 3; 44 · 0.06 = 2.64; mass of the 41 used: 0.164 kg.
    expect(row).toMatchObject({ quantity: 41, spares: 3, fetch: 44 });
    expect(row?.price).toBeCloseTo(2.64, 9);
    expect(row?.massKg).toBeCloseTo(0.164, 9);
  });

  it('keeps slides of different lengths apart and weighs each by its length', () => {
    const slide = { from: 'slide', item: 'slide-45', name: 'Side slide 45 kg' } as const;
    const rows = listOf([
      use('a', { ...slide, lengthMm: 500 }),
      use('b', { ...slide, lengthMm: 400 }),
      use('c', { ...slide, lengthMm: 500 }),
    ]);
    expect(rows.map(({ lengthMm, quantity, by }) => [lengthMm, quantity, by])).toEqual([
      [400, 1, 'pair'],
      [500, 2, 'pair'],
    ]);
    // 2 pairs · 0.5 m · 1.8 kg/m.
    expect(rows[1]?.massKg).toBeCloseTo(1.8, 9);
  });

  it('says so when the catalog does not know a piece', () => {
    const [row] = listOf([use('a', { item: 'no-such' })]);
    expect(row).toMatchObject({ massKg: 0, price: 0, note: 'not in the catalog: no mass, no price' });
  });

  it('writes figures as figures', () => {
    const [header = [], line = []] = parseCsv(hardwareCsv(listOf([use('a', { quantity: 2 })]), 'mm'));
    expect(line[header.indexOf('needed')]).toBe('2');
    expect(line[header.indexOf('mass kg')]).toBe('0.62');
    expect(line[header.indexOf('length mm')]).toBe('');
  });
});
