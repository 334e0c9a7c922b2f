import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../src/base/index.ts';
import { standardCatalog } from '../../src/catalog/index.ts';
import type { NodeId } from '../../src/design/index.ts';
import type { Board } from '../../src/fitout/board.ts';
import { cutoutsIn } from '../../src/fitout/cutouts.ts';
import type { FitOut, Panel, PanelCut } from '../../src/fitout/index.ts';
import { carcass, empty, fitted, openingOf, panelOf, solved } from './designs.ts';

type Plain = Readonly<Record<string, unknown>>;
const openingId = 'opening-1' as NodeId;
type Hole = Extract<PanelCut, { readonly kind: 'hole' }>;
type Cutout = Extract<PanelCut, { readonly kind: 'cutout' }>;

const drawer = (rest: Plain): Plain => ({
  kind: 'drawer',
  boxMaterial: 'birch-ply-12',
  bottomMaterial: 'birch-ply-6',
  inside: empty('opening-2'),
  ...rest,
});
const door = (rest: Plain): Plain => ({
  kind: 'door',
  material: 'birch-ply-18',
  hung: 'left',
  hinge: 'hinge-piano-32',
  inside: empty('opening-2'),
  ...rest,
});
const slideOut = (rest: Plain): Plain => ({
  kind: 'slide-out',
  deckMaterial: 'birch-ply-18',
  lipMaterial: 'birch-ply-12',
  lipHeightMm: 40,
  inside: empty('opening-2'),
  ...rest,
});

const valuables = (rest: Plain): Plain => ({
  kind: 'valuables',
  boxMaterial: 'birch-ply-12',
  bottomMaterial: 'birch-ply-6',
  liner: null,
  coverMaterial: null,
  inside: empty('opening-2'),
  ...rest,
});
const board = (rest: Plain): Plain => ({
  kind: 'board',
  way: 'side-flip',
  material: 'birch-ply-12',
  stopsDeg: [90],
  magneticFace: true,
  markerTray: null,
  worklight: null,
  springs: null,
  inside: empty('opening-2'),
  ...rest,
});

const one = (fitting: Plain, rest: Plain = {}): FitOut => solved([carcass(fitted('opening-1', fitting), rest)]);

const cutsFor = (panel: Panel, item: string) => ({
  cutouts: panel.cuts.filter((cut): cut is Cutout => cut.kind === 'cutout' && cut.why === item),
  screws: panel.cuts.filter(
    (cut): cut is Hole => cut.kind === 'hole' && [`${item} screw`, `${item} bolt`].includes(cut.why),
  ),
});

const extent = ({ outline }: Cutout): readonly number[] => {
  if (outline.shape === 'rectangle') return [...outline.from, ...outline.to];
  if (outline.shape === 'polygon') throw new Error('nothing is let into a polygon');
  const { at, diameter } = outline;
  return [at[0] - diameter / 2, at[1] - diameter / 2, at[0] + diameter / 2, at[1] + diameter / 2];
};
const close = (got: readonly number[], want: readonly number[]): void => {
  expect(got.length).toBe(want.length);
  for (const [i, each] of got.entries()) expect(each).toBeCloseTo(want[i] ?? Number.NaN, 9);
};

describe('a slam latch in a drawer front', () => {
  const fitOut = one(drawer({ latch: 'latch-slam' }));

  it('has its cut-out in the middle of the front and its screws round it', () => {
    expect(fitOut.problems).toEqual([]);
    // Opening 900 − 2 × 17.7 = 864.6 by 700 − 2 × 17.7 = 664.6, the front 2 smaller all round: 860.6 × 660.6.
    const front = panelOf(fitOut, 'opening-1/front');
    const { cutouts, screws } = cutsFor(front, 'latch-slam');
    // 430.3 ± 92 / 2 and 330.3 ± 52 / 2.
    close(cutouts.flatMap(extent), [384.3, 304.3, 476.3, 356.3]);
    // 430.3 ± 50.5 and 330.3 ± 30; pilot holes half through the front: 17.7 / 2.
    close(
      screws.flatMap(({ at }) => [...at]).sort((a, b) => a - b),
      [300.3, 300.3, 360.3, 360.3, 379.8, 379.8, 480.8, 480.8],
    );
    expect(screws.map(({ face, depth }) => [face, depth])).toEqual(Array.from({ length: 4 }, () => ['a', 8.85]));
  });

  it('reaches 40 mm in, so the front of the box behind is cut out too', () => {
    const box = panelOf(fitOut, 'opening-1/box-front');
    const [cut] = cutsFor(box, 'latch-slam').cutouts;
    if (!cut) throw new Error('no cut-out');
    const [x0 = 0, y0 = 0, x1 = 0, y1 = 0] = extent(cut);
    close([x1 - x0, y1 - y0], [92, 52]);
    // The box stands in the middle of the opening across.
    expect((x0 + x1) / 2).toBeCloseTo(box.length / 2, 9);
    expect(cutsFor(box, 'latch-slam').screws).toEqual([]);
  });

  it('weighs what is cut out less', () => {
    // (92 × 52 − (4 − π) 5²) mm² × 17.7 mm × 695 kg/m³ less than the whole front.
    const front = panelOf(fitOut, 'opening-1/front');
    const cut = 92 * 52 - (4 - Math.PI) * 25;
    expect(front.massKg).toBeCloseTo(((860.6 * 660.6 - cut) * 17.7 * 695) / 1e9, 9);
  });

  it('counts its screws with the hinge screws of the catalog', () => {
    const screws = fitOut.hardware.find(({ id }) => id === 'opening-1/latch-screws');
    expect([screws?.item, screws?.quantity]).toEqual(['wood-screw-4x16', 4]);
  });
});

