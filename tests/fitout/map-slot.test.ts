import { describe, expect, it } from 'vitest';
import { carcass, fitted, panelOf, solved } from './designs.ts';

const slots = (rest: Readonly<Record<string, unknown>> = {}, more = {}) =>
  solved([carcass(fitted('opening-1', { kind: 'map-slot', slots: 3, material: 'birch-ply-12', ...rest }))], more);

describe('map slots', () => {
  it('stand side by side between dividers let into floor and top', () => {
    const fitOut = slots();
    expect(fitOut.problems).toEqual([]);
    // (864.6 − 2 × 12) / 3 across, each with its own level.
    expect(fitOut.rooms.map(({ level, size }) => [level, Math.round(size[0] * 100) / 100])).toEqual([
      [0, 280.2],
      [1, 280.2],
      [2, 280.2],
    ]);
    expect(fitOut.rooms[1]?.pose.at[0]).toBeCloseTo(17.7 + 280.2 + 12, 9);
    const divider = panelOf(fitOut, 'opening-1/divider-1');
    // 664.6 + 2 × 6 up, 581.6 deep.
    expect(divider.length).toBeCloseTo(676.6, 9);
    expect(divider.width).toBeCloseTo(581.6, 9);
    const dados = panelOf(fitOut, 'carcass-1/bottom').cuts.filter((cut) => cut.kind === 'dado');
    expect(dados.length).toBe(2);
  });

  it('lie one above the other between shelves let into the sides, a lip on each', () => {
    const fitOut = slots({ lie: 'flat', lipHeightMm: 30 });
    expect(fitOut.problems).toEqual([]);
    // (664.6 − 2 × 12) / 3 up, 581.6 − 12 behind the lip.
    expect(fitOut.rooms[0]?.size[2]).toBeCloseTo(213.533333, 5);
    expect(fitOut.rooms[0]?.size[1]).toBeCloseTo(569.6, 9);
    expect(fitOut.panels.filter(({ role }) => role === 'lip').map(({ width }) => Math.round(width))).toEqual([
      30, 30, 30,
    ]);
    expect(fitOut.rooms.every(({ keeps }) => keeps === 'lip')).toBe(true);
  });

  it('are as wide as the widest thing in any of them', () => {
    const binder = {
      id: 'gear-1',
      name: 'Binder',
      sizeMm: [320, 80, 290],
      massKg: 3.5,
      massFrom: 'measured',
      place: { opening: 'opening-1', level: 1, at: [0, 0, 0] },
    };
    // 3 × (80 + 3) + 2 × 12 across, 320 + 3 deep, 290 + 15 up.
    expect(slots({}, { gear: [binder] }).openings[0]?.least).toEqual([273, 323, 305]);
    // Empty: 3 × 40 + 2 × 12.
    expect(slots().openings[0]?.least).toEqual([144, 40, 40]);
  });
});
