import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Box, boxSize, ROUNDING_MM } from '../../src/base/index.ts';
import { boxShape, convexVolume, gapBetween } from '../../src/bodies/index.ts';
import type { FitOut, Panel } from '../../src/fitout/index.ts';
import { carcass, divided, empty, fitted, openingOf, panelOf, share, solved } from './designs.ts';

// 300 long from 150 behind the face, 200 in and 250 up, of 900 × 700 × 600 in 17.7.
const WHEEL = { id: 'wheelhouse-1', side: 'left', fromMm: 150, lengthMm: 300, inMm: 200, upMm: 250 };
const over = (
  wheelhouses: readonly unknown[],
  opening = empty('opening-1'),
  rest: Parameters<typeof carcass>[1] = {},
) => solved([carcass(opening, { wheelhouses, ...rest })]);
const area = (ring: NonNullable<Panel['outline']>): number =>
  ring.reduce((sum, [x, y], i) => {
    const [nx, ny] = ring[(i + 1) % ring.length] ?? [x, y];
    return sum + (x * ny - nx * y) / 2;
  }, 0);
const sizeOf = ({ length, width }: Panel): readonly number[] => [length, width];

describe('a carcass that stands over a wheelhouse', () => {
  const fitOut = over([WHEEL]);
  const plain = solved([carcass(empty('opening-1'))]);

  it('cuts the side and the bottom to their true shape', () => {
    expect(fitOut.problems).toEqual([]);
    const side = panelOf(fitOut, 'carcass-1/side-left');
    expect(sizeOf(side)).toEqual([700, 600]);
    expect(side.outline).toHaveLength(8);
    expect(area(side.outline ?? [])).toBeCloseTo(700 * 600 - 300 * 250, 6);
    // The dado of the bottom, 17.7 × 300 × 6, was gone there already.
    const taken = panelOf(plain, 'carcass-1/side-left').volumeMm3 - side.volumeMm3;
    expect(taken).toBeCloseTo(300 * 250 * 17.7 - 17.7 * 300 * 6, 4);
    const bottom = panelOf(fitOut, 'carcass-1/bottom');
    // From the bottom of the dado, 17.7 − 6, to 200 in.
    expect(area(bottom.outline ?? [])).toBeCloseTo(876.6 * 600 - 188.3 * 300, 6);
    expect(panelOf(plain, 'carcass-1/bottom').volumeMm3 - bottom.volumeMm3).toBeCloseTo(188.3 * 300 * 17.7, 4);
    expect(panelOf(fitOut, 'carcass-1/side-right').outline).toBeNull();
    expect(panelOf(fitOut, 'carcass-1/back').outline).toBeNull();
  });

  it('lines it with a top, a side and two ends', () => {
    const lining = (role: string) =>
      sizeOf(panelOf(fitOut, `wheelhouse-1/${role}`)).map((mm) => Math.round(mm * 10) / 10);
    // 300 + 2 × 17.7 long; from the inner face of the side at 17.7 to 200 + 17.7.
    expect(lining('top')).toEqual([335.4, 200]);
    // From the bottom's upper face at 17.7 to 250.
    expect(lining('side')).toEqual([335.4, 232.3]);
    // From 17.7 to 200 across.
    expect(lining('near-end')).toEqual([182.3, 232.3]);
    expect(lining('far-end')).toEqual([182.3, 232.3]);
    // Screws: three lines of 300 and two of 250, one near each end and none further apart than the pitch.
    expect(fitOut.hardware.find(({ id }) => id === 'wheelhouse-1/screws')?.quantity).toBeGreaterThanOrEqual(10);
  });

  it('leaves what stands in it the largest room beside it, and a drawer its two walls above it', () => {
    // Beside: 864.6 − 200 across and all of 664.6 up; above: all across and 682.3 − 267.7 up, which is less.
    const room = openingOf(fitOut, 'opening-1');
    expect(room.from[0]).toBeCloseTo(217.7, 9);
    expect([room.size[0], room.size[2]].map((mm) => Math.round(mm * 10) / 10)).toEqual([664.6, 664.6]);
    const drawer = fitted('opening-1', {
      kind: 'drawer',
      inside: empty('opening-9'),
      boxMaterial: 'birch-ply-12',
      bottomMaterial: 'birch-ply-6',
    });
    const drawn = over([WHEEL], drawer);
    expect(drawn.problems).toEqual([]);
    expect(openingOf(drawn, 'opening-1').from[2]).toBeCloseTo(267.7, 9);
    expect(openingOf(drawn, 'opening-1').size[0]).toBeCloseTo(864.6, 9);
  });

  it('runs out through the back where it ends too near it for a board', () => {
    const rear = over([{ ...WHEEL, lengthMm: 440 }]);
    expect(rear.problems).toEqual([]);
    expect(rear.panels.some(({ id }) => id === 'wheelhouse-1/far-end')).toBe(false);
    // The back reaches 6 into the side: from 11.7 to 200 of it, and from 11.7 to 250 up.
    const back = panelOf(rear, 'carcass-1/back');
    expect(area(back.outline ?? [])).toBeCloseTo(876.6 * 676.6 - 188.3 * 238.3, 6);
    expect(panelOf(rear, 'carcass-1/side-left').outline).toHaveLength(6);
  });

  it('cuts what divides the carcass, and what it stands on', () => {
    const columns = over(
      [WHEEL],
      divided('opening-1', 'columns', [
        [{ rule: 'fixed', mm: 100 }, empty('opening-2')],
        [share(), empty('opening-3')],
      ]),
    );
    expect(columns.problems).toEqual([]);
    const divider = panelOf(columns, 'opening-1/divider-1');
    // The wood is cut for wheel and lining: 335.4 deep, from the bottom of the dado at 11.7 up to 267.7.
    expect(area(divider.outline ?? [])).toBeCloseTo(divider.length * divider.width - 335.4 * 256, 6);
    const floor = over([WHEEL], empty('opening-1'), { stand: { kind: 'sub-floor', material: 'birch-ply-12' } });
    expect(area(panelOf(floor, 'carcass-1/sub-floor').outline ?? [])).toBeCloseTo(900 * 600 - 200 * 300, 6);
  });

  it('lies at the back of a carcass that looks across the vehicle', () => {
    const back = over([{ ...WHEEL, side: 'back', fromMm: 300, lengthMm: 300 }]);
    expect(back.problems).toEqual([]);
    expect(area(panelOf(back, 'carcass-1/back').outline ?? [])).toBeCloseTo(876.6 * 676.6 - 300 * 238.3, 6);
    // The bottom keeps its full depth beside it: 600 less 200 over 300.
    expect(area(panelOf(back, 'carcass-1/bottom').outline ?? [])).toBeCloseTo(876.6 * 600 - 300 * 200, 6);
  });
});

