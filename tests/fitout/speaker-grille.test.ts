import { describe, expect, it } from 'vitest';
import { boxSize } from '../../src/base/index.ts';
import { carcass, fitted, panelOf, solved } from './designs.ts';
import { bodyBox } from './measures.ts';

const plate = (device: object, rest: Readonly<Record<string, unknown>> = {}) =>
  solved(
    [
      carcass(fitted('opening-1', { kind: 'faceplate', material: 'aluminium-32', tiltDeg: 0, rows: [[device]] }), {
        size: { width: 500, height: 200, depth: 400 },
      }),
    ],
    rest,
  );
const SPEAKER = { id: 'device-1', device: 'speaker-4', grille: true };

describe('a speaker behind a plate', () => {
  const fitOut = plate(SPEAKER);
  const panel = panelOf(fitOut, 'opening-1/plate');
  const holes = panel.cuts.flatMap((cut) => (cut.kind === 'hole' && cut.why === 'speaker grille' ? [cut] : []));

  it('sounds through a staggered pattern of 5 mm holes, 8 apart, inside its round of 96', () => {
    expect(fitOut.problems).toEqual([]);
    expect(panel.cuts.some(({ kind }) => kind === 'cutout')).toBe(false);
    // 460.6 × 160.6: it stands in the middle.
    const [x, y] = [230.3, 80.3];
    // Rows 6.928 apart; the middle one reaches 5 × 8 = 40 of (96 − 5)/2 = 45.5 both ways: 11 holes.
    expect(holes.filter(({ at }) => Math.abs(at[1] - y) < 0.001)).toHaveLength(11);
    for (const { at, diameter } of holes) {
      expect(diameter).toBe(5);
      expect(Math.hypot(at[0] - x, at[1] - y)).toBeLessThanOrEqual(45.5);
    }
    for (const [i, a] of holes.entries())
      for (const b of holes.slice(i + 1))
        expect(Math.hypot(a.at[0] - b.at[0], a.at[1] - b.at[1])).toBeGreaterThan(7.999);
    // One hole for each 8 × 6.928 mm² of a round of 45.5, give or take its edge.
    expect(holes.length).toBeGreaterThan(105);
    expect(holes.length).toBeLessThan(128);
  });

  it('stands wholly behind the plate, as wide as its frame', () => {
    expect(fitOut.bodies.some(({ id }) => id === 'device-1/face')).toBe(false);
    const body = fitOut.bodies.find(({ id }) => id === 'device-1/body');
    // Facing right across is x: the frame of 112 × 112, 50 deep.
    expect(boxSize(bodyBox(body as never)).map(Math.round)).toEqual([112, 50, 112]);
  });

  it('is refused for what is no speaker', () => {
    expect(plate({ ...SPEAKER, device: 'socket-12' }).problems).toMatchObject([{ code: 'bad-joint', at: 'device-1' }]);
  });
});

describe('house rules of bent plates', () => {
  const bent = (rule: string, value: number, flangeMm = 30) =>
    solved(
      [
        carcass(
          fitted('opening-1', {
            kind: 'faceplate',
            material: 'aluminium-32',
            tiltDeg: 0,
            flangeMm,
            airSlots: 1,
          }),
          { size: { width: 500, height: 200, depth: 400 } },
        ),
      ],
      { houseRules: [{ rule, value, who: 'shop', why: 'another die' }] },
    );

  it('set how long a flange is, how sharp a bend, and how far cut-outs stay from it', () => {
    // 4.8 + 9 × 3.18 = 33.42 for a flange of 30.
    expect(bent('flange-min-share', 9).problems[0]?.needMm).toBeCloseTo(33.42, 9);
    // 2 × 3.18 = 6.36 for a radius of 4.8.
    expect(bent('bend-radius-share', 2).problems).toMatchObject([{ code: 'bad-joint', haveMm: 4.8 }]);
    expect(bent('bend-radius-share', 2).problems[0]?.needMm).toBeCloseTo(6.36, 9);
    const lowest = (share: number): number => {
      const { cuts } = panelOf(bent('bend-hole-share', share), 'opening-1/plate');
      const [slot] = cuts.flatMap((cut) =>
        cut.kind === 'cutout' && cut.outline.shape === 'rectangle' ? [cut.outline.from[1]] : [],
      );
      return slot ?? 0;
    };
    // 4.8 + 3.18 + 10 × 3.18 = 39.78 against 4.8 + 3.18 + 5 × 3.18 = 23.88 from the edge of the plate.
    expect(lowest(10) - lowest(5)).toBeCloseTo(15.9, 9);
  });
});
