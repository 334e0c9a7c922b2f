import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boxSize, boxVolume, ROUNDING_MM } from '../../src/base/index.ts';
import { boxShape, clippedShape, convexVolume, gapBetween, type HalfSpace, shapeBox } from '../../src/bodies/index.ts';
import { carcass, divided, empty, fitted, openingOf, panelOf, share, solved } from './designs.ts';

const TOP_RIGHT = { id: 'chamfer-1', along: 'deep', corner: 'top-right', acrossMm: 120, upMm: 160 };
const chamfered = (opening: Parameters<typeof carcass>[0], rest: Parameters<typeof carcass>[1] = {}) =>
  solved([carcass(opening, { chamfers: [TOP_RIGHT], ...rest })]);
const degrees = (rad: number): number => (rad * 180) / Math.PI;

describe('a corner cut off along the depth: 120 across, 160 up, of 900 × 700 × 600 in 17.7', () => {
  const fitOut = chamfered(empty('opening-1'));

  it('closes it with a panel mitred to the side and the top', () => {
    expect(fitOut.problems).toEqual([]);
    const panel = panelOf(fitOut, 'chamfer-1/panel');
    // √(120² + 160²) outside, over the whole depth.
    expect([panel.length, panel.width]).toEqual([600, 200]);
    // The side turns by atan(120/160) = 36.87° into it and the top by 53.13°; half of each at the saw. tan 18.43° = 1/3
    // and tan 26.57° = 1/2: the inner face ends 17.7/3 = 5.9 and 17.7/2 = 8.85 sooner.
    const bevels = [...(panel.bevels ?? [])].sort((a, b) => a.setMm - b.setMm);
    expect(bevels.map(({ longFace }) => longFace)).toEqual(['b', 'b']);
    expect(bevels[0]?.setMm).toBeCloseTo(5.9, 9);
    expect(bevels[1]?.setMm).toBeCloseTo(8.85, 9);
    expect(degrees(bevels[0]?.tiltRad ?? 0)).toBeCloseTo(18.435, 3);
    // (200 + 200 − 5.9 − 8.85)/2 × 17.7 × 600.
    expect(panel.volumeMm3).toBeCloseTo((385.25 / 2) * 17.7 * 600, 4);
  });

  it('bevels the side and the top to the same mitres', () => {
    const side = panelOf(fitOut, 'carcass-1/side-right');
    // 700 − 160 to the long edge outside.
    expect([side.length, side.width]).toEqual([540, 600]);
    expect(side.bevels).toMatchObject([{ edge: 'w2', longFace: 'b' }]);
    expect(side.bevels?.[0]?.setMm).toBeCloseTo(5.9, 9);
    const top = panelOf(fitOut, 'carcass-1/top');
    // From the bottom of the dado at 17.7 − 6 to 900 − 120.
    expect(top.length).toBeCloseTo(780 - 11.7, 9);
    expect(top.bevels?.[0]?.setMm).toBeCloseTo(8.85, 9);
    expect(panelOf(fitOut, 'carcass-1/side-left').bevels).toBeUndefined();
  });

  it('takes the corner off the back along the inner face', () => {
    const back = panelOf(fitOut, 'carcass-1/back');
    expect(back.bevels).toBeUndefined();
    expect(back.outline).toHaveLength(5);
    // Inner line: u·160/200 + v·120/200 = 96 + 17.7 from the corner; the back begins 11.7 in from both sides there:
    // (113.7 − 11.7 × 0.6)/0.8 = 133.35 along the top edge less 11.7, (113.7 − 11.7 × 0.8)/0.6 = 173.9 less 11.7.
    const xs = (back.outline ?? []).map(([x]) => x);
    const ys = (back.outline ?? []).map(([, y]) => y);
    const short = (values: readonly number[]): number =>
      Math.max(...values) - ([...values].sort((a, b) => b - a)[2] ?? 0);
    expect(short(xs)).toBeCloseTo(133.35 - 11.7, 9);
    expect(short(ys)).toBeCloseTo(173.9 - 11.7, 9);
  });

  it('lets boxes and fittings into the largest room that is clear of it', () => {
    // Clear inside to 882.3 and 682.3. Lower it: (113.7 − 17.7 × 0.8)/0.6 = 165.9 from the top. Narrower: (113.7 −
    // 17.7 × 0.6)/0.8 = 128.85 from the right. 864.6 × 516.4 against 753.45 × 664.6: the second is larger.
    expect(boxSize({ min: [0, 0, 0], max: openingOf(fitOut, 'opening-1').size })[0]).toBeCloseTo(753.45, 9);
  });
});