describe('wheelhouses that cannot be cut', () => {
  const told = (change: object, rest: Parameters<typeof carcass>[1] = {}) =>
    over([{ ...WHEEL, ...change }], empty('opening-1'), rest).problems;

  it('names what it has and what it needs', () => {
    expect(told({ inMm: 15 })).toMatchObject([{ code: 'bad-joint', needMm: 17.7, haveMm: 15 }]);
    // 900 less a panel at each side and one for the lining.
    expect(told({ inMm: 870 })[0]?.needMm).toBeCloseTo(900 - 3 * 17.7, 9);
    expect(told({ upMm: 17 })).toMatchObject([{ needMm: 17.7, haveMm: 17 }]);
    expect(told({ upMm: 690 })[0]?.needMm).toBeCloseTo(700 - 2 * 17.7, 9);
    expect(told({ fromMm: 600 })).toMatchObject([{ needMm: 600, haveMm: 600 }]);
  });

  it('names two that meet, a runner cut in two, and an anchor in the air', () => {
    const right = { ...WHEEL, id: 'wheelhouse-2', side: 'right', inMm: 680 };
    expect(over([WHEEL, right]).problems).toMatchObject([{ because: ['two wheelhouses at the right meet'] }]);
    const riser = told({}, { stand: { kind: 'riser', heightMm: 80, runners: 2 } });
    expect(riser).toMatchObject([{ because: ['Bay runner 1 would be cut into pieces'] }]);
    const anchor = {
      id: 'anchor-1',
      on: 'floor',
      across: { from: 'left', mm: 100 },
      deep: { from: 'face', mm: 300 },
      bolt: 'bolt-m8x40',
    };
    const loose = over([WHEEL], empty('opening-1'), { anchors: [anchor] });
    expect(loose.problems).toMatchObject([{ because: ['anchor-1 stands where a wheelhouse is cut out'] }]);
    expect(panelOf(loose, 'carcass-1/bottom').cuts.some(({ kind }) => kind === 'hole')).toBe(false);
  });
});

