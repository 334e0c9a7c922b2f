import { describe, expect, it } from 'vitest';
import { foldedPanels } from '../../src/fitout/index.ts';
import { carcass, fitted, panelOf, solved } from './designs.ts';

type Plain = Readonly<Record<string, unknown>>;

/** Clear 464.6 × 381.6 × 164.6 (across × deep × up). */
const plate = (rest: Plain, size: Plain = { width: 500, height: 200, depth: 400 }) =>
  solved([
    carcass(fitted('opening-1', { kind: 'faceplate', material: 'aluminium-32', tiltDeg: 0, ...rest }), { size }),
  ]);
const SOCKET: Plain = { rows: [[{ id: 'device-1', device: 'socket-12' }]] };

describe('a plate whose edges are bent back', () => {
  const fitOut = plate({ flangeMm: 30, ...SOCKET });
  const panel = panelOf(fitOut, 'opening-1/plate');
  // 3.18 thick, inside radius 4.8, K 0.4: allowance π/2 × (4.8 + 1.272) = 9.5379, deduction 2 × 7.98 − 9.5379 = 6.4221.
  const deduction = 6.4221247;

  it('has a flat pattern with its bend lines and its cut-outs moved with them', () => {
    expect(fitOut.problems).toEqual([]);
    // 30 + 160.6 + 30 − 2 × 6.4221.
    expect(panel.width).toBeCloseTo(220.6 - 2 * deduction, 6);
    // The middle of a bend: 30 − 6.4221 / 2 from the edge.
    expect(panel.bends?.map(({ from }) => from[1])[0]).toBeCloseTo(30 - deduction / 2, 6);
    expect(panel.bends?.map(({ from }) => from[1])[1]).toBeCloseTo(panel.width - 30 + deduction / 2, 6);
    const [cut] = panel.cuts.flatMap((each) => (each.kind === 'cutout' ? [each.outline] : []));
    expect(cut?.shape === 'circle' ? cut.at[1] : 0).toBeCloseTo(panel.width / 2, 6);
  });

  it('weighs what its flat does', () => {
    // (460.6 × flat − π/4 × 28.8²) × 3.18.
    const area = 460.6 * panel.width - (Math.PI * 28.8 ** 2) / 4;
    expect(panel.volumeMm3).toBeCloseTo(area * 3.18, 3);
  });

  it('stands bent: the plate 160.6 high, both flanges 30 from its front', () => {
    const pieces = foldedPanels(panel);
    const widths = pieces.map(({ width }) => width);
    expect(widths).toHaveLength(3);
    for (const [i, wanted] of [160.6, 30, 30].entries()) expect(widths[i]).toBeCloseTo(wanted, 6);
    // Facing right deep is +y: from the face to 30 behind it.
    for (const id of ['opening-1/plate/flange-1', 'opening-1/plate/flange-2']) {
      const body = fitOut.bodies.find((each) => each.id === id);
      expect(Math.max(...(body?.shape.vertices ?? []).map(([, y]) => y))).toBeCloseTo(30, 6);
    }
  });

  it('refuses a flange too short for the die, and a sheet that is not bent', () => {
    // 4.8 + 3.18 + 3 × 3.18 = 17.52.
    expect(plate({ flangeMm: 15 }).problems).toMatchObject([{ code: 'bad-joint', haveMm: 15 }]);
    expect(plate({ flangeMm: 15 }).problems[0]?.needMm).toBeCloseTo(17.52, 6);
    expect(plate({ flangeMm: 30, material: 'birch-ply-12' }).problems).toMatchObject([{ code: 'bad-joint' }]);
  });
});

describe('a plate that is read by an eye', () => {
  it('leans so that it looks at the eye', () => {
    // 300 above and 500 − 0 out of the middle: tan φ = 0.6, whatever the stated lean says.
    const { pose } = panelOf(
      plate({ tiltDeg: 5, eye: { aboveMm: 300, outMm: 500 }, ...SOCKET }, { width: 500, height: 300, depth: 400 }),
      'opening-1/plate',
    );
    const [, out, up] = pose.turn[2];
    expect(up / -out).toBeCloseTo(0.6, 9);
  });
});

describe('slots for air', () => {
  it('stand in a row along both edges, clear of devices, and ask for their width', () => {
    const slots = panelOf(plate({ airSlots: 4, ...SOCKET }), 'opening-1/plate').cuts.filter(
      (cut) => cut.kind === 'cutout' && cut.why === 'air slot',
    );
    expect(slots).toHaveLength(8);
    // 9 × 40 + 8 × 10 + 2 × 15 = 470, and 2 × 2 reveal.
    expect(plate({ airSlots: 9 }).problems[0]).toMatchObject({ code: 'too-small', axis: 'across' });
    expect(plate({ airSlots: 9 }).problems[0]?.needMm).toBeCloseTo(474, 9);
  });
});