describe('what else is let in', () => {
  it('a flush pull stands beside the latch, a bar pull before it on two bolts', () => {
    const flush = one(drawer({ latch: 'latch-slam', pull: 'pull-flush-small' }));
    expect(flush.problems).toEqual([]);
    // Half of each rim and the gap of 3 between: 430.3 − (110 / 2 + 3 + 90 / 2) = 327.3, ± 78 / 2; 330.3 ± 48 / 2.
    const front = panelOf(flush, 'opening-1/front');
    close(cutsFor(front, 'pull-flush-small').cutouts.flatMap(extent), [288.3, 306.3, 366.3, 354.3]);
    // 16 mm deep, it ends within the front of 17.7.
    expect(cutsFor(panelOf(flush, 'opening-1/box-front'), 'pull-flush-small').cutouts).toEqual([]);
    // Beside the latch: 430.3 − (110 / 2 + 3 + 172 / 2) = 286.3, its bolts 80 to both sides.
    const both = one(drawer({ latch: 'latch-slam', pull: 'pull-bar-160' }));
    const beside = cutsFor(panelOf(both, 'opening-1/front'), 'pull-bar-160').screws;
    close(
      beside.map(({ at }) => at[0]),
      [206.3, 366.3],
    );
    // The bolts go through the front of the box as well.
    expect(cutsFor(panelOf(both, 'opening-1/box-front'), 'pull-bar-160').screws.length).toBe(2);
    const bar = cutsFor(panelOf(one(drawer({ latch: null, pull: 'pull-bar-160' })), 'opening-1/front'), 'pull-bar-160');
    expect(bar.cutouts).toEqual([]);
    close(
      bar.screws.flatMap(({ at }) => [...at]),
      [350.3, 330.3, 510.3, 330.3],
    );
    expect(bar.screws.map(({ depth }) => depth)).toEqual([null, null]);
  });

  it('a lock takes a bore in its panel and room for its case in what stands behind', () => {
    const fitOut = one(valuables({ lock: 'latch-lock-bolt', pull: null }));
    const front = cutsFor(panelOf(fitOut, 'opening-1/front'), 'latch-lock-bolt').cutouts;
    expect(front.map(({ outline }) => outline.shape === 'circle' && outline.diameter)).toEqual([19]);
    const behind = cutsFor(panelOf(fitOut, 'opening-1/box-front'), 'latch-lock-bolt').cutouts;
    const [x0 = 0, y0 = 0, x1 = 0, y1 = 0] = behind.flatMap(extent);
    close([x1 - x0, y1 - y0], [70, 40]);
  });

  it('the front lip of a tray is as high as the latch in it', () => {
    const fitOut = one(slideOut({ latch: 'latch-two-point-bar' }));
    expect(fitOut.problems).toEqual([]);
    const lip = panelOf(fitOut, 'opening-1/lip-front');
    close([lip.width, panelOf(fitOut, 'opening-1/lip-back').width], [110, 40]);
    const [, y0 = 0, , y1 = 0] = cutsFor(lip, 'latch-two-point-bar').cutouts.flatMap(extent);
    // (110 − 90) / 2 = 10 left below and above.
    close([y0, y1], [10, 100]);
  });

  it('a cut-out that a hole breaks into is cut and said', () => {
    const sheet = standardCatalog().materials.get('birch-ply-18');
    if (!sheet) throw new Error('no sheet');
    const board: Board = {
      id: 'front',
      origin: openingId,
      role: 'front',
      name: 'test front',
      material: sheet,
      box: { min: [0, 0, 0], max: [300, 17.7, 200] },
      along: { axis: 0, sign: 1 },
      face: { axis: 1, sign: -1 },
      seat: 'rabbet',
      side: null,
      band: null,
    };
    const box = { min: [100, 0, 50], max: [192, 17.7, 102] } as const;
    const wish = {
      board: 'front',
      origin: openingId,
      box,
      shape: 'rectangle',
      cornerRadius: 5,
      why: 'latch-slam',
    } as const;
    const hole = { kind: 'hole', face: 'a', diameter: 8, depth: null, why: 'bolt' } as const;
    // The hole reaches 4 from its middle: 97 lies 3 left of the cut-out, 95 lies 5 left of it.
    const said = (x: number) => cutoutsIn(board, [wish], [], [{ ...hole, at: [x, 76] }]);
    expect([said(97).problems.length, said(97).cuts.length]).toEqual([1, 1]);
    expect(said(97).problems[0]?.because).toEqual(['latch-slam meets what is cut or housed in test front']);
    expect(said(95).problems).toEqual([]);
  });

  it('every record keeps its screws under its rim and off its cut-out', () => {
    const records = [...standardCatalog().hardware.values()];
    for (const { id, letIn, sizeMm } of records) {
      if (!letIn?.cutout || !sizeMm) continue;
      const { cutout, screws } = letIn;
      const [wide, high] = 'sizeMm' in cutout ? cutout.sizeMm : [cutout.boreMm, cutout.boreMm];
      expect([id, wide < sizeMm[0] && high < sizeMm[1]]).toEqual([id, true]);
      for (const { atMm, diameterMm } of screws) {
        const off = [Math.abs(atMm[0]) - wide / 2, Math.abs(atMm[1]) - high / 2];
        expect([id, Math.hypot(...off.map((each) => Math.max(0, each))) > diameterMm / 2]).toEqual([id, true]);
        expect([id, Math.abs(atMm[0]) + diameterMm / 2 < sizeMm[0] / 2]).toEqual([id, true]);
        expect([id, Math.abs(atMm[1]) + diameterMm / 2 < sizeMm[1] / 2]).toEqual([id, true]);
      }
    }
  });
});

