import { describe, expect, it } from 'vitest';
import { standardCatalog } from '../../src/catalog/index.ts';
import type { Body } from '../../src/fitout/index.ts';
import { carcass, fitted, panelOf, solved } from './designs.ts';
import { bodyBox } from './measures.ts';

const bay = (rows: readonly (readonly string[])[], rest: Readonly<Record<string, unknown>> = {}) =>
  solved([
    carcass(
      fitted('opening-1', {
        kind: 'charger-bay',
        rows: rows.map((row, r) => row.map((device, i) => ({ id: `device-${r + 1}-${i + 1}`, device }))),
        vent: 'vent-louvre-60',
        aboveMm: 120,
        ...rest,
      }),
    ),
  ]);
const boxOf = (fitOut: ReturnType<typeof bay>, id: string) =>
  bodyBox(fitOut.bodies.find((body) => body.id === id) as Body);

describe('a charger bay', () => {
  it('stands its chargers in rows from the back, plugs behind them, the spare width shared out as air', () => {
    const fitOut = bay([['charger-radio-6'], ['charger-radio-1', 'charger-meter']]);
    expect(fitOut.problems).toEqual([]);
    // 525 × 230 × 125 with 45 of plug and bend, before vents of 15: its rear stands at 581.6 − 15 − 45.
    const bank = boxOf(fitOut, 'device-1-1/body');
    expect([1, 2].map((axis) => Math.round((bank.max[axis] ?? 0) - (bank.min[axis] ?? 0)))).toEqual([230, 125]);
    expect(bank.max[1]).toBeCloseTo(521.6, 9);
    // (864.6 − 525) / 2 on each side
    expect(bank.min[0]).toBeCloseTo(17.7 + 169.8, 9);
    // The next row: 291.6 − 35 of plug and bend; 85 and 110 wide, (864.6 − 195) / 3 of air.
    const single = boxOf(fitOut, 'device-2-1/body');
    expect(single.max[1]).toBeCloseTo(256.6, 9);
    expect(single.min[0]).toBeCloseTo(17.7 + 223.2, 9);
    expect(boxOf(fitOut, 'device-2-2/body').min[0]).toBeCloseTo(17.7 + 2 * 223.2 + 85, 9);
    expect(boxOf(fitOut, 'device-1-1/plug').max[1]).toBeCloseTo(566.6, 9);
  });

  it('weighs and draws what its chargers do', () => {
    const fitOut = bay([['charger-radio-6', 'charger-radio-1']]);
    const devices = fitOut.masses.filter(({ kind }) => kind === 'device');
    // 4.5 + 0.4 kg
    expect(devices.reduce((sum, { massKg }) => sum + massKg, 0)).toBeCloseTo(4.9, 9);
    expect(fitOut.devices.map(({ device, opening }) => [device, opening])).toEqual([
      ['charger-radio-6', 'opening-1'],
      ['charger-radio-1', 'opening-1'],
    ]);
  });

  it('has as many vents low and high in its back as the power asks for', () => {
    const amps = standardCatalog().devices.get('charger-radio-6')?.amps.run ?? Number.NaN;
    // Both at once: watts / 50 × 6000 mm² in each row, a louvre has 6000.
    const inRow = Math.ceil((2 * amps * 13.8 * 6000) / 50 / 6000);
    const fitOut = bay([['charger-radio-6'], ['charger-radio-6']]);
    const vents = fitOut.hardware.filter(({ item }) => item === 'vent-louvre-60');
    expect(vents.length).toBe(2 * inRow);
    const holes = panelOf(fitOut, 'carcass-1/back').cuts.filter(({ kind }) => kind === 'cutout');
    expect(holes.length).toBe(2 * inRow);
    const [first] = holes;
    if (first?.kind !== 'cutout' || first.outline.shape !== 'rectangle') throw new Error('no hole');
    const { from, to } = first.outline;
    // 150 × 100 less 10 of edge all round
    expect([to[0] - from[0], to[1] - from[1]].map(Math.round).sort((a, b) => a - b)).toEqual([80, 130]);
    expect(bay([['charger-radio-6']], { vent: null }).hardware.some(({ item }) => item.startsWith('vent'))).toBe(false);
  });

  it('asks for its rows, its vents and the room above', () => {
    // Across 525 + 2 × 15; deep 230 + 45 + 15; up 125 + 120, which two vents of 100 and three edges of 10 do not reach.
    const [bank] = bay([['charger-radio-6']], { aboveMm: 120 }).openings;
    expect(bank?.least).toEqual([555, 290, 245]);
  });

  it('gives gear the room above its tallest charger, before the vents', () => {
    const [room] = bay([['charger-radio-6', 'charger-radio-1']]).rooms;
    // 664.6 − 125 up, 581.6 − 15 deep
    expect(room?.size[2]).toBeCloseTo(539.6, 9);
    expect(room?.size[1]).toBeCloseTo(566.6, 9);
  });

  it('says which charger or vent the catalog does not have', () => {
    expect(bay([['charger-x']]).problems).toMatchObject([{ code: 'unknown-device', because: ['charger-x'] }]);
    expect(bay([], { vent: 'vent-x' }).problems).toMatchObject([{ code: 'unknown-hardware', because: ['vent-x'] }]);
  });

  it('draws the air out by a fan high in its back, over a low row of vents', () => {
    const fitOut = bay([['charger-radio-6']], { fan: { id: 'device-9', device: 'fan-bay-120' } });
    expect(fitOut.problems).toEqual([]);
    const fan = boxOf(fitOut, 'device-9/body');
    // 120 square in the middle of the back, its top 10 under the ceiling, 25 into the bay, its cable 20 before it.
    expect([fan.min[0], fan.max[0]]).toEqual([390, 510]);
    expect(fan.max[2]).toBeCloseTo(682.3 - 10, 9);
    expect([fan.min[1], fan.max[1]].map((mm) => Math.round(mm * 10) / 10)).toEqual([556.6, 581.6]);
    expect(boxOf(fitOut, 'device-9/plug').min[1]).toBeCloseTo(536.6, 9);
    const cut = panelOf(fitOut, 'carcass-1/back').cuts.filter(({ kind }) => kind === 'cutout');
    // Two louvres low (7 A × 13.8 V / 50 × 6000 mm² is 11592: two of 6000), none high, and a hole of 115.
    expect(cut.map((each) => each.kind === 'cutout' && each.outline.shape)).toEqual([
      'circle',
      'rectangle',
      'rectangle',
    ]);
    // It weighs 0.16 kg and draws its 0.25 A like any other device.
    expect(fitOut.masses.find(({ origin }) => origin === 'device-9')?.massKg).toBe(0.16);
    expect(fitOut.devices.map(({ device }) => device)).toContain('fan-bay-120');
    // Deep 230 + 45, and 45 of fan with its cable at the back.
    expect(fitOut.openings[0]?.least[1]).toBe(320);
    expect(bay([], { fan: { id: 'device-9', device: 'no-fan' } }).problems).toMatchObject([
      { code: 'unknown-device', at: 'device-9' },
    ]);
  });
});
