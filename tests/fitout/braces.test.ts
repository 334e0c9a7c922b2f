import { describe, expect, it } from 'vitest';
import { convexVolume } from '../../src/bodies/index.ts';
import { type Catalog, houseRules, standardCatalog } from '../../src/catalog/index.ts';
import {
  addBrace,
  changeBrace,
  type NodeId,
  printDesign,
  readDesign,
  removeBrace,
  removeCarcass,
} from '../../src/design/index.ts';
import { solveFitOut } from '../../src/fitout/index.ts';
import { carcass, designOf, divided, empty, fixed, panelOf, share, solved } from './designs.ts';
import { bodyBox } from './measures.ts';

type Plain = Readonly<Record<string, unknown>>;

/** Two carcasses 900 × 700 × 600, faces to the right, the second 1,500 further forward. */
const bay = (id: string, x: number, z = 0, rest: Plain = {}): Plain =>
  carcass(empty(`opening-${id}`), {
    id,
    name: id,
    place: { x: { rule: 'at', mm: x }, y: { rule: 'at', mm: 0 }, z: { rule: 'at', mm: z } },
    ...rest,
  });
const PAIR = [bay('carcass-1', 0), bay('carcass-2', 1500)];
const BRACE = {
  id: 'brace-1',
  item: 'brace-bar-30',
  lies: 'top',
  from: { carcass: 'carcass-1', at: [600, 100, 0] },
  to: { carcass: 'carcass-2', at: [300, 500, 0] },
};
const braced = (change: Plain = {}, pair: readonly Plain[] = PAIR, rest: Plain = {}) =>
  solved([], { cabinet: { carcasses: pair, braces: [{ ...BRACE, ...change }] }, ...rest });
/** A rule of the house with another value. */
const changed = (rule: string, value: number): Plain => ({
  houseRules: [{ rule, value, who: 'T. Fabricator', why: 'shop trial' }],
});
/** From 600 to 1,800 and from 100 to 500: √(1200² + 400²). */
const SPAN = 1264.9111;