describe('in any room that is large enough', () => {
  const LATCHES = [...standardCatalog().hardware.values()].filter(({ kind }) => kind === 'latch').map(({ id }) => id);
  const PULLS = [
    null,
    ...[...standardCatalog().hardware.values()].filter(({ kind }) => kind === 'pull').map(({ id }) => id),
  ];
  const random = seededRandom(2026);
  const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)] as T;
  const makers = [
    () => drawer({ latch: pick(LATCHES), pull: pick(PULLS), front: pick(['inset', 'overlay']) }),
    () =>
      door({ latch: pick(LATCHES), hung: pick(['left', 'right', 'top', 'bottom']), front: pick(['inset', 'overlay']) }),
    () => slideOut({ latch: pick(LATCHES), lipHeightMm: pick([0, 30, 80]) }),
    () => valuables({ lock: pick(LATCHES), pull: pick(PULLS) }),
    () => board({ latch: pick(LATCHES), hinge: pick(['left', 'right']) }),
    () => door({ latch: pick(LATCHES), lock: pick(LATCHES), hung: 'roll', hinge: 'hinge-piano-32' }),
  ];

  it('nothing is refused, and every piece has what is cut for it, inside its panel', () => {
    let told = 0;
    for (let i = 0; i < 240; i++) {
      const fitting = (makers[i % makers.length] as () => Plain)();
      const { least } = openingOf(one(fitting), 'opening-1');
      const [x, y, z] = least.map((side) => Math.ceil(side + random() * 200)) as unknown as [number, number, number];
      const fitOut = one(fitting, { size: { width: x + 2 * 17.7, height: z + 2 * 17.7, depth: y + 6.4 + 12 } });
      expect([fitting, fitOut.problems]).toEqual([fitting, []]);
      for (const { id, item } of fitOut.hardware) {
        const record = standardCatalog().hardware.get(item);
        if (!record?.letIn || !/(latch|pull)$/.test(id)) continue;
        const panels = fitOut.panels.filter(({ cuts }) => cuts.some((cut) => 'why' in cut && cut.why.startsWith(item)));
        const cuts = panels.map((panel) => ({ panel, ...cutsFor(panel, item) }));
        const screws = cuts.flatMap(({ screws: own }) => own).length;
        // A bolt is drilled in the front and in the box behind it, a screw in the panel alone.
        expect(screws).toBe(record.letIn.screws.reduce((sum, { through }) => sum + (through ? 2 : 1), 0));
        if (record.letIn.cutout) expect(cuts.flatMap(({ cutouts }) => cutouts).length).toBeGreaterThan(0);
        for (const { panel, cutouts } of cuts)
          for (const cut of cutouts) {
            const [x0 = 0, y0 = 0, x1 = 0, y1 = 0] = extent(cut);
            expect(Math.min(x0, y0, panel.length - x1, panel.width - y1)).toBeGreaterThan(2);
            told++;
          }
      }
    }
    // Most latches and pulls are let in.
    expect(told).toBeGreaterThan(150);
  });
});
