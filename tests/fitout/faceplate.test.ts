import { describe, expect, it } from 'vitest';
import { ROUNDING_MM } from '../../src/base/index.ts';
import { leastLine, lineUp } from '../../src/fitout/line-up.ts';
import { carcass, fitted, panelOf, solved } from './designs.ts';
import { bodyBox } from './measures.ts';

type Plain = Readonly<Record<string, unknown>>;
const hundredth = (values: readonly number[]): readonly number[] =>
  values.map((value) => Math.round(value * 100) / 100);

/** Clear 464.6 × 381.6 × 164.6 (across × deep × up) at [17.7, 0, 17.7]. */
const plate = (rest: Plain = {}, size: Plain = { width: 500, height: 200, depth: 400 }) =>
  solved([carcass(fitted('opening-1', { kind: 'faceplate', material: 'aluminium-32', ...rest }), { size })]);

const rows = (...list: readonly (readonly string[])[]): Plain => ({
  rows: list.map((row, r) => row.map((device, i) => ({ id: `device-${r + 1}-${i + 1}`, device }))),
});

describe('things in a line', () => {
  it('have equal gaps between their faces where their distances allow it', () => {
    const item = (face: number) => ({ fromStart: face / 2, fromEnd: face / 2, face });
    // 300 − 100 − 50 = 150 in three gaps of 50: middles at 50 + 50 and 50 + 100 + 50 + 25.
    expect(lineUp({ items: [item(100), item(50)], apart: [80] }, 300)).toEqual([100, 225]);
    // Held 140 apart they need 50 + 140 + 25 = 215; the other 85 go to both ends.
    expect(leastLine({ items: [item(100), item(50)], apart: [140] })).toBe(215);
    expect(lineUp({ items: [item(100), item(50)], apart: [140] }, 300)).toEqual([92.5, 232.5]);
  });
});