describe('what is divided beside a cut-off corner', () => {
  it('cuts partitions square and shelves with a bevel, and names a divider whose edge no saw can make', () => {
    const layers = chamfered(
      divided('opening-1', 'layers', [
        [share(), empty('opening-2')],
        [share(), empty('opening-3')],
      ]),
    );
    expect(layers.problems).toEqual([]);
    expect(panelOf(layers, 'opening-1/partition-1').outline).toHaveLength(5);
    const rows = chamfered(
      divided('opening-1', 'rows', [
        [{ rule: 'fixed', mm: 90 }, empty('opening-2')],
        [share(), empty('opening-3')],
      ]),
    );
    const shelf = panelOf(rows, 'opening-1/shelf-1');
    // The plane leans 53.13° from level: a level shelf is cut at 36.87° from square, long below.
    expect(degrees(shelf.bevels?.[0]?.tiltRad ?? 0)).toBeCloseTo(36.87, 2);
    expect(shelf.bevels?.[0]?.longFace).toBe('b');
    expect(rows.problems).toEqual([]);
    const steep = chamfered(
      divided('opening-1', 'columns', [
        [share(), empty('opening-2')],
        [{ rule: 'fixed', mm: 40 }, empty('opening-3')],
      ]),
    );
    expect(steep.problems).toMatchObject([{ code: 'bad-joint', at: 'opening-1', needMm: 45 }]);
    expect(steep.problems[0]?.haveMm).toBeCloseTo(53.13, 2);
  });

  it('leaves a land where the corner only takes the arris off a shelf', () => {
    // The inner face of a 60 × 60 corner at the bottom right: in + up = 60 + 17.7·√2 = 85.03 from the outside.
    const shelfAt = (fromTop: number) =>
      panelOf(
        solved([
          carcass(
            divided('opening-1', 'rows', [
              [{ rule: 'fixed', mm: fromTop }, empty('opening-2')],
              [share(), empty('opening-3')],
            ]),
            { chamfers: [{ ...TOP_RIGHT, corner: 'bottom-right', acrossMm: 60, upMm: 60 }] },
          ),
        ]),
        'opening-1/shelf-1',
      );
    // Clear inside from 17.7 to 682.3: the shelf's top at 682.3 − 602.3 = 80, its underside at 62.3.
    const shelf = shelfAt(602.3);
    const line = 60 + 17.7 * Math.SQRT2;
    const bevel = shelf.bevels?.[0];
    // In its dado it ends 11.7 from the outside: the plane is there 73.33 up, 6.67 below the top.
    expect(bevel?.landMm).toBeCloseTo(80 - (line - 11.7), 9);
    // And at the underside it ends line − 62.3 from the outside: at 45° as far back as the slope is high.
    expect(bevel?.setMm).toBeCloseTo(line - 62.3 - 11.7, 9);
    expect(bevel?.longFace).toBe('a');
    // The triangle that is off: set²/2 over the depth of the shelf.
    const whole = shelf.length * shelf.width * 17.7;
    expect(whole - shelf.volumeMm3).toBeCloseTo((shelf.width * (line - 74) ** 2) / 2, 4);
  });

  it('keeps a drawer in the corner between its two walls', () => {
    const drawer = fitted('opening-1', {
      kind: 'drawer',
      inside: empty('opening-9'),
      boxMaterial: 'birch-ply-12',
      bottomMaterial: 'birch-ply-6',
    });
    const fitOut = chamfered(drawer, { chamfers: [{ ...TOP_RIGHT, acrossMm: 60, upMm: 60 }] });
    const chamfer = fitOut.bodies.find(({ id }) => id === 'chamfer-1/panel');
    expect(fitOut.problems).toEqual([]);
    const own = fitOut.bodies.filter(({ origin }) => origin === 'opening-1');
    expect(own.length).toBeGreaterThan(5);
    for (const body of own)
      expect(gapBetween(body.shape as never, chamfer?.shape as never).distance).toBeGreaterThan(-ROUNDING_MM);
  });
});