describe('a brace between two carcasses', () => {
  const fitOut = braced();

  it('is a bar flat on both tops, beyond its bolts at both ends', () => {
    expect(fitOut.problems).toEqual([]);
    // 25 at each end.
    const bar = fitOut.hardware.find(({ id }) => id === 'brace-1');
    expect(bar?.quantity).toBeCloseTo((SPAN + 50) / 1000, 6);
    const body = fitOut.bodies.find(({ id }) => id === 'brace-1');
    expect(convexVolume(body?.shape as never).volumeMm3).toBeCloseTo((SPAN + 50) * 30 * 4, 0);
    // On the tops, 700 up.
    const { min, max } = bodyBox(body as never);
    expect([min[2], max[2]]).toEqual([700, 704]);
    expect(fitOut.masses.find(({ id }) => id === 'brace-1')?.massKg).toBeCloseTo(0.94 * 1.3149111, 6);
  });

  it('has two bolts at each end, 40 apart along the bar, drilled through both tops', () => {
    const [brace] = fitOut.braces;
    expect(brace).toMatchObject({
      sound: true,
      carcasses: ['carcass-1', 'carcass-2'],
      bolt: 'bolt-m8x40',
      holeMm: 8.5,
    });
    // From the end of the bar: 25, 25 + 40, and the same from the other end of 1,314.9.
    expect(brace?.holesMm.map((mm) => Math.round(mm * 10) / 10)).toEqual([25, 65, 1289.9, 1249.9]);
    // 40 along (1200, 400) / 1264.9: 37.947 forward and 12.649 to the left.
    expect(brace?.bolts.map(({ at }) => at.map((mm) => Math.round(mm * 1000) / 1000))).toEqual([
      [600, 100, 700],
      [637.947, 112.649, 700],
      [1800, 500, 700],
      [1762.053, 487.351, 700],
    ]);
    // Faces to the right: across is forward, deep is to the left. The top begins 17.7 − 6 in from the side: 588.3 along.
    const holes = (id: string) => panelOf(fitOut, id).cuts.filter((cut) => cut.kind === 'hole');
    expect(holes('carcass-1/top')).toMatchObject([
      { at: [600 - 11.7, expect.any(Number)], diameter: 8.5, depth: null, why: 'brace', face: 'b' },
      { diameter: 8.5, depth: null, why: 'brace' },
    ]);
    expect(holes('carcass-2/top')).toHaveLength(2);
    expect(holes('carcass-1/side-left')).toHaveLength(0);
    // The nearer edge of the first top: its open edge, 100 away.
    expect(brace?.bolts[0]?.edgeMm).toBeCloseTo(100, 6);
    expect(brace?.bolts[0]?.gripMm).toBeCloseTo(17.7, 6);
  });

  it('brings bolts, washers and nuts with their mass, heads outside and nuts inside', () => {
    const piece = (what: string) => fitOut.hardware.find(({ id }) => id === `brace-1/${what}`);
    expect([piece('bolts'), piece('washers'), piece('nuts')].map((use) => [use?.item, use?.quantity])).toEqual([
      ['bolt-m8x40', 4],
      ['washer-m8-30', 4],
      ['lock-nut-m8', 4],
    ]);
    const kg = (what: string) => fitOut.masses.find(({ id }) => id === `brace-1/${what}`)?.massKg;
    // 4 × 21.5 g, 4 × 8 g, 4 × 9.5 g.
    expect([kg('bolts'), kg('washers'), kg('nuts')]).toEqual([0.086, 0.032, 0.038]);
    const span = (what: string) => {
      const { min, max } = bodyBox(fitOut.bodies.find(({ id }) => id === `brace-1/bolt-1/${what}`) as never);
      return [min[2], max[2]].map((z) => Math.round(z * 10) / 10);
    };
    // Head 45.2 − 40 on the bar of 4; bolt end 40 − 4 below the top at 700, washer 1.6 under 17.7 of plywood.
    expect(span('head')).toEqual([704, 709.2]);
    expect(span('washer')).toEqual([680.7, 682.3]);
    expect(span('nut')).toEqual([664, 680.7]);
  });

  it('takes the longer bolt where the shorter one does not reach', () => {
    const bolt = (catalog: Catalog) => solveFitOut(design, catalog, houseRules(catalog, [])).braces[0]?.bolt;
    const catalog = standardCatalog();
    const bar = catalog.hardware.get('brace-alu-40');
    if (!bar) throw new Error('no bar');
    const design = designOf(PAIR, { cabinet: { carcasses: PAIR, braces: [{ ...BRACE, item: 'brace-alu-40' }] } });
    // 6 + 17.7 + 1.6 + 9.6 = 34.9; with a bar of 12: 40.9.
    const sizeMm: [number, number, number] = [1000, 40, 12];
    const thick = { ...bar, sizeMm };
    expect(bolt(catalog)).toBe('bolt-m8x40');
    expect(bolt({ ...catalog, hardware: new Map([...catalog.hardware, ['brace-alu-40', thick]]) } as Catalog)).toBe(
      'bolt-m8x70',
    );
    // The leg of the angle, not its height.
    expect(braced({ item: 'brace-angle-30' }).braces[0]?.bolt).toBe('bolt-m8x40');
  });

  it('lies on whichever face of both is named', () => {
    const side = braced(
      {
        lies: 'front',
        from: { carcass: 'carcass-1', at: [0, 300, 500] },
        to: { carcass: 'carcass-2', at: [0, 300, 200] },
      },
      [bay('carcass-1', 0), bay('carcass-2', 0, 700)],
    );
    const { min, max } = bodyBox(side.bodies.find(({ id }) => id === 'brace-1') as never);
    expect([min[0], max[0]].map((x) => Math.round(x * 1000) / 1000)).toEqual([900, 904]);
    expect(side.problems).toEqual([]);
    // Faces to the right: what looks forward is the side at the viewer's right.
    expect(side.braces[0]?.bolts.map(({ panel }) => panel)).toEqual([
      'carcass-1/side-right',
      'carcass-1/side-right',
      'carcass-2/side-right',
      'carcass-2/side-right',
    ]);
  });

  it('names an end beside its carcass, faces that are not flush, and what it cannot join', () => {
    const off = braced({ to: { carcass: 'carcass-2', at: [-20, 500, 0] } });
    expect(off.problems).toMatchObject([{ at: 'brace-1', because: ['an end of the brace lies 20 mm off carcass-2'] }]);
    const high = braced({}, [bay('carcass-1', 0), bay('carcass-2', 1500, 12)]);
    expect(high.problems).toMatchObject([{ code: 'bad-joint', needMm: 1, haveMm: 12 }]);
    expect(high.braces[0]?.sound).toBe(false);
    expect(braced({ to: BRACE.from }).problems).toMatchObject([{ because: ['a brace joins two carcasses'] }]);
    expect(braced({ item: 'nothing-such' }).problems).toMatchObject([{ code: 'unknown-hardware', at: 'brace-1' }]);
  });
});