describe('a faceplate', () => {
  it('fills the opening less the reveal, with cut-outs of the true size in plate coordinates', () => {
    const fitOut = plate({ tiltDeg: 0, ...rows(['radio-25', 'socket-12']) });
    expect(fitOut.problems).toEqual([]);
    const panel = panelOf(fitOut, 'opening-1/plate');
    // 464.6 − 2 × 2 by 164.6 − 2 × 2.
    expect(hundredth([panel.length, panel.width])).toEqual([460.6, 160.6]);
    const outlines = panel.cuts.flatMap((cut) => (cut.kind === 'cutout' ? [cut.outline] : []));
    // Faces 190 and 37: gaps (460.6 − 227)/3 = 77.87; middles at 172.87 and 77.87 + 190 + 77.87 + 18.5 = 364.23.
    expect(outlines).toEqual([
      {
        shape: 'rectangle',
        from: [expect.closeTo(172.8667 - 91, 3), expect.closeTo(80.3 - 26.5, 9)],
        to: [expect.closeTo(172.8667 + 91, 3), expect.closeTo(80.3 + 26.5, 9)],
        cornerRadius: 2,
      },
      { shape: 'circle', at: [expect.closeTo(364.2333, 3), expect.closeTo(80.3, 9)], diameter: 28.8 },
    ]);
    // Volume: (460.6 × 160.6 − 182 × 53 + (4 − π) × 2² − π/4 × 28.8²) × 3.18.
    const area = 460.6 * 160.6 - 182 * 53 + (4 - Math.PI) * 4 - (Math.PI * 28.8 ** 2) / 4;
    expect(panel.volumeMm3).toBeCloseTo(area * 3.18, 4);
  });

  it('stands each device in front of and behind the plate, with room for plug and bend', () => {
    const fitOut = plate({ tiltDeg: 0, setbackMm: 30, ...rows(['radio-25']) });
    const box = (id: string) => bodyBox(fitOut.bodies.find((body) => body.id === id) as never);
    // Facing right deep is +y: face 15 in front of 30; body 160 behind 33.18; plug 30 and bend 30 behind that.
    expect(hundredth([box('device-1-1/face').min[1], box('device-1-1/face').max[1]])).toEqual([15, 30]);
    expect(hundredth([box('device-1-1/body').min[1], box('device-1-1/body').max[1]])).toEqual([33.18, 193.18]);
    expect(hundredth([box('device-1-1/plug').min[1], box('device-1-1/plug').max[1]])).toEqual([193.18, 253.18]);
    expect(fitOut.bodies.find(({ id }) => id === 'device-1-1/plug')?.kind).toBe('plug-room');
    expect(fitOut.devices).toMatchObject([{ origin: 'device-1-1', device: 'radio-25', opening: 'opening-1' }]);
  });

  it('leans: the upper edge back by the tilt, the foremost edge at the set-back, everything turned with it', () => {
    const fitOut = plate({ tiltDeg: 30, setbackMm: 10, ...rows(['socket-12']) });
    expect(fitOut.problems).toEqual([]);
    const { pose, width } = panelOf(fitOut, 'opening-1/plate');
    // (164.6 − 4 − 3.18 × sin 30°)/cos 30°.
    expect(width).toBeCloseTo((160.6 - 1.59) / Math.cos(Math.PI / 6), 9);
    // Up the plate is half back, √3/2 up; its front looks up and out.
    expect(pose.turn[1].map((value) => Math.round(value * 1000) / 1000)).toEqual([0, 0.5, 0.866]);
    expect(pose.turn[2].map((value) => Math.round(value * 1000) / 1000)).toEqual([0, -0.866, 0.5]);
    const { min, max } = bodyBox(fitOut.bodies.find(({ id }) => id === 'opening-1/plate') as never);
    // From the reveal over the floor to the reveal under the ceiling, its foremost edge at 10.
    expect(hundredth([min[1], min[2], max[2]])).toEqual([10, 19.7, 180.3]);
  });

  it('keeps what hangs behind a leaning plate off the floor, and in front of the back', () => {
    const fitOut = plate({ tiltDeg: 30, ...rows(['radio-25']) }, { width: 500, height: 300, depth: 400 });
    expect(fitOut.problems).toEqual([]);
    for (const body of fitOut.bodies.filter(({ origin }) => origin === 'device-1-1')) {
      const { min, max } = bodyBox(body as never);
      expect(min[2]).toBeGreaterThanOrEqual(17.7 + 5 - ROUNDING_MM);
      expect(max[1]).toBeLessThanOrEqual(381.6 - 5 + ROUNDING_MM);
    }
  });

  it('says what it needs: width for the webs, depth for plug and bend', () => {
    const wide = plate(rows(['radio-25', 'radio-25', 'radio-25']), { width: 500, height: 200, depth: 400 });
    // 15 edge + 182/2 at both ends, and 192 from middle to middle twice (face 190 + 2, cut-out 182 + 10): 596; + 4.
    expect(wide.problems).toMatchObject([
      { code: 'too-small', at: 'opening-1', axis: 'across', because: ['faceplate'] },
    ]);
    expect(wide.problems[0]?.needMm).toBeCloseTo(600, 9);
    const deep = plate({ tiltDeg: 0, ...rows(['radio-25']) }, { width: 500, height: 200, depth: 240 });
    // 3.18 + 160 + 30 + 30 + 5 = 228.18 in 221.6.
    expect(deep.problems).toMatchObject([{ code: 'too-small', axis: 'deep' }]);
    expect(deep.problems[0]?.needMm).toBeCloseTo(228.18, 9);
  });

  it('says when a tall leaning plate brings its upper row too far back', () => {
    const tall = plate({ tiltDeg: 40, ...rows(['radio-25'], ['radio-25']) }, { width: 500, height: 600, depth: 420 });
    expect(tall.problems).toMatchObject([{ code: 'too-small', at: 'opening-1', axis: 'deep' }]);
    expect(tall.problems[0]?.needMm).toBeGreaterThan(tall.problems[0]?.haveMm ?? Infinity);
  });

  it('stands a device without a cut-out on its front, and names one that the catalog does not have', () => {
    const fitOut = plate({ tiltDeg: 0, setbackMm: 60, ...rows(['light-red-white', 'nothing-such']) });
    expect(fitOut.problems).toMatchObject([{ code: 'unknown-device', at: 'device-1-2', because: ['nothing-such'] }]);
    const own = fitOut.bodies.filter(({ origin }) => origin === 'device-1-1');
    // 25 out of the plate at 60.
    expect(own.map(({ id }) => id)).toEqual(['device-1-1/face']);
    expect(bodyBox(own[0] as never).min[1]).toBeCloseTo(35, 9);
  });
});