describe('chamfers that cannot be made', () => {
  const told = (chamfers: readonly unknown[], rest: Parameters<typeof carcass>[1] = {}) =>
    solved([carcass(empty('opening-1'), { chamfers, ...rest })]).problems;

  it('names a leg shorter than a panel is thick, and two that meet', () => {
    expect(told([{ ...TOP_RIGHT, acrossMm: 17 }])).toMatchObject([{ code: 'bad-joint', needMm: 17.7, haveMm: 17 }]);
    // 400 + 350 of 700 at one side.
    const below = { ...TOP_RIGHT, id: 'chamfer-2', corner: 'bottom-right', upMm: 350 };
    expect(told([{ ...TOP_RIGHT, upMm: 400 }, below])).toMatchObject([
      { because: ['chamfers at top right and bottom right meet', 'nothing of a panel is left'] },
    ]);
  });

  it('names a wheelhouse and a chase that run into the corner, and a chase in a joint', () => {
    const chase = { id: 'chase-1', panel: 'back', alongMm: 840, acrossMm: 640, sizeMm: [60, 60] };
    expect(told([TOP_RIGHT], { chases: [chase] })).toMatchObject([
      { because: ['wiring chase does not keep inside Bay back'] },
    ]);
    const wheel = { id: 'wheelhouse-1', side: 'right', fromMm: 100, lengthMm: 200, inMm: 120, upMm: 600 };
    expect(told([TOP_RIGHT], { wheelhouses: [wheel] })).toMatchObject([
      { because: ['the wheelhouse at the right meets a cut-off corner'] },
    ]);
    // The top reaches to 11.7 from the outside into the side, which begins at 17.7: 45 − 30 = 15.
    const inJoint = { ...chase, panel: 'top', alongMm: 45, acrossMm: 300 };
    expect(told([], { chases: [inJoint] })).toMatchObject([
      { because: ['wiring chase meets what is cut or housed in Bay top'] },
    ]);
  });

  it('names two directions, two at one corner, and one that leaves nothing', () => {
    const upright = { id: 'chamfer-2', along: 'up', corner: 'back-left', acrossMm: 50, deepMm: 50 };
    expect(told([TOP_RIGHT, upright])).toMatchObject([
      { code: 'bad-joint', because: ['chamfers run in different directions'] },
    ]);
    expect(told([TOP_RIGHT, { ...TOP_RIGHT, id: 'chamfer-2' }])).toMatchObject([{ code: 'bad-joint' }]);
    // 700 − 3 × 17.7 = 646.9 is the most.
    expect(told([{ ...TOP_RIGHT, upMm: 650 }])[0]?.needMm).toBeCloseTo(646.9, 9);
  });
});

const leg = fc.integer({ min: 20, max: 200 });
const corners = {
  deep: ['top-left', 'top-right', 'bottom-left', 'bottom-right'],
  up: ['back-left', 'back-right'],
  across: ['top-back', 'bottom-back'],
} as const;
const anyChamfers = fc.constantFrom('deep', 'up', 'across').chain((along) =>
  fc
    .array(fc.tuple(fc.constantFrom(...corners[along]), leg, leg, leg), { minLength: 1, maxLength: 3 })
    .map((list) => list.filter(([corner], i) => list.findIndex(([other]) => other === corner) === i))
    .map((list) =>
      list.map(([corner, acrossMm, upMm, deepMm], i) => ({
        chamfer: {
          id: `chamfer-${i + 1}`,
          along,
          corner,
          ...(along === 'deep' ? { acrossMm, upMm } : along === 'up' ? { acrossMm, deepMm } : { upMm, deepMm }),
        },
        // Flush with the rear, the end of the panel is sawn to atan(other leg / deep) from square: at most 45°.
        steep: along !== 'deep' && (along === 'up' ? acrossMm : upMm) > deepMm,
        gap: along === 'across' ? ([upMm, deepMm] as const) : null,
        wedge:
          (along === 'deep' ? acrossMm * upMm * 600 : along === 'up' ? acrossMm * deepMm * 700 : upMm * deepMm * 900) /
          2,
      })),
    ),
);