/** Volume (mm³) of the bodies of each panel against its outline: two ways to the same wood, recesses not counted. */
const bodiesOf = (fitOut: FitOut, { id }: Panel): number =>
  fitOut.bodies
    .filter((body) => body.id === id || body.id.startsWith(`${id}/piece-`))
    .reduce((sum, body) => sum + convexVolume(body.shape as never).volumeMm3, 0);

describe('any wheelhouse', () => {
  it('leaves its clear room free of wood, gear and fittings, and bodies that are as large as the outlines', () => {
    const wheel = fc.record({
      id: fc.constant('wheelhouse-1'),
      side: fc.constantFrom('left', 'right', 'back'),
      fromMm: fc.integer({ min: 0, max: 500 }),
      lengthMm: fc.integer({ min: 40, max: 500 }),
      inMm: fc.integer({ min: 20, max: 400 }),
      upMm: fc.integer({ min: 20, max: 500 }),
    });
    let cut = 0;
    fc.assert(
      fc.property(wheel, fc.constantFrom('columns', 'rows', 'layers'), (own, along) => {
        const fitOut = over(
          [own],
          divided('opening-1', along, [
            [share(), empty('opening-2')],
            [share(2), empty('opening-3')],
          ]),
        );
        if (!fitOut.panels.some(({ id }) => id.startsWith('wheelhouse-1/'))) return;
        cut += 1;
        const { side, fromMm, lengthMm, inMm, upMm } = own;
        const to = Math.min(side === 'back' ? 900 : 600, fromMm + lengthMm);
        const clear: Box =
          side === 'back'
            ? { min: [fromMm, 600 - inMm, 0], max: [to, 600, upMm] }
            : side === 'left'
              ? { min: [0, fromMm, 0], max: [inMm, to, upMm] }
              : { min: [900 - inMm, fromMm, 0], max: [900, to, upMm] };
        expect(Math.min(...boxSize(clear))).toBeGreaterThan(0);
        for (const body of fitOut.bodies)
          expect(gapBetween(body.shape as never, boxShape(clear)).distance).toBeGreaterThan(-ROUNDING_MM);
        for (const panel of fitOut.panels.filter(({ outline }) => outline !== null))
          expect(bodiesOf(fitOut, panel)).toBeCloseTo(area(panel.outline ?? []) * panel.thickness, 3);
        for (const room of fitOut.rooms) {
          const box = { min: room.pose.at, max: room.pose.at.map((value, i) => value + (room.size[i] ?? 0)) };
          expect(gapBetween(boxShape(box as never), boxShape(clear)).distance).toBeGreaterThan(-ROUNDING_MM);
        }
      }),
      { seed: 20_311, numRuns: 150 },
    );
    expect(cut).toBeGreaterThan(80);
  });
});