describe('a brace that cannot hold its bolts', () => {
  it('is told the least edge of the panel', () => {
    // Along x alone: bolts at 60 and 20 of the second top, which begins at 11.7.
    const near = braced({
      from: { carcass: 'carcass-1', at: [600, 100, 0] },
      to: { carcass: 'carcass-2', at: [60, 100, 0] },
    });
    expect(near.problems).toMatchObject([{ at: 'brace-1', code: 'bad-joint', needMm: 32 }]);
    expect(near.problems[0]?.haveMm).toBeCloseTo(8.3, 6);
    expect(near.problems[0]?.because).toEqual([
      'a bolt of the brace is too near the edge of carcass-2 top',
      'needs 32 mm, has 8.3 mm',
    ]);
    expect(near.braces[0]?.sound).toBe(false);
  });

  it('is told where no panel lies, and where one stands in from the bar', () => {
    const open = { from: { carcass: 'carcass-1', at: [600, 0, 650] }, to: { carcass: 'carcass-2', at: [50, 0, 650] } };
    expect(braced({ lies: 'right', ...open }).problems.map(({ because }) => because[0])).toEqual([
      'no panel of carcass-1 lies under the brace',
      'no panel of carcass-2 lies under the brace',
    ]);
    // Their backs are grooved in 12 from the rear.
    expect(
      braced({
        lies: 'left',
        from: { carcass: 'carcass-1', at: [600, 0, 600] },
        to: { carcass: 'carcass-2', at: [150, 0, 600] },
      }).problems.map(({ because }) => because[0]),
    ).toEqual(['carcass-1 back stands 12 mm in from the bar', 'carcass-2 back stands 12 mm in from the bar']);
  });

  it('is told which dado or other bolt its washer would meet', () => {
    const split = carcass(
      divided('opening-carcass-1', 'columns', [
        [fixed(580), empty('opening-a')],
        [share(), empty('opening-b')],
      ]),
      { id: 'carcass-1', name: 'carcass-1' },
    );
    // The divider stands from 597.7 to 615.4 across, the bolt at 600.
    expect(braced({}, [split, bay('carcass-2', 1500)]).problems).toMatchObject([
      { because: ['the washer of a bolt of the brace meets a dado in carcass-1 top', 'needs 15 mm, has 0 mm'] },
    ]);
    const twice = solved([], { cabinet: { carcasses: PAIR, braces: [BRACE, { ...BRACE, id: 'brace-2' }] } });
    expect(twice.problems.map(({ at }) => at)).toEqual(['brace-1', 'brace-1', 'brace-2', 'brace-2']);
  });

  it('is told the least bar', () => {
    // Two bolts at each end: three pitches of 40 between the outer ones.
    const close = [bay('carcass-1', 0), bay('carcass-2', 903)];
    const tight = braced(
      { from: { carcass: 'carcass-1', at: [850, 100, 0] }, to: { carcass: 'carcass-2', at: [50, 100, 0] } },
      close,
    );
    expect(tight.problems[0]?.needMm).toBe(120);
    expect(tight.problems[0]?.haveMm).toBeCloseTo(103, 6);
    expect(braced({}, PAIR, changed('brace-metal-edge', 2)).problems).toMatchObject([
      // 2 × 2 × 8.5 for the width; 2 × 8.5 = 17 is less than the 25 at the end.
      { because: ['the bar is too narrow for its bolts', 'needs 34 mm, has 30 mm'], needMm: 34, haveMm: 30 },
    ]);
    expect(braced({}, PAIR, changed('brace-end', 8)).problems).toMatchObject([{ needMm: 10.2, haveMm: 8 }]);
  });
});

describe('edits of braces', () => {
  it('add one between a carcass and another, change it, and take it out with its carcass', () => {
    const start = designOf(PAIR);
    const { design, id } = addBrace(start, 'carcass-2' as NodeId);
    expect(design.cabinet.braces).toMatchObject([{ from: { carcass: 'carcass-2' }, to: { carcass: 'carcass-1' } }]);
    const read = readDesign(printDesign(design));
    expect(read.ok && read.value).toEqual(design);
    expect(solved([], { cabinet: design.cabinet }).problems).toEqual([]);
    expect(changeBrace(design, id, { item: 'brace-alu-40' }).cabinet.braces[0]?.item).toBe('brace-alu-40');
    expect(removeBrace(design, id).cabinet.braces).toEqual([]);
    expect(removeCarcass(design, 'carcass-1' as NodeId).cabinet.braces).toEqual([]);
    expect(() => addBrace(designOf([bay('carcass-1', 0)]), 'carcass-1' as NodeId)).toThrow(RangeError);
    const strange = { ...design, cabinet: { ...design.cabinet, carcasses: design.cabinet.carcasses.slice(0, 1) } };
    expect(readDesign(printDesign(strange)).ok).toBe(false);
  });
});