describe('any chamfers', () => {
  it('lose no wood and make none: panels, what is clear inside, and the corners make up the outside', () => {
    fc.assert(
      fc.property(anyChamfers, (list) => {
        const chamfers = list.map(({ chamfer }) => chamfer);
        const fitOut = solved([
          carcass(empty('opening-1'), {
            chamfers,
            facing: 'right',
            joints: { corner: 'butt', dadoDepthMm: 0, back: { kind: 'none' } },
          }),
        ]);
        const told = fitOut.problems.map(({ because }) => because[0] ?? '');
        expect(told.filter((words) => !words.includes('saw tilted'))).toEqual([]);
        expect(told).toHaveLength(list.filter(({ steep }) => steep).length);
        // What is clear inside: the box between the panels, behind the inner face of every chamfer's panel.
        const halves = fitOut.panels
          .filter(({ role }) => role === 'chamfer')
          .map(({ pose, thickness }): HalfSpace => {
            const inward = pose.turn[2];
            const at = pose.at.map((value, i) => value + (inward[i] ?? 0) * thickness);
            return {
              normal: [-inward[0], -inward[1], -inward[2]],
              offset: -at.reduce((sum, value, i) => sum + value * (inward[i] ?? 0), 0),
            };
          });
        const inside = clippedShape(boxShape({ min: [17.7, 0, 17.7], max: [882.3, 600, 682.3] }), halves);
        const panels = fitOut.panels.reduce((sum, { volumeMm3 }) => sum + volumeMm3, 0);
        const clear = inside ? convexVolume(inside).volumeMm3 : 0;
        const wedges = list.reduce((sum, { wedge }) => sum + wedge, 0);
        // Where a chamfer runs across, the top ends between the sides and they end at the inner face: at both ends of
        // its mitre a triangle stays empty, 17.7 thick, of 17.7 by 17.7 × √(up² + deep²)/up.
        const gaps = list.reduce(
          (sum, { gap }) => sum + (gap === null ? 0 : (2 * 17.7 ** 3 * Math.hypot(...gap)) / gap[0] / 2),
          0,
        );
        expect(panels + clear + wedges + gaps).toBeCloseTo(900 * 700 * 600, 0);
        for (const panel of fitOut.panels) {
          const body = fitOut.bodies.find(({ id }) => id === panel.id);
          expect(convexVolume(body?.shape as never).volumeMm3).toBeCloseTo(panel.volumeMm3, 1);
          for (const corner of body?.shape.vertices ?? [])
            corner.forEach((value, i) => {
              expect(value).toBeGreaterThanOrEqual(-ROUNDING_MM);
              expect(value).toBeLessThanOrEqual(([900, 600, 700][i] ?? 0) + ROUNDING_MM);
            });
        }
      }),
      { seed: 20260901, numRuns: 40 },
    );
  });

  it('leave boxes alone that they do not meet', () => {
    const box = boxShape({ min: [0, 0, 0], max: [10, 20, 30] });
    expect(clippedShape(box, [{ normal: [1, 0, 0], offset: 10 }])).toBe(box);
    expect(clippedShape(box, [{ normal: [1, 0, 0], offset: 0 }])).toBeNull();
    const half = clippedShape(box, [{ normal: [1, 0, 0], offset: 4 }]);
    expect(half && boxVolume(shapeBox(half))).toBeCloseTo(4 * 20 * 30, 9);
  });
});
