import { describe, expect, it } from 'vitest';
import { placed } from '../../src/base/index.ts';
import type { Panel } from '../../src/fitout/index.ts';
import { carcass, divided, empty, fixed, panelOf, share, solved } from './designs.ts';

type Plain = Readonly<Record<string, unknown>>;
const tenth = (values: readonly number[]): readonly number[] => values.map((value) => Math.round(value * 10) / 10);
const size = (panel: Panel): readonly number[] => tenth([panel.length, panel.width]);

const joints = (corner: string, back: Plain, dadoDepthMm = 6): Plain => ({ joints: { corner, dadoDepthMm, back } });
const GROOVE: Plain = { kind: 'groove', grooveDepthMm: 6, setbackMm: 12 };

describe('joints of a carcass', () => {
  it('cuts every recess where the part sits, with its depth and the part in it', () => {
    const fitOut = solved([carcass(empty('opening-1'))]);
    const side = panelOf(fitOut, 'carcass-1/side-left');
    expect(side.cuts.map((cut) => ('takes' in cut ? [cut.kind, cut.takes] : []))).toEqual([
      ['dado', 'carcass-1/top'],
      ['dado', 'carcass-1/bottom'],
      ['groove', 'carcass-1/back'],
    ]);
    const [top, , back] = side.cuts;
    // x runs up, y from the back to the face: the top lies at 682.3 … 700 over the full depth.
    expect(top && 'from' in top && [tenth(top.from), tenth(top.to), top.depth]).toEqual([
      [682.3, 0],
      [700, 600],
      expect.closeTo(6, 9),
    ]);
    // The back: 11.7 … 688.3 up, and 12 … 18.4 from the rear edge.
    expect(back && 'from' in back && [tenth(back.from), tenth(back.to), back.depth]).toEqual([
      [11.7, 12],
      [688.3, 18.4],
      expect.closeTo(6, 9),
    ]);
  });

  it('knows the exact volume of a side: the dado and the groove overlap at the corners and count once', () => {
    const { volumeMm3, massKg } = panelOf(solved([carcass(empty('opening-1'))]), 'carcass-1/side-left');
    // 700 × 600 × 17.7 − two dados 600 × 17.7 × 6 − groove (676.6 − 2 × 6 within the dados) × 6.4 × 6.
    const expected = 700 * 600 * 17.7 - 2 * 600 * 17.7 * 6 - (676.6 - 12) * 6.4 * 6;
    expect(volumeMm3).toBeCloseTo(expected, 3);
    expect(massKg).toBeCloseTo((expected * 695) / 1e9, 9);
  });

  it('butts top and bottom between the sides', () => {
    const fitOut = solved([carcass(empty('opening-1'), joints('butt', { kind: 'none' }))]);
    // 900 − 2 × 17.7.
    expect(size(panelOf(fitOut, 'carcass-1/top'))).toEqual([864.6, 600]);
    expect(panelOf(fitOut, 'carcass-1/side-left').cuts).toEqual([]);
    expect(fitOut.panels).toHaveLength(4);
  });

  it('cuts corner rabbets, and a rabbet for a back that sits in from behind', () => {
    const fitOut = solved([carcass(empty('opening-1'), joints('rabbet', { kind: 'rabbet', depthMm: 8 }))]);
    const side = panelOf(fitOut, 'carcass-1/side-right');
    expect(side.cuts.map(({ kind }) => kind)).toEqual(['rabbet', 'rabbet', 'rabbet']);
    // 900 − 2 × 17.7 + 2 × 8 by 700 − 2 × 17.7 + 2 × 8, flush with the rear edges.
    const back = panelOf(fitOut, 'carcass-1/back');
    expect(size(back)).toEqual([880.6, 680.6]);
    const rear = Math.max(placed(back.pose, [0, 0, 0])[1], placed(back.pose, [0, 0, back.thickness])[1]);
    expect(rear).toBeCloseTo(600, 9);
  });

  it('houses shelves back to back in a divider and says when too little wood is left', () => {
    const halves = (dadoDepthMm: number) =>
      solved([
        carcass(
          divided('opening-1', 'columns', [
            [
              share(),
              divided('opening-2', 'rows', [
                [fixed(300), empty('opening-3')],
                [share(), empty('opening-4')],
              ]),
            ],
            [
              share(),
              divided('opening-5', 'rows', [
                [fixed(300), empty('opening-6')],
                [share(), empty('opening-7')],
              ]),
            ],
          ]),
          joints('dado', GROOVE, dadoDepthMm),
        ),
      ]);
    // 17.7 − 2 × 6 = 5.7 is more than the 5 that the house rules leave; 17.7 − 2 × 7 = 3.7 is less.
    expect(halves(6).problems).toEqual([]);
    const thin = halves(7);
    expect(thin.problems).toMatchObject([{ code: 'bad-joint', at: 'opening-1', needMm: 5 }]);
    expect(thin.problems[0]?.haveMm).toBeCloseTo(3.7, 9);
    const divider = panelOf(halves(6), 'opening-1/divider-1');
    expect(divider.cuts.map((cut) => ('face' in cut ? cut.face : '')).sort((a, b) => (a < b ? -1 : 1))).toEqual([
      'a',
      'b',
    ]);
    // A shelf spans (864.6 − 17.7)/2 = 423.45, and 6 into side and divider.
    expect(panelOf(halves(6), 'opening-2/shelf-1').length).toBeCloseTo(435.45, 9);
  });

  it('refuses a dado deeper than half the sheet', () => {
    const fitOut = solved([carcass(empty('opening-1'), joints('dado', GROOVE, 12))]);
    expect(fitOut.problems).toMatchObject([{ code: 'bad-joint', at: 'carcass-1', needMm: 12 }]);
    expect(fitOut.problems[0]?.haveMm).toBeCloseTo(8.85, 9);
  });

  it('stands partitions across the depth in sides, top and bottom', () => {
    const fitOut = solved([
      carcass(
        divided('opening-1', 'layers', [
          [fixed(300), empty('opening-2')],
          [share(), empty('opening-3')],
        ]),
      ),
    ]);
    // 864.6 + 12 by 664.6 + 12.
    expect(size(panelOf(fitOut, 'opening-1/partition-1'))).toEqual([876.6, 676.6]);
    const [near, far] = fitOut.rooms;
    // 581.6 − 300 − 17.7 behind the partition.
    expect(tenth([near?.size[1] ?? 0, far?.size[1] ?? 0])).toEqual([300, 263.9]);
    expect(far?.pose.at[1]).toBeCloseTo(317.7, 9);
  });

  it('bands the front edges and leaves the finished size alone', () => {
    const fitOut = solved([
      carcass(
        divided('opening-1', 'rows', [
          [share(), empty('opening-2')],
          [share(), empty('opening-3')],
        ]),
        {
          edgeBand: 'edge-band-1',
        },
      ),
    ]);
    const bands = (id: string) => panelOf(fitOut, id).bands;
    const none = { l1: null, l2: null, w1: null, w2: null };
    // Seen on their inner faces with the length to the right, left side and top have the face edge above.
    expect(bands('carcass-1/side-left')).toEqual({ ...none, l2: 'edge-band-1' });
    expect(bands('carcass-1/side-right')).toEqual({ ...none, l1: 'edge-band-1' });
    expect(bands('carcass-1/top')).toEqual({ ...none, l2: 'edge-band-1' });
    expect(bands('opening-1/shelf-1')).toEqual({ ...none, l1: 'edge-band-1' });
    expect(bands('carcass-1/back')).toEqual(none);
    const band = fitOut.hardware.find(({ item }) => item === 'edge-band-1');
    // Two sides 0.7, top and bottom and shelf 0.8766 each.
    expect(band?.quantity).toBeCloseTo(2 * 0.7 + 3 * 0.8766, 9);
  });

  it('marks a side as left or right only where the mirrored part is another part', () => {
    // Alike at both ends: turned end for end the left side is the right side.
    const alike = solved([carcass(empty('opening-1'))]);
    expect(panelOf(alike, 'carcass-1/side-left').hand).toBeNull();
    // A shelf above the middle makes a pair of them.
    const shelf = divided('opening-1', 'rows', [
      [fixed(200), empty('opening-2')],
      [share(), empty('opening-3')],
    ]);
    const handed = solved([carcass(shelf)]);
    expect(panelOf(handed, 'carcass-1/side-left').hand).toBe('left');
    expect(panelOf(handed, 'carcass-1/side-right').hand).toBe('right');
  });

  it('says when the panels leave no room, or the sheet is unknown', () => {
    const flat = solved([carcass(empty('opening-1'), { size: { width: 30, height: 700, depth: 600 } })]);
    expect(flat.problems).toMatchObject([{ code: 'too-small', at: 'carcass-1', axis: 'across', haveMm: 30 }]);
    expect(flat.problems[0]?.needMm).toBeCloseTo(35.4, 9);
    expect(flat.panels).toEqual([]);
    const strange = solved([carcass(empty('opening-1'), { material: 'paper' })]);
    expect(strange.problems).toMatchObject([{ code: 'unknown-material', at: 'carcass-1', because: ['paper'] }]);
    expect(strange.panels).toHaveLength(5);
  });
});
