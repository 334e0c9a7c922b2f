import { describe, expect, it } from 'vitest';
import type { Body } from '../../src/fitout/index.ts';
import { carcass, fitted, panelOf, solved } from './designs.ts';
import { bodyBox, depthInto } from './measures.ts';

const trim = (rest: Readonly<Record<string, unknown>> = {}, more = {}) =>
  solved(
    [
      carcass(
        fitted('opening-1', {
          kind: 'trim',
          material: 'hdpe-10',
          cups: 2,
          cupDiameterMm: 85,
          ledgeUpMm: 70,
          slotMm: 60,
          clip: 'clip-board-spring',
          ...rest,
        }),
      ),
    ],
    more,
  );

describe('a drink and board trim', () => {
  it('is a ledge with round holes and a backing behind the slot, both let into the sides', () => {
    const fitOut = trim();
    expect(fitOut.problems).toEqual([]);
    const [ledge, backing] = ['ledge', 'backing'].map((role) => panelOf(fitOut, `opening-1/${role}`));
    // 864.6 + 2 × 6 across; 85 + 2 × 15 of wood round the holes deep.
    expect(ledge?.length).toBeCloseTo(876.6, 9);
    expect(ledge?.width).toBeCloseTo(115, 9);
    expect(backing?.width).toBeCloseTo(664.6, 9);
    // Two holes at a quarter and three quarters of 864.6, 6 of housing further along the ledge.
    const circles = ledge?.cuts.flatMap((cut) =>
      cut.kind === 'cutout' && cut.outline.shape === 'circle' ? [cut.outline] : [],
    );
    expect(circles?.map(({ at, diameter }) => [Math.round(at[0] * 100) / 100, diameter])).toEqual([
      [222.15, 85],
      [654.45, 85],
    ]);
    // 876.6 × 115 × 10 less two discs of 85
    expect(ledge?.volumeMm3).toBeCloseTo(1_008_090 - 2 * Math.PI * 42.5 ** 2 * 10, 3);
  });

  it('gives each drink its hole and the boards the slot behind the ledge', () => {
    const { rooms } = trim();
    expect(rooms.map(({ level, size }) => [level, ...size.map(Math.round)])).toEqual([
      [0, 85, 85, 665],
      [1, 85, 85, 665],
      [2, 865, 60, 665],
    ]);
    expect(rooms[2]?.pose.at[1]).toBe(115);
    // The clip holds boards; a ledge only keeps a drink upright.
    expect(rooms.map(({ keeps }) => keeps)).toEqual(['lip', 'lip', 'bracket']);
  });

  it('lets a drink stand on the floor through the ledge without meeting it', () => {
    const drink = {
      id: 'gear-1',
      name: 'Flask',
      sizeMm: [80, 80, 200],
      massKg: 0.7,
      massFrom: 'measured',
      place: { opening: 'opening-1', level: 1, at: [2.5, 2.5, 0] },
    };
    const fitOut = trim({}, { gear: [drink] });
    const flask = bodyBox(fitOut.bodies.find(({ id }) => id === 'gear-1/body') as Body);
    expect(flask.min[2]).toBeCloseTo(17.7, 9);
    const ledge = fitOut.bodies.filter(({ id }) => id.startsWith('opening-1/ledge'));
    expect(ledge.length).toBeGreaterThan(1);
    for (const body of ledge) expect(depthInto(bodyBox(body as Body), flask)).toBeLessThanOrEqual(0);
  });

  it('asks for its holes with their wood, its slot and its backing', () => {
    // 2 × (85 + 30); 115 + 60 + 10; 70 + 40.
    expect(trim().openings[0]?.least).toEqual([230, 185, 110]);
    // Without drinks the ledge is 40 deep; without a slot there is no backing and no clip.
    expect(trim({ cups: 0 }).openings[0]?.least).toEqual([40, 110, 110]);
    expect(trim({ slotMm: 0 }).openings[0]?.least).toEqual([230, 115, 110]);
    expect(trim({ slotMm: 0 }).hardware.some(({ item }) => item === 'clip-board-spring')).toBe(false);
  });
});
